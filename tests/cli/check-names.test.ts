import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { recordAround } from '../support/cases.ts';
import { inProcess } from './_command.ts';

const checked = async (line: Record<string, unknown>, ...args: string[]) => {
  const path = join(mkdtempSync(join(tmpdir(), 'check-')), 'product.json');
  const record = recordAround({
    formula: [
      { percent: 10, ...line },
      { name: 'water', amount: 'balance' },
    ],
  });
  writeFileSync(path, JSON.stringify(record));
  return inProcess(check, [path, ...args]);
};

// Names and numbers: CLP Annex VI Table 3, 011-002-00-6 and 011-005-00-2.
describe('check', () => {
  it('asks where the name is that of another number, and shows what the table calls it', async () => {
    const { status, out } = await checked({ name: 'sodium hydroxide', cas: '497-19-8' });
    expect(status).toBe(0);
    expect(out).toContain('question: sodium hydroxide: CAS 497-19-8 is sodium carbonate');
    expect(out).toContain('sodium hydroxide (1310-73-2)');
    expect(out).toContain('[in the table: sodium carbonate (011-005-00-2)]');
  });

  it('asks nothing where they agree', async () => {
    const { out } = await checked({ name: 'caustic soda', cas: '1310-73-2' });
    expect(out).not.toContain('question');
    expect(out).not.toContain('in the table');
  });

  it('proposes entries for a name without a number', async () => {
    const { out } = await checked({ name: 'isopropyl alcohol' });
    expect(out).toMatch(/question: isopropyl alcohol: there is no CAS number.*\(67-63-0\)/);
    const json = JSON.parse((await checked({ name: 'isopropyl alcohol' }, '--json')).out) as {
      products: {
        constituents: { name: string; question?: { kind: string; proposals: { cas: string }[] } }[];
      }[];
    };
    const found = json.products[0]!.constituents.find(({ name }) => name === 'isopropyl alcohol');
    expect(found!.question).toMatchObject({
      kind: 'number-missing',
      proposals: [{ cas: '67-63-0' }],
    });
  });

  it.each(['proprietary', 'Trade Secret', 'N/A', 'mixture'])('says what to do with cas: %s', async cas => {
    const { status, err } = await checked({ name: 'surfactant', cas, hazards: ['Eye Irrit. 2'] });
    expect(status).toBe(2);
    expect(err).toContain('leave `cas` out; give `hazards` with the `source`');
  });
});
