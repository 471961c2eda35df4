import { describe, expect, it } from 'vitest';
import table from '../../hazard-data/strong-acids-and-bases.json' with { type: 'json' };
import { isCas } from '../../src/notation/cas.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { classifyLines } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };
const lye = (percent: number, more: Record<string, unknown> = {}) => ({
  name: 'sodium hydroxide',
  cas: '1310-73-2',
  percent,
  ...more,
});
const typed = { hazards: ['Skin Corr. 1A', 'Eye Dam. 1'], source: 'test' };

const skinOf = async (
  lines: readonly Record<string, unknown>[],
  basis: BasisId = 'us-hcs',
  more: Record<string, unknown> = {},
) => {
  const { hazards, warnings, readings } = await classifyLines([...lines, water], basis, more);
  return {
    codes: hazards.map(({ code }) => code).filter(code => /^(Skin|Eye) (Corr|Irrit|Dam)/.test(code)),
    asked: warnings.filter(({ id }) => id === 'ph-missing').map(({ text }) => text),
    taken: readings.find(({ id }) => id === 'ph-missing')?.taken,
  };
};

// 29 CFR 1910.1200 App. A, A.2.3.3.4 with Table A.2.4 and A.3.3.3.4 with Table A.3.4: of strong acids and bases the pH is
// the criterion; acids of pH 2 or less and bases of pH 11.5 or more give Category 1 from 1 %.
describe('a corrosive cleaner without a pH does not come out as an irritant', () => {
  it.each([
    ['sulfuric acid', '7664-93-9', 4],
    ['methanesulfonic acid', '75-75-2', 4],
    ['sodium hydroxide', '1310-73-2', 4],
    ['disodium metasilicate', '6834-92-0', 4.5],
    ['sodium hydroxide', '1310-73-2', 1],
  ])('%s', async (name, cas, percent) => {
    const { codes, asked, taken } = await skinOf([{ name, cas, percent, ...typed }]);
    expect(codes).toEqual(['Skin Corr. 1', 'Eye Dam. 1']);
    expect(asked).toHaveLength(1);
    expect(asked[0]).toContain('measure the pH');
    expect(taken).toBe('category-1');
  });

  it('by its name where it has no number, and is corrosive', async () => {
    const drum = { name: 'Muriatic acid 20 Baume', percent: 2, hazards: ['Skin Corr. 1B'], source: 'test' };
    expect((await skinOf([drum])).codes[0]).toBe('Skin Corr. 1');
    const blocker = { name: 'aluminium hydroxide', percent: 2, hazards: [], source: 'test' };
    expect((await skinOf([blocker])).asked).toEqual([]);
  });

  it('at the worse end of a range', async () => {
    expect((await skinOf([lye(1, { ...typed, percent: [0.5, 1] })])).codes[0]).toBe('Skin Corr. 1');
  });

  it('is asked for below 1 % too, where Table A.2.4 gives no category', async () => {
    const { codes, asked } = await skinOf([lye(0.5, typed)]);
    expect(codes).toEqual([]);
    expect(asked).toHaveLength(1);
  });

  it('unless the record has a pH, or chooses the sum', async () => {
    const measured = await skinOf([lye(4, typed)], 'us-hcs', { properties: { pH: 9 } });
    expect(measured).toEqual({ codes: ['Skin Irrit. 2', 'Eye Dam. 1'], asked: [], taken: undefined });
    const choices = [{ reading: 'ph-missing', take: 'by-sum', reason: 'buffered' }];
    const chosen = await skinOf([lye(4, typed)], 'us-hcs', { choices });
    expect(chosen.codes[0]).toBe('Skin Irrit. 2');
    expect(chosen.asked[0]).toContain('by the sum');
  });

  // CLP Article 10: a specific limit that counts decides; Annex VI gives sodium hydroxide Skin Corr. 1B from 2 %.
  it('and a specific limit decides where it counts', async () => {
    expect((await skinOf([lye(1.5)], 'eu-clp')).codes[0]).toBe('Skin Irrit. 2');
    expect((await skinOf([lye(1.5)], 'us-hcs')).codes[0]).toBe('Skin Corr. 1');
  });

  it('with one warning for an acid and a base', async () => {
    const acid = { name: 'phosphoric acid', cas: '7664-38-2', percent: 2 };
    expect((await skinOf([lye(2), acid])).asked).toHaveLength(1);
  });
});

describe('the list of strong acids and bases', () => {
  it('has each number once, and valid', () => {
    const numbers = table.members.map(({ cas }) => cas);
    expect(new Set(numbers).size).toBe(numbers.length);
    for (const cas of numbers) expect([cas, isCas(cas)]).toEqual([cas, true]);
  });
});
