import { describe, expect, it } from 'vitest';
import { classifyLines } from '../support/cases.ts';
import { expand, formulaOf, messages } from './_formula.ts';

const water = { name: 'water', amount: 'balance' };
const citric = (percent: unknown) => ({ name: 'citric acid', cas: '77-92-9', percent });
const lye = (percent: unknown) => ({ name: 'sodium hydroxide', cas: '1310-73-2', percent });

// C6H8O7 + 3 NaOH = C6H5Na3O7 + 3 H2O; molar masses of IUPAC standard atomic weights.
const neutralization = {
  consumes: [
    { of: '77-92-9', moles: 1, 'molar-mass': '192.12 g/mol' },
    { of: 'sodium hydroxide', moles: 3, 'molar-mass': '40.00 g/mol' },
  ],
  forms: [
    {
      name: 'trisodium citrate',
      cas: '68-04-2',
      moles: 1,
      'molar-mass': '258.07 g/mol',
      hazards: [],
      source: 'supplier SDS',
    },
    { name: 'water', moles: 3, 'molar-mass': '18.015 g/mol' },
  ],
};
const shares = (lines: readonly Record<string, unknown>[]) =>
  Object.fromEntries(
    formulaOf(lines, { reacts: [neutralization] }).constituents.map(({ name, high }) => [name, high.value]),
  );

describe('acid and base of a batch become salt and water', () => {
  it('and the excess of the acid is left over', () => {
    // 6 % NaOH are 0.15 mol in 100 g and use up 0.05 mol = 9.606 % of citric acid.
    const found = shares([citric(12), lye(6), water]);
    expect(Object.keys(found)).toEqual(['water', 'trisodium citrate', 'citric acid']);
    expect(found['citric acid']).toBeCloseTo(12 - 9.606, 10);
    expect(found['trisodium citrate']).toBeCloseTo(12.9035, 2);
    expect(Object.values(found).reduce((sum, each) => sum + each)).toBeCloseTo(100, 10);
  });

  it('and the excess of the base', () => {
    const found = shares([citric(9.606), lye(8), water]);
    expect(found['citric acid']).toBeUndefined();
    expect(found['sodium hydroxide']).toBeCloseTo(2, 10);
  });

  it('beside a range of something else, at every composition', () => {
    const dye = { name: 'dye', percent: [1, 2] };
    const formula = formulaOf([citric(12), lye(6), dye, water], { reacts: [neutralization] });
    const at = formula.most(formula.constituents.map(({ name }) => (name === 'dye' ? 1 : 0)));
    const place = formula.constituents.findIndex(({ name }) => name === 'dye');
    expect(at[place]!.value).toBe(2);
    expect(at.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(100, 10);
  });

  // 29 CFR 1910.1200 App. A, Table A.2.3: unreacted, 5 % of a corrosive make Category 1.
  it('so that a citrate cleaner of pH 9 is not judged as caustic', async () => {
    const lines = [citric(9.606), lye(6), water];
    const codes = async (more: Record<string, unknown>) =>
      (await classifyLines(lines, 'us-hcs', { properties: { pH: 9 }, ...more })).hazards.map(
        ({ code }) => code,
      );
    expect(await codes({})).toContain('Skin Corr. 1A');
    expect(await codes({ reacts: [neutralization] })).toEqual([]);
  });

  it('and a reactant that is not there, or is a range, is refused', () => {
    expect(messages(expand([lye(6), water], { reacts: [neutralization] }))[0]).toContain('is no constituent');
    expect(messages(expand([citric([8, 12]), lye(6), water], { reacts: [neutralization] }))[0]).toContain(
      'what is left over is not determined',
    );
  });
});
