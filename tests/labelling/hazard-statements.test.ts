import { describe, expect, it } from 'vitest';
import thresholds from '../../hazard-data/us-hcs/thresholds.json' with { type: 'json' };
import type { BasisId } from '../../src/classify/classification.ts';
import { labelElements } from '../../src/labelling/elements.ts';
import type { LabelledProduct } from '../../src/labelling/labelled-product.ts';
import { Exact } from '../../src/quantity/exact.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { classified } from './_classified.ts';

const elements = async (basis: BasisId, hazards: string[], product: Partial<LabelledProduct> = {}) =>
  labelElements(classified(basis, hazards), await loadLabelData(basis), { form: 'liquid', ...product });

const texts = async (basis: BasisId, ...hazards: string[]) =>
  (await elements(basis, hazards)).hazardStatements.map(({ text }) => text);

// 29 CFR 1910.1200 App. C, C.2.2.1 and its example of organs and routes.
describe('organs, routes and effects (C.2.2.1)', () => {
  it.each([
    ['STOT RE 1 (kidney)', 'Causes damage to organs (kidney) through prolonged or repeated exposure'],
    [
      'STOT RE 2 (kidney; oral)',
      'May cause damage to organs (kidney) through prolonged or repeated exposure if swallowed',
    ],
    [
      'STOT RE 2 (liver, kidney)',
      'May cause damage to organs (kidney and liver) through prolonged or repeated exposure',
    ],
    ['STOT SE 1', 'Causes damage to organs'],
    ['Repr. 1B; H360FD', 'May damage fertility or the unborn child'],
    ['Carc. 1B; H350i', 'May cause cancer'],
    ['Repr. 2; H361d', 'Suspected of damaging fertility or the unborn child'],
    ['STOT SE 3 (narcotic effects)', 'May cause drowsiness or dizziness'],
    ['Comb. Dust', 'May form combustible dust concentrations in air'],
  ])('%s', async (hazard, text) => {
    expect(await texts('us-hcs', hazard)).toEqual([text]);
  });

  // CLP Annex III: the letters have texts of their own.
  it('keeps the letters in the EU', async () => {
    expect(await texts('eu-clp', 'Repr. 1B; H360FD')).toEqual([
      'May damage fertility. May damage the unborn child.',
    ]);
    expect(await texts('eu-clp', 'STOT RE 1 (liver)')).toEqual([
      'Causes damage to liver through prolonged or repeated exposure.',
    ]);
  });

  it('names the organs of two hazards with one statement together', async () => {
    expect(await texts('us-hcs', 'STOT RE 2 (liver)', 'STOT RE 2 (kidney)')).toEqual([
      'May cause damage to organs (kidney and liver) through prolonged or repeated exposure',
    ]);
  });
});

describe('statements that another one conveys', () => {
  it('H314 stands for H318', async () => {
    for (const basis of ['us-hcs', 'eu-clp', 'un-ghs'] as const) {
      const { hazardStatements, omitted } = await elements(basis, ['Skin Corr. 1B', 'Eye Dam. 1']);
      expect(hazardStatements.map(({ code }) => code)).toEqual(['H314']);
      expect(omitted.map(({ what }) => what)).toContain('H318');
    }
  });

  // UN GHS 1.4.10.5.3.3; CLP Article 27.
  it.each([
    ['eu-clp', ['Aquatic Acute 1', 'Aquatic Chronic 1'], ['H410']],
    ['eu-clp', ['Aquatic Acute 1', 'Aquatic Chronic 2'], ['H400', 'H411']],
    ['un-ghs', ['Aquatic Acute 2', 'Aquatic Chronic 2'], ['H411']],
    ['un-ghs', ['Aquatic Acute 3', 'Aquatic Chronic 3'], ['H412']],
  ] as const)('%s %j', async (basis, hazards, codes) => {
    const { hazardStatements } = await elements(basis, [...hazards]);
    expect(hazardStatements.map(({ code }) => code)).toEqual(codes);
  });
});

// UN GHS Annex 3 Table A3.1.2; CLP Annex III.
describe('combined acute toxicity statements', () => {
  const hazards = ['Acute Tox. 4 (oral)', 'Acute Tox. 4 (dermal)', 'Acute Tox. 4 (inhalation)'];
  it('only on request', async () => {
    expect((await elements('us-hcs', hazards)).hazardStatements).toHaveLength(3);
    const { hazardStatements } = await elements('us-hcs', hazards, { combineHazardStatements: true });
    expect(hazardStatements).toEqual([
      { code: 'H302+H312+H332', text: 'Harmful if swallowed, in contact with skin or if inhaled' },
    ]);
  });

  it('not across categories', async () => {
    const mixed = ['Acute Tox. 3 (oral)', 'Acute Tox. 4 (dermal)'];
    const { hazardStatements } = await elements('us-hcs', mixed, { combineHazardStatements: true });
    expect(hazardStatements.map(({ code }) => code)).toEqual(['H301', 'H312']);
  });
});

// Note to Table A.6.1: a label warning is optional where a Category 2 carcinogen is present from 0.1 % to below 1 %.
describe('Carc. 2 below 1 %', () => {
  const at = (percent: number) => {
    const base = classified('us-hcs', ['Carc. 2']);
    const because = {
      kind: 'ingredients',
      rule: 'at-cut-off',
      cites: [],
      comparisons: [
        {
          constituent: 0,
          amount: Exact.decimal(percent),
          limit: Exact.decimal(0.1),
          reached: true,
          own: '2',
          result: '2',
          specific: false,
        },
      ],
    } as const;
    return { ...base, hazards: base.hazards.map(hazard => ({ ...hazard, because })) };
  };
  it.each([
    [0.5, 'sheet-only', 0],
    [0.5, 'show', 1],
    [0.5, null, 1],
    [1, 'sheet-only', 1],
  ])('%d %% with %s', async (percent, choice, shown) => {
    const result = labelElements(at(percent), await loadLabelData('us-hcs'), {
      form: 'liquid',
      choice: () => choice,
    });
    expect(result.hazardStatements).toHaveLength(shown);
    expect(result.omitted.some(({ what }) => what === 'Carc. 2')).toBe(shown === 0);
  });

  it('has the figure of the classification rules', async () => {
    const { rules } = await loadLabelData('us-hcs');
    expect(JSON.stringify(thresholds)).toContain(
      `"labelOptionalBelow":{"category":"2","percent":${rules.optional[0]!.below}`,
    );
  });
});

// 29 CFR 1910.1200 App. C, C.3.3, read: "X% of the mixture consists of ingredient(s) of unknown acute toxicity
// (oral/dermal/inhalation)": one form, with the routes in brackets.
describe('unknown acute toxicity', () => {
  const unknown = async (
    oral: number,
    dermal: number,
    inhalation: number,
    basis: 'us-hcs' | 'eu-clp' = 'us-hcs',
  ) =>
    labelElements(
      classified(basis, ['Skin Irrit. 2'], { unknownAcuteToxicity: { oral, dermal, inhalation } }),
      await loadLabelData(basis),
      { form: 'liquid' },
    ).supplemental.map(({ text }) => text);

  it('one route', async () => {
    expect(await unknown(4, 0, 0)).toEqual([
      '4% of the mixture consists of ingredient(s) of unknown acute toxicity (oral)',
    ]);
  });
  it('routes with one percentage together', async () => {
    expect(await unknown(4, 4, 6.5)).toEqual([
      '4% of the mixture consists of ingredient(s) of unknown acute toxicity (oral/dermal)',
      '6.5% of the mixture consists of ingredient(s) of unknown acute toxicity (inhalation)',
    ]);
  });
  it('none', async () => {
    expect(await unknown(0, 0, 0)).toEqual([]);
  });

  // CLP Annex I, 3.1.3.6.2.2 and 3.1.4.2, consolidated text of 1 May 2026.
  it('of CLP: without a route where all have one percentage, else a statement a route', async () => {
    expect(await unknown(4, 4, 4, 'eu-clp')).toEqual([
      '4 per cent of the mixture consists of component(s) of unknown acute toxicity',
    ]);
    expect(await unknown(4, 4, 0, 'eu-clp')).toEqual([
      '4 % of the mixture consists of ingredient(s) of unknown acute oral toxicity',
      '4 % of the mixture consists of ingredient(s) of unknown acute dermal toxicity',
    ]);
  });
});

describe('supplemental statements of CLP', () => {
  // CLP Annex II Part 1 and 2.8.
  it('fills the name of the sensitizer, and reports it where it is absent', async () => {
    const given = { code: 'EUH208', fields: { sensitizer: ['d-limonene'] } };
    const { supplemental, missing } = await elements('eu-clp', [], {
      supplementalCodes: [{ code: 'EUH031' }, given, { code: 'EUH208' }],
    });
    expect(supplemental.map(({ text }) => text)).toEqual([
      'Contact with acids liberates toxic gas.',
      'Contains d-limonene. May produce an allergic reaction.',
    ]);
    expect(missing.map(({ what }) => what)).toEqual(['EUH208']);
  });

  it('has those of the classification, once', async () => {
    const because = { kind: 'classes', inhaled: false, cites: [] } as const;
    const found = labelElements(
      classified('eu-clp', [], { supplemental: [{ code: 'EUH031', fields: {}, because }] }),
      await loadLabelData('eu-clp'),
      { form: 'liquid', supplementalCodes: [{ code: 'EUH031' }] },
    );
    expect(found.supplemental).toEqual([{ code: 'EUH031', text: 'Contact with acids liberates toxic gas.' }]);
  });
});
