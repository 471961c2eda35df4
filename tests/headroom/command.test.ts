import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/commands/headroom.ts';
import { nodeFiles } from '../../src/cli/files.ts';

const record = join(import.meta.dirname, '../fixtures/good/patio-cleaner.yaml');
const out = mkdtempSync(join(tmpdir(), 'headroom-'));
afterAll(() => rmSync(out, { recursive: true }));

async function called(...args: string[]): Promise<{ status: number; out: string; err: string }> {
  const said = { out: '', err: '' };
  const io = {
    stdin: () => Promise.resolve(''),
    lines: async function* () {},
    out: (text: string) => {
      said.out += text;
    },
    err: (text: string) => {
      said.err += text;
    },
    files: nodeFiles,
    today: '2026-11-25',
  };
  return { status: await run(args, io), ...said };
}

describe('labelwright headroom', () => {
  it('prints the answer and writes the chart', async () => {
    const { status, out: text, err } = await called(record, '--of', 'sodium hydroxide', '--out', out);
    expect(status).toBe(0);
    expect(text).toMatch(/^sodium hydroxide: now /);
    expect(err).toContain('headroom-1310-73-2.svg');
    expect(readFileSync(join(out, 'headroom-1310-73-2.svg'), 'utf8')).toContain('<svg');
  });

  it('--json prints one document, with the balance chosen', async () => {
    const { out: text } = await called(
      record,
      '--of',
      '1310-73-2',
      '--basis',
      'eu-clp',
      '--others',
      'scaled',
      '--json',
      '--out',
      out,
    );
    const json = JSON.parse(text);
    expect(json).toMatchObject({
      schema: 'labelwright/headroom/1',
      others: 'scaled',
      basis: { id: 'eu-clp' },
    });
  });

  it('varies water itself against the others', async () => {
    const { status, out: text } = await called(record, '--of', 'water', '--json', '--out', out);
    expect(status).toBe(0);
    expect(JSON.parse(text).others).toBe('scaled');
  });

  it('an unknown constituent is a wrong call that names the nearest', async () => {
    const { status, out: text, err } = await called(record, '--of', 'sodium hydroxid', '--out', out);
    expect([status, text]).toEqual([2, '']);
    expect(err).toContain('did you mean sodium hydroxide?');
    await expect(called(record, '--out', out)).rejects.toThrow('--of is missing: the constituent');
    expect((await called(record, '--of', 'water', '--others', 'water', '--out', out)).status).toBe(2);
  });
});
