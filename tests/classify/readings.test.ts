import { describe, expect, it } from 'vitest';
import type { Classification } from '../../src/classify/classification.ts';
import { defaultOf, type ReadingId, readings } from '../../src/classify/readings.ts';
import { labelElements } from '../../src/labelling/elements.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { classifyLines } from '../support/cases.ts';
import { readEdgeCase } from './edge-notation.ts';
import { essence } from './random-mixtures.ts';

type Situation = readonly [basis: BasisId, mixture: string, more?: Readonly<Record<string, unknown>>];

const reserve = {
  class: 'Skin Corr.',
  result: 'not classified',
  kind: 'reserve',
  method: 'reserve',
  source: 'report 1',
};
const test = {
  class: 'Carc.',
  result: 'Carc. 2',
  kind: 'test',
  method: 'study',
  source: 'report 2',
  reason: 'dose',
};

const rest = { name: 'water', amount: 'balance' };

const titanium = { form: 'solid', formula: [{ name: 'a', cas: '13463-67-7', percent: 2 }, rest] };
const formula = (cas: string, percent: number) => ({ formula: [{ name: 'a', cas, percent }, rest] });

/** For each reading a mixture whose result depends on it. */
const situations: Readonly<Record<ReadingId, Situation>> = {
  'us-specific-limits': ['us-hcs', '0.5 % Skin Sens. 1B | limit Skin Sens. 1B: C >= 0.1'],
  'range-end': ['us-hcs', '4 % Skin Corr. 1B', { range: [4, 6] }],
  'below-cut-off': ['us-hcs', '4.5 % Skin Corr. 1B + 0.9 % Skin Corr. 1B'],
  'ate-above-category-4': ['us-hcs', '50 % none | ate vapour 30 mg/L'],
  'same-category': ['us-hcs', '100 % Acute Tox. 2 (oral)'],
  'unknown-correction': ['us-hcs', '24 % Acute Tox. 4 (oral) + 11 % none | unknown acute-oral'],
  'no-entry-for-route': ['us-hcs', '24 % Acute Tox. 4 (oral)'],
  'inhalation-form': ['us-hcs', '30 % Acute Tox. 3 (inhalation)'],
  'inhalation-forms-apart': [
    'us-hcs',
    '30 % Acute Tox. 3 (inhalation: mist) + 30 % Acute Tox. 3 (inhalation: vapour)',
  ],
  'minimum-category': ['eu-clp', '50 % Acute Tox. 4 * (oral)'],
  'unsubcategorised-corrosive': ['us-hcs', '5 % Skin Corr. 1A + 1 % Skin Corr. 1'],
  'show-sub-category': ['us-hcs', '5 % Skin Corr. 1A'],
  'extreme-ph': ['us-hcs', '1 % Skin Irrit. 2 + pH 2'],
  'moderate-ph': ['us-hcs', '5 % Skin Corr. 1B + pH 7'],
  'reserve-alone': ['us-hcs', '1 % Skin Irrit. 2 + pH 2', { evidence: [reserve] }],
  'open-cup': ['us-hcs', '1 % none', { properties: { 'flash-point': '65 C (open cup)' } }],
  'ph-missing': ['us-hcs', '1 % none', formula('1310-73-2', 4)],
  'not-additive': ['us-hcs', '1 % Skin Corr. 1B | not additive'],
  'corrosive-implies-eye': ['eu-clp', '2.5 % Skin Corr. 1B | limit Skin Corr. 1B: C >= 2.5'],
  'eye-damage-statement': ['us-hcs', '5 % Skin Corr. 1B'],
  'eye-2b': ['us-hcs', '10 % Eye Irrit. 2B'],
  'limit-ratio': ['eu-clp', '2 % Skin Irrit. 2 | limit Skin Irrit. 2: C >= 2'],
  'limit-sub-category': [
    'eu-clp',
    '5 % Skin Corr. 1A | limit Skin Corr. 1A: C >= 7 | limit Skin Corr. 1B: 1 <= C < 7',
  ],
  'eye-from-irritant-range': ['eu-clp', '4 % Skin Corr. 1B | limit Eye Irrit. 2: 5 <= C < 20'],
  'limit-upper-end': [
    'eu-clp',
    '5 % STOT SE 3 (respiratory irritation) | limit STOT SE 3; H335: 0.5 <= C < 5',
  ],
  'sensitizer-category': ['us-hcs', '1 % Skin Sens. 1B'],
  'carcinogen-2-label': ['us-hcs', '0.5 % Carc. 2'],
  'stot-se-3-sum': ['us-hcs', '20 % STOT SE 3 (narcotic effects)'],
  'stot-1-below-ten': ['us-hcs', '5 % STOT RE 1'],
  'stot-worst-category': ['us-hcs', '12 % STOT RE 1 (liver) + 12 % STOT RE 2 (kidney)'],
  'aspiration-viscosity': ['us-hcs', '10 % Asp. Tox. 1'],
  'boiling-point-missing': ['us-hcs', '1 % none + flash point 10 C'],
  'm-factor-missing': ['eu-clp', '25 % Aquatic Acute 1'],
  'reproductive-effects': ['eu-clp', '3 % Repr. 1B; H360Fd'],
  'euh-entry-limit': ['eu-clp', '1 % none', formula('10025-67-9', 5)],
  'euh066-share': ['eu-clp', '1 % none', formula('67-64-1', 20)],
  'elicitation-specific-limit': ['eu-clp', '0.01 % Skin Sens. 1 | limit Skin Sens. 1: C >= 0.1'],
  'euh208-other-kind': ['eu-clp', '0.1 % Skin Sens. 1B'],
  'euh210-scope': ['eu-clp', '0.1 % Skin Sens. 1B'],
  'titanium-dioxide': ['eu-clp', '1 % none', titanium],
  'unknown-statement': ['us-hcs', '11 % none | unknown acute-oral'],
  'ate-at-point-estimate': ['us-hcs', '50 % Acute Tox. 2 (oral) | ate oral 5 mg/kg'],
  'ate-before-category': ['us-hcs', '50 % Acute Tox. 4 (oral) | ate oral 250 mg/kg'],
  'vapour-near-gas-phase': ['us-hcs', '30 % Acute Tox. 3 (inhalation: vapour)'],
  'ph-sub-category': ['us-hcs', '5 % Skin Corr. 1B + pH 1'],
  'not-additive-category': ['us-hcs', '1 % Skin Corr. 1B | not additive'],
  'not-additive-limit': ['eu-clp', '2 % Skin Corr. 1B | not additive | limit Skin Corr. 1B: C >= 2'],
  'stot-se-3-beside-1-2': ['us-hcs', '5 % STOT SE 2 + 20 % STOT SE 3 (narcotic effects)'],
  'two-cut-offs': ['un-ghs', '0.5 % Carc. 2'],
  'aspiration-layers': ['us-hcs', '5 % Asp. Tox. 1'],
  'aspiration-aerosol': ['us-hcs', '5 % Asp. Tox. 1', { form: 'aerosol' }],
  'physical-screening': ['us-hcs', '1 % none'],
  'unknown-aquatic': ['eu-clp', '1 % none | unknown aquatic'],
  // Annex VI: EUH071 of succinic anhydride (Skin Corr. 1), EUH014 of disulphur dichloride (Skin Corr. 1A).
  'euh071-entry': ['eu-clp', '1 % none', formula('108-30-5', 5)],
  'euh-asked-by-entry': ['eu-clp', '1 % none', formula('10025-67-9', 5)],
  'euh202-share': ['eu-clp', '1 % none', formula('7085-85-0', 90)],
  'case-by-case': ['us-hcs', '0.1 % Carc. 1B', { evidence: [test] }],
  'building-block-acute-5': ['un-ghs', '60 % none | ate oral 2500 mg/kg'],
  'building-block-skin-3': ['un-ghs', '5 % Skin Irrit. 2'],
  'building-block-eye-2b': ['un-ghs', '10 % Eye Irrit. 2B'],
  'building-block-asp-2': [
    'un-ghs',
    '10 % Asp. Tox. 2',
    { properties: { 'kinematic-viscosity-40C': '14 mm2/s', 'flash-point': 'none' } },
  ],
  'building-block-aquatic-acute-2-3': ['un-ghs', '25 % Aquatic Acute 2'],
  'building-block-flam-liq-4': ['un-ghs', '1 % none + flash point 70 C'],
};

/** Where the first mixture does not show another option: one that does. */
const otherSituations: Readonly<Record<string, Situation>> = {
  'inhalation-form vapour': ['us-hcs', '50 % Acute Tox. 3 (inhalation)', { form: 'solid' }],
};

async function outcome(
  [basis, text, more = {}]: Situation,
  choices: readonly unknown[] = [],
): Promise<Classification> {
  const { formula, properties } = readEdgeCase(`${text} => `);
  const { range, ...rest } = more;
  const lines = formula.map((line, i) => (i === 0 && range ? { ...line, percent: range } : line));
  return classifyLines(lines, basis, { properties, choices, ...rest });
}

describe('readings of the law', () => {
  it.each(Object.keys(readings) as ReadingId[])('%s is reported where a result depends on it', async id => {
    const { readings: reported } = await outcome(situations[id]);
    const entry = reported.find(reading => reading.id === id);
    expect(entry?.taken).toBe(defaultOf(id));
    expect(entry?.cite).toBe(readings[id].cite);
  });

  it.each(Object.keys(readings) as ReadingId[])('%s is not reported for water', async id => {
    const { readings: reported } = await classifyLines([{ name: 'water', percent: 100 }], 'eu-clp');
    expect(reported.map(reading => reading.id)).not.toContain(id);
  });

  const alternatives = Object.entries(readings).flatMap(([id, { options }]) =>
    (options as readonly string[]).slice(1).map(take => [id as ReadingId, take] as const),
  );

  it.each(alternatives)('%s: taking %s changes the result', async (id, take) => {
    const situation = otherSituations[`${id} ${take}`] ?? situations[id];
    const choice = { reading: id, take, reason: 'tested' };
    const shown = async (choices: readonly (typeof choice)[]) => {
      const result = await outcome(situation, choices);
      // A choice that is taken is told where the result depends on it.
      for (const each of choices.filter(({ reading }) => reading === 'us-specific-limits'))
        expect(result.readings.find(({ id: told }) => told === each.reading)?.taken).toBe(each.take);
      const chosen = (reading: string): string | null =>
        choices.find(each => each.reading === reading)?.take ?? null;
      const { hazardStatements, supplemental } = labelElements(result, await loadLabelData(situation[0]), {
        form: 'liquid',
        choice: chosen,
      });
      return { ...essence(result), hazardStatements, supplemental, asked: result.warnings.length };
    };
    expect(await shown([choice])).not.toEqual(await shown([]));
  });

  // A.2.3.1.3: reserve alone lifts nothing.
  it('extreme-ph is reported beside evidence on reserve', async () => {
    const result = await outcome(['us-hcs', '1 % Skin Irrit. 2 + pH 2', { evidence: [reserve] }]);
    expect(result.hazards.map(({ code }) => code)).toEqual(['Skin Corr. 1', 'Eye Dam. 1']);
    expect(result.readings.map(({ id }) => id)).toContain('extreme-ph');
  });
});
