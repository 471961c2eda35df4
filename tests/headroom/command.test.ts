import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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

  it('a raw material by its file or its name, in pounds and gallons', async () => {
    const byFile = await called(record, '--of', 'drums/hypochlorite-12.yaml', '--out', out);
    expect(byFile.status).toBe(0);
    // 40 kg of 117 kg: 88.18 lb, at 1.17 g/mL 9.032 gal; 117 / 40 = 2.925.
    expect(byFile.out).toContain('now: 88.18 lb = 9.032 gal; 1 part to 2.925 parts of the product by weight');
    expect(byFile.err).toContain('headroom-sodium-hypochlorite-solution-12.svg');
    const byName = await called(record, '--of', 'Sodium hypochlorite solution 12 %', '--out', out);
    expect(byName.out).toBe(byFile.out);
  });

  it('a raw material that two lines take is one', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'headroom-two-'));
    try {
      writeFileSync(
        join(folder, 'base.yaml'),
        `labelwright: raw-material/1
name: alkali drum
density: 1.2 g/mL
source: test
formula:
  - {name: agent, percent: 20, hazards: [Skin Corr. 1B]}
  - {name: water, amount: balance}
`,
      );
      writeFileSync(join(folder, 'maker.yaml'), readFileSync(join(record, '../maker.yaml')));
      writeFileSync(
        join(folder, 'product.yaml'),
        `labelwright: product/1
name: Two Additions
code: TWO-1
use: Test
form: liquid
maker: maker.yaml
batch: 1000 lb
formula:
  - {use: base.yaml, amount: 60 lb}
  - {use: base.yaml, amount: 40 lb}
  - {name: water, amount: balance}
`,
      );
      const {
        out: text,
        status,
        err,
      } = await called(
        join(folder, 'product.yaml'),
        '--of',
        'base.yaml',
        '--json',
        '--out',
        join(folder, 'out'),
      );
      expect(status, err).toBe(0);
      const json = JSON.parse(text);
      expect(json.current.exact).toEqual(['10', '10']);
      // The agent is a fifth: 1, 3 and 5 % of it (29 CFR 1910.1200 Tables A.2.3 and A.3.3).
      expect(json.breakpoints.map(({ exact }: { exact: string }) => exact)).toEqual(['5', '15', '25']);
      expect(json.breakpoints[2].amount.pounds).toEqual({ value: 250, exact: '250' });
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
