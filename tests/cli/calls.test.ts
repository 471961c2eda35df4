import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { run as label } from '../../src/cli/commands/label.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { demo, filesBelow, inProcess, labelwright, main, put, stackTrace, workshop } from './_command.ts';

const record = 'templates/demo/patio-cleaner.yaml';
const commands = ['init', 'check', 'classify', 'headroom', 'label', 'sds', 'ship', 'gtin', 'packet'];

describe('help', () => {
  it('lists every command, and what the exit status means', () => {
    const { status, out, err } = labelwright(['--help']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    for (const command of commands) expect(out).toMatch(new RegExp(`^ {2}${command} +\\w`, 'm'));
    expect(out).toContain('70 a defect of labelwright');
  });

  it('is shown as an error where no command is given', () => {
    const { status, out, err } = labelwright([]);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain('labelwright COMMAND');
  });

  it.each([[['classify', '--help']], [['help', 'classify']], [['classify', record, '-h']]])('%j', args => {
    const { status, out, err } = labelwright(args);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toMatch(/^usage: labelwright classify \[RECORD…\]/);
  });

  it('gives the version of the package', () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(labelwright(['--version'])).toEqual({ status: 0, out: `labelwright ${version}\n`, err: '' });
  });
});

describe('a wrong call', () => {
  it.each([
    [['clasify', record], 'unknown command clasify; did you mean classify?'],
    [['frobnicate'], 'unknown command frobnicate\nlabelwright --help lists the commands'],
    [['constructor'], 'unknown command constructor'],
    [[record], `a command comes before the record: labelwright check ${record}`],
    [['--out=x', 'check', record], 'a command comes before its options: --out=x'],
    [['check', '--jsn', record], 'unknown option --jsn; did you mean --json?'],
    [['label', record, '--pak', 'bottle-946'], 'unknown option --pak; did you mean --pack?'],
    [['check'], 'no record given\nusage: labelwright check RECORD…'],
    [['classify'], 'no record given\nusage: labelwright classify [RECORD…]'],
    [['gtin'], 'no number given\nusage: labelwright gtin [NUMBER…]'],
    [['gtin', '--what', '96385074'], 'unknown option --what'],
    [['gtin', '--compelte', '629104150021'], 'did you mean --complete?'],
  ])('%j', (args, said) => {
    const { status, out, err } = labelwright(args);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain(said);
    expect(err).not.toMatch(stackTrace);
  });

  it.each([
    [sds, [record, '--out'], '--out needs a value'],
    [sds, [record, '--out='], '--out needs a value'],
    [sds, [record, '--out', '--paper=a4'], '--out needs a value'],
    [classify, [record, '--json=yes'], '--json takes no value'],
    [classify, [record, '-json'], 'unknown option -json; options begin with two dashes'],
    [
      classify,
      [record, '--basis', 'us-hsc'],
      '--basis us-hsc is none of us-hcs, eu-clp, un-ghs; did you mean us-hcs?',
    ],
    [
      classify,
      [record, '--as-of', '2026-02-30'],
      '--as-of 2026-02-30 is not a date; write year-month-day, such as 2026-11-25',
    ],
    [classify, [record, '--as-of', '11/25/2026'], '--as-of 11/25/2026 is not a date'],
    [classify, [record, '--lines'], '--lines reads records from standard input; give no file'],
    // 89 FR 44144: the amended standard took effect on 19 July 2024.
    [classify, [record, '--as-of', '2001-01-01'], 'in force since 2024-07-19'],
    // Regulation (EC) No 1272/2008 has texts of several dates; a day before the first held is refused.
    [
      classify,
      [record, '--basis', 'eu-clp', '--as-of', '1999-12-31'],
      'the earliest text held is that in force since',
    ],
    [label, [record, '--pack', 'bottel-946'], 'there is no pack bottel-946; did you mean bottle-946?'],
    [label, [record, '--pack', 'drum'], 'there is no pack drum; the packs are bottle-946'],
    [label, [record, '--for', 'tanks'], '--for tanks is none of us-workplace, us-consumer'],
    [label, [record, record], 'too many arguments: templates/demo/patio-cleaner.yaml'],
  ] as const)('%# %j', async (run, args, said) => {
    const { status, out, err } = await inProcess(run, args);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain(said);
  });

  it('asks for the pack where a record has several or none', async () => {
    const folder = workshop();
    const [before, after] = demo.split('packs:\n') as [string, string];
    const second = 'packs:\n  - {id: drum, contents: 20 L, label: {width: 200 mm, height: 150 mm}}\n';
    const two = await inProcess(label, [put(folder, 'two.yaml', `${before}${second}${after}`)]);
    expect(two).toMatchObject({ status: 2, out: '' });
    expect(two.err).toContain('--pack is needed; the packs are drum, bottle-946');
    const none = await inProcess(label, [put(folder, 'none.yaml', before)]);
    expect(none).toMatchObject({ status: 2, out: '' });
    expect(none.err).toContain('has no packs; add `packs:`');
  });
});

describe('an output folder that cannot be written', () => {
  it.each([
    [
      'a file is in the way',
      'maker.yaml',
      'cannot write to maker.yaml: a file of that name is in the way; name a folder',
    ],
    ['a file is above it', 'maker.yaml/drafts', 'a part of that path is a file, not a folder'],
  ])('%s', (_, folder, said) => {
    const cwd = workshop();
    const before = filesBelow(cwd);
    const { status, out, err } = labelwright(['sds', 'descaler.yaml', '--out', folder], { cwd });
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain(said);
    expect(err).not.toMatch(stackTrace);
    expect(filesBelow(cwd)).toEqual(before);
  });

  it('writes nothing where one file of several cannot take its name', async () => {
    const cwd = workshop();
    put(cwd, 'keep.txt', 'x');
    const { mkdirSync } = await import('node:fs');
    mkdirSync(`${cwd}/made/sds.json`, { recursive: true });
    const { status, err } = await inProcess(sds, [`${cwd}/descaler.yaml`, '--out', `${cwd}/made`]);
    expect(status).toBe(2);
    expect(err).toContain('a folder stands where a file is to be written');
    expect(filesBelow(`${cwd}/made`)).toEqual([]);
  });

  it('init and headroom say the same', () => {
    const cwd = workshop();
    const said = 'cannot write to maker.yaml: a file of that name is in the way; name a folder\n';
    expect(labelwright(['init', 'maker.yaml'], { cwd })).toEqual({ status: 2, out: '', err: said });
    const { status, err } = labelwright(
      ['headroom', 'descaler.yaml', '--of', '77-92-9', '--out', 'maker.yaml'],
      { cwd },
    );
    expect({ status, err }).toEqual({ status: 2, err: said });
  });
});

describe('a reader that closes early', () => {
  it('is no error', () => {
    const cwd = workshop();
    const files = Array<string>(40).fill('patio-cleaner.yaml').join(' ');
    const script = `{ "${process.execPath}" "${main}" classify ${files}; echo "status $?" >&2; } | head -n 1`;
    const { stdout, stderr } = spawnSync('sh', ['-c', script], { cwd, encoding: 'utf8' });
    expect(stdout.trimEnd().split('\n')).toEqual(['Kerbstone Patio Cleaner (KP-946)']);
    expect(stderr).toBe('status 0\n');
  });
});

describe('a reader of the messages that closes early', () => {
  it('is no error', () => {
    const cwd = workshop();
    put(cwd, 'bad.yaml', demo.replaceAll('percent:', 'percnt:'));
    const files = Array<string>(60).fill('bad.yaml').join(' ');
    const script = `{ "${process.execPath}" "${main}" check ${files} 2>&1; echo "status $?" >&3; } 3>&2 | head -n 1`;
    const { stdout, stderr } = spawnSync('sh', ['-c', script], { cwd, encoding: 'utf8' });
    expect(stdout).toMatch(/^bad\.yaml:\d+:\d+: error/);
    expect(stderr).toMatch(/^status [02]\n$/);
  });
});

describe('gtin', () => {
  it('reads standard input at -', () => {
    const { status, out, err } = labelwright(['gtin', '-'], { input: '614141000418\n96385074\n' });
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('00614141000418');
    expect(out).toContain('GTIN-8');
  });

  it('says 1 for a wrong check digit', () => {
    const { status, out, err } = labelwright(['gtin', '614141000417']);
    expect({ status, out }).toEqual({ status: 1, out: '' });
    expect(err).toContain('7 should be 8');
  });
});
