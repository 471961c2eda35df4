import { describe, expect, it } from 'vitest';
import { metalPercent } from '../../src/reference/harmonised/entry-notes.ts';
import { classifyLines } from '../support/cases.ts';

// Conventional atomic weights of IUPAC, from memory.
const weights: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  F: 18.998,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  Cr: 51.996,
  Co: 58.933,
  As: 74.922,
  Cd: 112.414,
  Hg: 200.592,
  Pb: 207.2,
};
const formulas: readonly (readonly [string, string, string])[] = [
  ['10124-43-3', 'Co', 'CoSO4'],
  ['10141-05-6', 'Co', 'CoN2O6'],
  ['7646-79-9', 'Co', 'CoCl2'],
  ['513-79-1', 'Co', 'CoCO3'],
  ['71-48-7', 'Co', 'CoC4H6O4'],
  ['10325-94-7', 'Cd', 'CdN2O6'],
  ['1306-23-6', 'Cd', 'CdS'],
  ['21041-95-2', 'Cd', 'CdO2H2'],
  ['513-78-0', 'Cd', 'CdCO3'],
  ['115-09-3', 'Hg', 'CH3HgCl'],
  ['593-74-8', 'Hg', 'C2H6Hg'],
  ['627-44-1', 'Hg', 'C4H10Hg'],
  ['13424-46-9', 'Pb', 'PbN6'],
  ['15245-44-0', 'Pb', 'PbC6HN3O8'],
  ['17570-76-2', 'Pb', 'PbC2H6S2O6'],
  ['25808-74-6', 'Pb', 'PbSiF6'],
  ['301-04-2', 'Pb', 'PbC4H6O4'],
  ['7446-27-7', 'Pb', 'Pb3P2O8'],
  ['7758-97-6', 'Pb', 'PbCrO4'],
  ['7784-40-9', 'Pb', 'PbHAsO4'],
];

it.each(formulas)('the metal of %s is its share by formula, rounded up', (cas, metal, formula) => {
  const parts = [...formula.matchAll(/([A-Z][a-z]?)(\d*)/g)].map(
    ([, element, count]) => [element!, Number(count || 1)] as const,
  );
  const mass = (of: typeof parts) => of.reduce((sum, [element, count]) => sum + weights[element]! * count, 0);
  const share = (100 * mass(parts.filter(([element]) => element === metal))) / mass(parts);
  expect(metalPercent(cas)! - share).toBeGreaterThanOrEqual(0);
  expect(metalPercent(cas)! - share).toBeLessThan(0.02);
});

// CLP Annex VI 1.1.3.2, Note 1, from memory of the consolidated text; Table 3: cobalt dichloride 027-004-00-5, Carc. 1B
// from 0.01 %; Repr. 1B without a limit of its own, so from 0.3 % (Table 3.7.2).
describe('limits of a metal compound count the metal', () => {
  const water = { name: 'water', amount: 'balance' };
  const codes = async (percent: number, more: object = {}, basis: 'eu-clp' | 'us-hcs' = 'eu-clp') =>
    (
      await classifyLines([{ name: 'cobalt dichloride', cas: '7646-79-9', percent, ...more }, water], basis)
    ).hazards.map(({ code }) => code);

  it('its specific limits: 0.022 % of the salt is 0.0100 % cobalt', async () => {
    expect(await codes(0.02)).not.toContain('Carc. 1B');
    expect(await codes(0.0221)).toContain('Carc. 1B');
  });

  it('and the generic ones of CLP, not those of United States law', async () => {
    expect(await codes(0.5)).not.toContain('Repr. 1B');
    expect(await codes(0.67)).toContain('Repr. 1B');
    expect(await codes(0.5, {}, 'us-hcs')).toContain('Repr. 1B');
  });

  it('with the content of the record in place of that of the formula', async () => {
    const harmonised = { metal: '24.8 %', source: 'hexahydrate, certificate of analysis' };
    expect(await codes(0.03, { harmonised })).not.toContain('Carc. 1B');
    expect(await codes(0.041, { harmonised })).toContain('Carc. 1B');
  });

  it('and the whole substance counts, which is told, where nobody knows the metal', async () => {
    const pigment = { name: 'C.I. Pigment Yellow 34', cas: '1344-37-2', percent: 0.3 };
    const { hazards, warnings } = await classifyLines([pigment, water], 'eu-clp');
    expect(hazards.map(({ code }) => code)).toContain('Repr. 1A');
    expect(warnings.find(({ id }) => id === 'entry-notes')!.text).toContain('harmonised: {metal');
  });
});
