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
  it('doubts a name that is that of another number, and shows what the table calls it', async () => {
    const { status, out, err } = await checked({ name: 'sodium hydroxide', cas: '497-19-8' });
    expect(status).toBe(0);
    expect(err).toContain('warning: `sodium hydroxide` stands beside CAS number 497-19-8');
    expect(err).toContain('that of `sodium carbonate`');
    expect(err).toContain('`sodium hydroxide` has CAS number 1310-73-2');
    expect(out).toContain('sodium hydroxide (497-19-8), in the table: sodium carbonate');
  });

  it('doubts nothing where they agree', async () => {
    const { out, err } = await checked({ name: 'caustic soda', cas: '1310-73-2' });
    expect(err).not.toContain('stands beside');
    expect(out).not.toContain('has no CAS number');
  });

  it('proposes entries for a name without a number', async () => {
    const { out } = await checked({ name: 'isopropyl alcohol' });
    expect(out).toMatch(/note: `isopropyl alcohol` has no CAS number.*\(cas: 67-63-0\)/);
  });

  it.each(['proprietary', 'Trade Secret', 'N/A', 'mixture'])('says what to do with cas: %s', async cas => {
    const { status, err } = await checked({ name: 'surfactant', cas, hazards: ['Eye Irrit. 2'] });
    expect(status).toBe(2);
    expect(err).toContain('leave `cas` out; give `hazards` with `source`');
  });
});
