import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { nodeFiles } from '../../src/cli/files.ts';
import type { Io } from '../../src/cli/io.ts';
import { LONGEST_LINE, readLines } from '../../src/cli/read-lines.ts';
import { inProcess, labelwright, main, TODAY, workshop } from './_command.ts';

const line = (at: number): string =>
  `${JSON.stringify({
    labelwright: 'product/1',
    name: 'Brine',
    code: `N-${at}`,
    form: 'liquid',
    properties: { pH: 12.6 },
    formula: [
      { name: 'sodium hydroxide', cas: '1310-73-2', percent: (at % 400) / 100 },
      { name: 'water', amount: 'balance' },
    ],
  })}\n`;
const lines = (count: number): string => Array.from({ length: count }, (_, at) => line(at)).join('');
const args = ['classify', '--lines', '--as-of', TODAY];

const memory = (text = ''): Io => ({
  stdin: async () => text,
  lines: async function* () {},
  out: () => {},
  err: () => {},
  files: nodeFiles,
  today: TODAY,
});

async function* bytes(...pieces: (string | Uint8Array)[]) {
  for (const piece of pieces) yield typeof piece === 'string' ? new TextEncoder().encode(piece) : piece;
}
const read = async (...pieces: (string | Uint8Array)[]): Promise<string[]> => {
  const found: string[] = [];
  for await (const each of readLines(bytes(...pieces))) found.push(each);
  return found;
};

describe('lines of standard input', () => {
  it('are put together from pieces, whatever ends them', async () => {
    expect(await read('a\r\nb', 'c\n', '\nd')).toEqual(['a', 'bc', '', 'd']);
    expect(await read('a\r', '\nb\r\n')).toEqual(['a', 'b']);
    expect(await read()).toEqual([]);
  });

  it('keep a letter that two pieces share, and skip a byte order mark', async () => {
    const [first, ...rest] = new TextEncoder().encode('é\n');
    expect(await read(Uint8Array.of(first!), Uint8Array.from(rest))).toEqual(['é']);
    expect(await read('\ufeff{}\n')).toEqual(['{}']);
  });

  it('are cut where they would fill the memory, and refused', async () => {
    const piece = 'x'.repeat(1 << 20);
    const [long, next] = await read(...Array<string>(12).fill(piece), '\nnext\n');
    expect([long!.length, next]).toEqual([LONGEST_LINE + 1, 'next']);
    const { status, out } = await inProcess(classify, ['--lines'], `${long}\n`);
    expect(status).toBe(2);
    expect(JSON.parse(out)).toEqual({
      error: { message: `the line has more than ${LONGEST_LINE} characters`, path: '' },
    });
  });
});

describe('a reader that is behind', () => {
  it('is waited for before the next record is taken', async () => {
    let [taken, written] = [0, 0];
    let release = () => {};
    const io: Io = {
      ...memory(),
      lines: async function* () {
        for (; taken < 5; taken++) yield line(taken);
      },
      out: () => {
        written++;
        return new Promise(resolve => {
          release = resolve;
        });
      },
    };
    const done = classify(['--lines'], io);
    for (let at = 1; at <= 5; at++) {
      while (written < at) await new Promise(resolve => setImmediate(resolve));
      for (let turn = 0; turn < 50; turn++) await new Promise(resolve => setImmediate(resolve));
      expect([taken, written]).toEqual([at - 1, at]);
      release();
    }
    expect(await done).toBe(0);
  });

  /** Largest memory of a run whose results are read in small pieces, in MB. */
  async function peak(count: number): Promise<number> {
    const folder = workshop();
    const [hook, told] = [join(folder, 'peak.mjs'), join(folder, 'peak.txt')];
    writeFileSync(
      hook,
      `import { writeFileSync } from 'node:fs';
process.on('exit', () => writeFileSync(${JSON.stringify(told)}, String(process.resourceUsage().maxRSS)));`,
    );
    const child = spawn(process.execPath, [`--import=${pathToFileURL(hook)}`, main, ...args], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    child.stdin.end(lines(count));
    let results = 0;
    // After each piece the reader does something else, as one that writes to a data base would.
    for await (const piece of child.stdout) {
      results += (piece as Buffer).reduce((sum, byte) => sum + (byte === 10 ? 1 : 0), 0);
      await new Promise(resolve => setTimeout(resolve, 1));
    }
    await ended(child);
    expect(results).toBe(count);
    return Number(readFileSync(told, 'utf8')) / 1024;
  }

  it('costs no memory: five times the records take the same', async () => {
    const [few, many] = [await peak(1600), await peak(8000)];
    // Results are over 10 kB each: kept, those of 6400 records would be more than this.
    expect(many - few).toBeLessThan(50);
  });
});

const ended = (child: ChildProcess): Promise<number | null> =>
  child.exitCode !== null
    ? Promise.resolve(child.exitCode)
    : new Promise(resolve => child.once('exit', resolve));

describe('a reader that stops', () => {
  it('ends the stream quietly', () => {
    const folder = workshop();
    writeFileSync(join(folder, 'records.jsonl'), lines(3000));
    const script = `{ "${process.execPath}" "${main}" classify --lines < records.jsonl; echo "status $?" >&2; } | head -n 1`;
    const { stdout, stderr } = spawnSync('sh', ['-c', script], { cwd: folder, encoding: 'utf8' });
    expect(stdout.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toBe('status 0\n');
  });
});

describe('two workers', () => {
  it('give the lines of one, in order, as an engine deals them out in blocks', async () => {
    const records = lines(90);
    const one = labelwright(args, { input: records });
    // What `parallel --pipe --keep-order --jobs 2` does: blocks of whole lines, a worker each, results in order.
    const blocks = records.match(/(?:.*\n){30}/g)!;
    const work = async (block: string): Promise<string> => {
      const child = spawn(process.execPath, [main, ...args], { stdio: ['pipe', 'pipe', 'inherit'] });
      child.stdin.end(block);
      const out = await text(child.stdout);
      expect(await ended(child)).toBe(0);
      return out;
    };
    const [first, second] = await Promise.all([work(blocks[0]!), work(blocks[1]!)]);
    expect(`${first}${second}${await work(blocks[2]!)}`).toBe(one.out);
  });
});

describe('--brief', () => {
  it('leaves out the reasons and nothing else', async () => {
    const [full, brief] = await Promise.all(
      [['--lines'], ['--lines', '--brief']].map(each => inProcess(classify, each, line(300))),
    );
    const { hazards, otherClasses, ...rest } = JSON.parse(full!.out);
    const short = JSON.parse(brief!.out);
    expect(brief!.out).not.toContain('"because"');
    expect(short).toMatchObject(rest);
    expect(Object.keys(short).sort()).toEqual(['hazards', 'otherClasses', ...Object.keys(rest)].sort());
    const codes = (list: { code?: string; class?: string; outcome?: string }[]) =>
      list.map(({ code, class: name, outcome }) => [code, name, outcome]);
    expect(codes(short.hazards)).toEqual(codes(hazards));
    expect(codes(short.otherClasses)).toEqual(codes(otherClasses));
  });

  it('as text is a line for each record, with the classes that lack data', async () => {
    const demo = 'templates/demo/patio-cleaner.yaml';
    const { status, out } = await inProcess(classify, [demo, demo, '--brief']);
    expect(status).toBe(0);
    const [one, two] = out.trimEnd().split('\n');
    expect(one).toBe(two);
    expect(one).toMatch(/^KP-946; Danger; .*Skin Corr\. 1.*; lack of data: /);
  });
});
