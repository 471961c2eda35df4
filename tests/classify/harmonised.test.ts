import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { metalPercent } from '../../src/reference/harmonised/entry-notes.ts';
import { calculated, changesOf, classifierOfRows, rowsInForce } from './harmonised-rows.ts';

interface Exceptions {
  readonly asOf: string;
  readonly reasons: readonly {
    readonly reason: string;
    readonly cite: string;
    /** Rows by what changes: `+` gained, `-` lost. */
    readonly changes: Readonly<Record<string, readonly string[]>>;
  }[];
}

const { asOf, reasons } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../cases/harmonised-exceptions.json'), 'utf8'),
) as Exceptions;

// CLP Annex VI Table 3 is the outside source: a substance that is the whole of a mixture has the hazards of its row.
describe(`each row of CLP Annex VI Table 3 in force on ${asOf}, at 100 %`, async () => {
  const rows = rowsInForce(asOf);
  const classifyRow = await classifierOfRows(asOf);
  const found = new Map<string, string[]>();
  for (const [key, row] of rows) {
    const changes = changesOf(row, classifyRow(row, 100));
    if (changes.length > 0) found.set(key, changes);
  }
  const listed = new Map<string, string[]>();
  for (const { changes } of reasons)
    for (const [change, keys] of Object.entries(changes))
      for (const key of keys) listed.set(key, [...(listed.get(key) ?? []), change].sort());

  it('covers the table', () => expect(rows.size).toBeGreaterThan(4500));

  it('classifies as its row, but for the exceptions listed with a reason', () => {
    const unexplained = [...found].filter(([key, changes]) => changes.join() !== listed.get(key)?.join());
    expect(unexplained).toEqual([]);
  });

  it('has no listed exception that is none', () => {
    const stale = [...listed].filter(([key, changes]) => changes.join() !== found.get(key)?.join());
    expect(stale).toEqual([]);
  });

  it('names a reason and a paragraph for each group', () => {
    for (const { reason, cite } of reasons)
      expect([reason.length > 20, cite.length > 5]).toEqual([true, true]);
  });

  const limits = [...rows].flatMap(([key, row]) =>
    row.limits
      .filter(limit => limit.low !== null && calculated(limit))
      .map(limit => ({ key, row, limit, low: limit.low!.value })),
  );
  const worse: Readonly<Record<string, string>> = { 'Skin Irrit.': 'Skin Corr.', 'Eye Irrit.': 'Eye Dam.' };

  // A quotient in floating point may fall short of the limit that it stands for.
  const ABOVE = 1 + 1e-12;

  it('gives the class of each specific limit at its lower end', () => {
    expect(limits.length).toBeGreaterThan(600);
    const lacking = limits.filter(({ row, limit, low }) => {
      // Note 1: limits count the metal in the substance (CLP Annex VI 1.1.3.2).
      const metal = row.notes.includes('1') ? metalPercent(row.cas) : null;
      const { hazards } = classifyRow(row, metal === null ? low : Math.min(100, (low * 100 * ABOVE) / metal));
      return !hazards.some(
        ({ hazardClass, category }) =>
          hazardClass === worse[limit.hazardClass] ||
          (hazardClass === limit.hazardClass && (category[0] ?? '') <= (limit.category[0] ?? '')),
      );
    });
    expect(lacking.map(({ key, limit }) => `${key} ${limit.code}`)).toEqual([]);
  });

  it('does not give a class that one ingredient decides below its lowest specific limit', () => {
    const single = ['Resp. Sens.', 'Skin Sens.', 'Muta.', 'Carc.', 'STOT RE'];
    const lowest = limits.filter(
      ({ row, limit, low }) =>
        single.includes(limit.hazardClass) &&
        row.limits.every(
          other => other.hazardClass !== limit.hazardClass || other.low === null || other.low.value >= low,
        ),
    );
    expect(lowest.length).toBeGreaterThan(100);
    const given = lowest.filter(({ row, limit, low }) =>
      classifyRow(row, low * 0.999).hazards.some(({ hazardClass }) => hazardClass === limit.hazardClass),
    );
    expect(given.map(({ key, limit }) => `${key} ${limit.code}`)).toEqual([]);
  });
});
