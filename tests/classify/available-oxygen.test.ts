import { describe, expect, it } from 'vitest';
import { availableOxygen } from '../../src/classify/classes/organic-peroxides.ts';
import type { Classification } from '../../src/classify/classification.ts';
import { highestOf } from '../../src/classify/contexts.ts';
import { openReference } from '../../src/draft/open-reference.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import { type BasisId, basisIds } from '../../src/reference/basis.ts';
import { classifyLines, readRecord, recordAround } from '../support/cases.ts';

type Line = Readonly<Record<string, unknown>>;

const peroxide = (percent: unknown, groups = 1, mass = '194.2 g/mol', more: Line = {}): Line => ({
  name: `peroxide ${groups} ${mass}`,
  percent,
  hazards: ['Org. Perox. C'],
  peroxide: { groups, 'molar-mass': mass },
  ...more,
});
const hydrogenPeroxide = (percent: number): Line => ({
  name: 'hydrogen peroxide',
  cas: '7722-84-1',
  percent,
});
const water: Line = { name: 'water', amount: 'balance' };

const found = ({ hazards, otherClasses }: Classification) =>
  hazards.find(({ hazardClass }) => hazardClass === 'Org. Perox.')?.code ??
  otherClasses.find(each => each.class === 'Org. Perox.')!.outcome;

const outcome = async (lines: readonly Line[], basis: BasisId = 'us-hcs') =>
  found(await classifyLines([...lines, water], basis));

const reasonOf = async (lines: readonly Line[], basis: BasisId = 'us-hcs') =>
  (await classifyLines([...lines, water], basis)).otherClasses.find(each => each.class === 'Org. Perox.')!
    .because;

async function oxygen(lines: readonly Line[]) {
  const record = readRecord(recordAround({ formula: lines }));
  const formula = expandFormula(record);
  const reference = await openReference('us-hcs', '2026-11-25');
  if (!formula.ok || !reference.ok) throw new Error('not opened');
  const { basis, lookup } = reference.value;
  const { mixture } = highestOf(record, formula.value, basis, lookup);
  return availableOxygen(mixture, basis.organicPeroxides);
}

describe('availableOxygen', () => {
  // The Merck Index prints 26.42 % oxygen for dibenzoyl peroxide, C14H10O4, 242.23 g/mol: one atom of four is available.
  it('is a quarter of the oxygen of dibenzoyl peroxide', async () => {
    const { value } = (await oxygen([{ ...peroxide(100, 1, '242.23 g/mol'), cas: '94-36-0' }]))!;
    expect(value).toBeCloseTo(26.42 / 4, 2);
  });

  // 194.2 / 16 = 12.1375.
  it('is exact', async () => {
    const exact = (await oxygen([peroxide(12.1375), water]))!.exact;
    expect(exact.toFraction()).toBe('1');
  });

  // 16 x (2 x 4 / 290.44 + 1 x 8 / 270.37) = 16 x (0.0275444 + 0.0295891) = 0.914136.
  it('adds up peroxides, each with its groups and its molar mass', async () => {
    const { value } = (await oxygen([
      peroxide(4, 2, '290.44 g/mol'),
      peroxide(8, 1, '270.37 g/mol'),
      water,
    ]))!;
    expect(value).toBeCloseTo(0.914136, 5);
  });

  it('is not known while a peroxide has no data', async () => {
    const bare = { name: 'other peroxide', percent: 1, hazards: ['Org. Perox. D'] };
    expect(await oxygen([peroxide(4), bare, water])).toBeNull();
  });
});

// 12.1375 % of 194.2 g/mol has 1.0 % available oxygen, 6.06875 % has 0.5 %.
describe.each(basisIds)('organic peroxides under %s', basis => {
  it.each([
    // B.15.2.1(a); CLP and UN 2.15.2.1(a): not more than 1.0 % with not more than 1.0 % hydrogen peroxide.
    [12.1375, 0, 'not-classified'],
    [12.1376, 0, 'insufficient-data'],
    [12.1375, 1, 'not-classified'],
    // B.15.2.1(b); CLP and UN 2.15.2.1(b): not more than 0.5 % with more than 1.0 % and not more than 7.0 %.
    [12.1375, 1.0001, 'insufficient-data'],
    [6.06875, 1.0001, 'not-classified'],
    [6.06876, 1.0001, 'insufficient-data'],
    [6.06875, 7, 'not-classified'],
    [6.06875, 7.0001, 'insufficient-data'],
    [0.1, 7.0001, 'insufficient-data'],
  ])('%d % with %d % hydrogen peroxide: %s', async (percent, hydrogen, expected) => {
    const lines = hydrogen > 0 ? [peroxide(percent), hydrogenPeroxide(hydrogen)] : [peroxide(percent)];
    expect(await outcome(lines, basis)).toBe(expected);
  });
});

describe('organic peroxides', () => {
  it('are shown as worked on paper, with the paragraph', async () => {
    // 16 x 5 / 194.2 = 0.411946.
    const because = await reasonOf([peroxide(5), hydrogenPeroxide(2)]);
    expect(because.cite).toBe('29 CFR 1910.1200 App. B, B.15.2.1(b), B.15.2.1, Note');
    expect(because.working).toBe(
      '16 x (1 x 5 / 194.2 peroxide 1 194.2 g/mol) = 0.411946 % available oxygen <= 0.5 %; hydrogen peroxide 2 % <= 7 %',
    );
    expect(because).toMatchObject({ limit: 0.5, unit: '%' });
    expect((await reasonOf([peroxide(5), hydrogenPeroxide(2)], 'eu-clp')).cite).toBe(
      'CLP Annex I, 2.15.2.1(b), 2.15.2.1, Note',
    );
  });

  it('above the limits wait for tests (B.15.2.2)', async () => {
    const { working } = await reasonOf([peroxide(40)]);
    expect(working).toMatch(/^16 x .* > 1 %; .*; types A to G follow from tests \(B\.15\.2\.2\)$/);
  });

  it('without data name the peroxide that lacks them', async () => {
    const bare = { name: 'other peroxide', percent: 1, hazards: ['Org. Perox. D'] };
    const { working } = await reasonOf([peroxide(5), bare]);
    expect(working).toContain('`peroxide` of other peroxide;');
    expect(working).toContain('1 % other peroxide, itself Org. Perox. D');
    expect(await outcome([peroxide(5), bare])).toBe('insufficient-data');
  });

  // B.15.1.1: the structure makes an organic peroxide, whatever it is classified as.
  it('count by their structure, also where they are not classified', async () => {
    const plain = { hazards: ['Skin Sens. 1'] };
    expect(await outcome([peroxide(40, 1, '194.2 g/mol', plain)])).toBe('insufficient-data');
    expect(await outcome([peroxide(5, 1, '194.2 g/mol', plain)])).toBe('not-classified');
  });

  it('take their class from the harmonised entry, their oxygen from the record', async () => {
    const dibenzoyl = {
      name: 'dibenzoyl peroxide',
      cas: '94-36-0',
      percent: 10,
      peroxide: { groups: 1, 'molar-mass': '242.23 g/mol' },
    };
    // 16 x 10 / 242.23 = 0.66 %.
    expect(await outcome([dibenzoyl])).toBe('not-classified');
    expect(await outcome([{ ...dibenzoyl, percent: 20 }])).toBe('insufficient-data');
    expect(await outcome([{ ...dibenzoyl, peroxide: undefined }])).toBe('insufficient-data');
  });

  it('are judged at the worst end of a range', async () => {
    expect(await outcome([peroxide([10, 12])])).toBe('not-classified');
    expect(await outcome([peroxide([10, 13])])).toBe('insufficient-data');
  });

  it('stay undecided beside a constituent of which nothing is known', async () => {
    expect(await outcome([peroxide(5), { name: 'unknown resin', percent: 5 }])).toBe('insufficient-data');
  });

  it('count hydrogen peroxide by name where it has no number', async () => {
    const unnumbered = { name: 'Hydrogen peroxide', percent: 8, hazards: ['Eye Dam. 1'] };
    expect(await outcome([peroxide(5), unnumbered])).toBe('insufficient-data');
  });

  it('alone are what they are classified as', async () => {
    expect(found(await classifyLines([peroxide(100)]))).toBe('Org. Perox. C');
  });

  it('take a test before any calculation', async () => {
    const test = {
      class: 'Org. Perox.',
      result: 'Org. Perox. F',
      kind: 'test',
      method: 'UN Manual',
      source: 'report 1',
    };
    expect(found(await classifyLines([peroxide(40), water], 'us-hcs', { evidence: [test] }))).toBe(
      'Org. Perox. F',
    );
  });

  it('are no question where there are none', async () => {
    expect(await outcome([{ name: 'salt', percent: 5, hazards: [], source: 'invented' }])).toBe(
      'not-classified',
    );
  });
});
