import { describe, expect, it } from 'vitest';
import type { Classification } from '../../src/classify/classification.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { classifyLines } from '../support/cases.ts';

type Hazards = string | readonly string[];
const part = (percent: number, hazards: Hazards, more: Record<string, unknown> = {}) => ({
  name: `part with ${hazards.length > 0 ? hazards : 'no hazard'} at ${percent}`,
  percent,
  hazards: typeof hazards === 'string' ? [hazards] : hazards,
  source: 'test',
  ...more,
});
const water = { name: 'water', amount: 'balance' };
const bases = ['us-hcs', 'eu-clp', 'un-ghs'] as const;

const outcomeOf = ({ hazards, otherClasses }: Classification, name: string): string =>
  hazards.find(({ hazardClass }) => hazardClass === name)?.code ??
  otherClasses.find(other => other.class === name)?.outcome ??
  'not examined';

const classify = (
  formula: readonly Record<string, unknown>[],
  form: string,
  basis: BasisId = 'us-hcs',
  more: Record<string, unknown> = {},
) => classifyLines(formula, basis, { form, ...more });

// 29 CFR 1910.1200 App. B, B.3.1.2.1, B.3.1.2.2 with Table B.3.1; CLP Annex I 2.3.2.1, 2.3.2.2 Note.
describe('aerosols', () => {
  it.each(bases)('above 1 % of flammable components are Category 1 without a test, under %s', async basis => {
    for (const [percent, expected] of [
      [1, 'insufficient-data'],
      [1.01, 'Aerosol 1'],
    ] as const) {
      const result = await classify([part(percent, 'Flam. Liq. 2'), water], 'aerosol', basis);
      expect(outcomeOf(result, 'Aerosol')).toBe(expected);
    }
  });

  it('sum gases, liquids and solids that are flammable, by mass', async () => {
    const parts = [part(0.4, 'Flam. Gas 1'), part(0.4, 'Flam. Liq. 4'), part(0.4, 'Flam. Sol. 2')];
    const result = await classify([...parts, water], 'aerosol');
    expect(outcomeOf(result, 'Aerosol')).toBe('Aerosol 1');
    expect(result.hazards[0]!.because).toMatchObject({ total: 1.2, limit: 1 });
    expect(result.hazards[0]!.because.cite).toContain('Table B.3.1, Note 3');
  });

  it('are never free of the class: without flammable components the heat of combustion is asked for', async () => {
    const result = await classify([water], 'aerosol');
    const other = result.otherClasses.find(({ class: name }) => name === 'Aerosol')!;
    expect(other.outcome).toBe('insufficient-data');
    expect(other.because.working).toContain('20 kJ/g');
  });

  it('take the category that a test in the record gives', async () => {
    const evidence = [
      { class: 'Aerosol', result: 'Aerosol 3', kind: 'test', method: 'ignition distance', source: 'r' },
    ];
    const result = await classify([part(30, 'Flam. Liq. 2'), water], 'aerosol', 'us-hcs', { evidence });
    expect(outcomeOf(result, 'Aerosol')).toBe('Aerosol 3');
  });

  // Table B.3.1, Note 2; CLP 2.3.2.1, Note 2: not flammable gases, liquids, solids, gases under pressure; others may apply.
  it.each(bases)('may have other classes, but not four, under %s', async basis => {
    const parts = [part(5, 'Ox. Liq. 2'), part(5, ['Flam. Gas 1', 'Press. Gas']), part(5, 'Flam. Sol. 1')];
    const result = await classify([...parts, part(5, 'Skin Corr. 1B'), water], 'aerosol', basis);
    for (const name of ['Flam. Gas', 'Press. Gas', 'Flam. Liq.', 'Flam. Sol.'])
      expect(outcomeOf(result, name)).toBe('not-applicable');
    for (const name of ['Ox. Liq.', 'Met. Corr.']) expect(outcomeOf(result, name)).toBe('insufficient-data');
  });
});

describe('gases', () => {
  // B.2.2.1, Note 4, and B.2.3.3: more than 1 % by volume of pyrophoric components.
  it('mixtures with more than 1 % of pyrophoric gases are pyrophoric, at or below it is left open', async () => {
    const at = (percent: number) =>
      classify([part(percent, ['Flam. Gas 1A', 'Pyr. Gas']), part(100 - percent, [])], 'gas');
    expect(outcomeOf(await at(1), 'Pyr. Gas')).toBe('insufficient-data');
    expect(outcomeOf(await at(1.1), 'Pyr. Gas')).toBe('Pyr. Gas');
    expect(outcomeOf(await at(1.1), 'Flam. Gas')).toBe('insufficient-data');
  });

  // B.2.2.1, Note 2: Category 1A where no data allow 1B; Annex VI still writes Category 1.
  it('a single flammable gas of the older Category 1 is Category 1A', async () => {
    const result = await classify([part(100, 'Flam. Gas 1')], 'gas');
    expect(outcomeOf(result, 'Flam. Gas')).toBe('Flam. Gas 1A');
  });

  // B.5.1: pressure and liquefaction make the class; 1910.1200(c): what displaces oxygen in the air.
  it('are not shown by their ingredients to be free of pressure or of displacing oxygen', async () => {
    const result = await classify([part(100, [])], 'gas');
    expect(outcomeOf(result, 'Press. Gas')).toBe('insufficient-data');
    expect(outcomeOf(result, 'Simple Asphyx.')).toBe('insufficient-data');
  });
});

describe('solids and liquids', () => {
  // 1910.1200(c), definition of combustible dust: no list of substances tells it.
  it('a solid may be a combustible dust until the record says otherwise', async () => {
    expect(outcomeOf(await classify([part(100, [])], 'solid'), 'Comb. Dust')).toBe('insufficient-data');
    const evidence = [
      { class: 'Comb. Dust', result: 'not classified', kind: 'test', method: 'screening', source: 'r' },
    ];
    const tested = await classify([part(100, [])], 'solid', 'us-hcs', { evidence });
    expect(outcomeOf(tested, 'Comb. Dust')).toBe('not-classified');
  });

  // Table B.13.1 takes a 40 % solution of sodium chlorate, an oxidizing solid, as the mark of Ox. Liq. 2.
  it.each(bases)('a solution of an oxidizing solid leaves oxidizing liquids open, under %s', async basis => {
    const at = async (percent: number) =>
      outcomeOf(await classify([part(percent, 'Ox. Sol. 1'), water], 'liquid', basis), 'Ox. Liq.');
    expect(await at(40)).toBe('insufficient-data');
    expect(await at(0.9)).toBe('not-classified');
  });

  // B.1.3.3: a mixture with any known explosive needs the acceptance procedure; B.17.1.1: or is desensitized.
  it('any explosive ingredient leaves explosives and desensitized explosives open', async () => {
    const result = await classify([part(1, 'Unst. Expl.'), water], 'liquid');
    for (const name of ['Expl.', 'Desens. Expl.']) expect(outcomeOf(result, name)).toBe('insufficient-data');
  });

  // B.3.2.1: liquids and solids pressurized with a gas in other receptacles than aerosol dispensers.
  it('a liquid with a gas may be a chemical under pressure', async () => {
    const name = 'Chem. under Press.';
    expect(outcomeOf(await classify([part(5, 'Press. Gas'), water], 'liquid'), name)).toBe(
      'insufficient-data',
    );
    expect(outcomeOf(await classify([water], 'liquid'), name)).toBe('not-classified');
    const evidence = [{ class: name, result: `${name} 1`, kind: 'test', method: 'calculation', source: 'r' }];
    expect(outcomeOf(await classify([water], 'liquid', 'us-hcs', { evidence }), name)).toBe(`${name} 1`);
  });
});

// CLP Article 10: a limit decides for the ingredient that has it.
describe('specific limits of physical classes', () => {
  const limited = (percent: number) => part(percent, 'Ox. Liq. 1', { limits: ['Ox. Liq. 3: C >= 50'] });
  const at = async (...parts: readonly Record<string, unknown>[]) =>
    outcomeOf(await classify([...parts, water], 'liquid', 'eu-clp'), 'Ox. Liq.');

  it('a second ingredient that passes its limit counts beside a first that does not', async () => {
    expect(await at(limited(10), { ...limited(60), name: 'other' })).toBe('Ox. Liq. 3');
  });

  it('an ingredient of the class without a limit leaves it open', async () => {
    expect(await at(limited(10))).toBe('not-classified');
    expect(await at(limited(10), part(10, 'Ox. Liq. 2'))).toBe('insufficient-data');
  });

  it('an ingredient without any data leaves it open', async () => {
    expect(await at(limited(10), { name: 'blend', percent: 10 })).toBe('insufficient-data');
  });
});
