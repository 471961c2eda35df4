import {
  compare,
  compareSum,
  meetsScaled,
  type Part,
  reaches,
  show,
  showBeside,
  sumOf,
  tidy,
} from '../../quantity/sum.ts';
import type { AcuteKey } from '../../reference/thresholds.ts';
import type { Because } from '../classification.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, citeHealth } from '../context.ts';
import { concerns, type Ingredient, inhalationFormOf } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import { reason } from '../reasons.ts';
import { estimateOf, knownInAnotherForm } from './_acute-estimate.ts';

type RouteName = 'oral' | 'dermal' | 'inhalation';

const keysOf: Readonly<Record<RouteName, readonly AcuteKey[]>> = {
  oral: ['oral'],
  dermal: ['dermal'],
  inhalation: ['gas', 'vapour', 'mist'],
};

const unitOf: Readonly<Record<AcuteKey, string>> = {
  oral: 'mg/kg',
  dermal: 'mg/kg',
  gas: 'ppmV',
  vapour: 'mg/L',
  mist: 'mg/L',
};

const statementOf: Readonly<Record<RouteName, Readonly<Record<string, string>>>> = {
  oral: { '1': 'H300', '2': 'H300', '3': 'H301', '4': 'H302', '5': 'H303' },
  dermal: { '1': 'H310', '2': 'H310', '3': 'H311', '4': 'H312', '5': 'H313' },
  inhalation: { '1': 'H330', '2': 'H330', '3': 'H331', '4': 'H332', '5': 'H333' },
};

/** The acute toxicity of a mixture by one route and form. */
export interface AcuteSum {
  readonly key: AcuteKey;
  readonly ateMix: number | null;
  readonly category: string | null;
  /** Percent of relevant ingredients of unknown toxicity. */
  readonly unknown: number;
  /** Bound of the category, or of the last one; null where nothing counts. */
  readonly limit: number | null;
  /** Ci / ATEi of the ingredients that count. */
  readonly parts: readonly Part[];
  readonly because: Because;
  readonly readings: readonly ReadingId[];
}

const endpointOf = (key: AcuteKey) =>
  key === 'oral' ? 'acute-oral' : key === 'dermal' ? 'acute-dermal' : 'acute-inhalation';

/**
 * Additivity formula, A.1.3.6.1 and A.1.3.6.2.4; CLP and UN 3.1.3.6.1 and 3.1.3.6.2.3:
 * 100 / ATEmix = sum of Ci / ATEi, or (100 - unknown) / ATEmix where more than 10 % is unknown.
 */
export function acuteSum({ mixture, basis, take }: Context, key: AcuteKey): AcuteSum {
  const rules = basis.acuteToxicity;
  const chosen = take('inhalation-form');
  const unnamedForm = chosen === 'by-state' ? inhalationFormOf(mixture.form) : (chosen as AcuteKey);
  const parts: Part[] = [];
  const terms: { name: string; percent: number; weight: number }[] = [];
  const unknownParts: Part[] = [];
  const used = new Set<ReadingId>();
  let shared: string | null | undefined;
  for (const ingredient of mixture.ingredients) {
    const { percent, data } = ingredient;
    // The lower end of a range may be nothing.
    if (percent.value === 0) continue;
    const estimate = estimateOf(ingredient, key, rules, unnamedForm);
    shared = shared === undefined || shared === estimate?.category ? (estimate?.category ?? null) : null;
    if (!estimate) {
      if (data.unknown.has(endpointOf(key)) && !knownInAnotherForm(ingredient, key)) {
        if (reaches(percent, rules.unknown.relevantFrom.percent))
          unknownParts.push({ amount: percent, weight: 1 });
      } else if (data.hazards.length > 0) used.add('no-entry-for-route');
      continue;
    }
    if (compare(estimate.value, rules.countsUpTo[key]) > 0) continue;
    if (estimate.category === null && key !== 'oral' && key !== 'dermal') used.add('ate-above-category-4');
    if (estimate.converted && data.minimum) used.add('minimum-category');
    const floor = Number(rules.relevantFrom[estimate.category ?? '5']);
    if (!ingredient.relevant && !reaches(percent, floor)) {
      used.add('below-cut-off');
      continue;
    }
    parts.push({ amount: percent, weight: 1, over: estimate.value });
    terms.push({ name: ingredient.name, percent: percent.value, weight: estimate.value.value });
  }
  if (key !== 'oral' && key !== 'dermal' && terms.length > 0)
    used.add('inhalation-form').add('inhalation-forms-apart');
  const unknown = sumOf(unknownParts);
  const corrected = compareSum(unknownParts, rules.unknown.correctedAbove.percent) > 0;
  if (unknownParts.length > 0) used.add('unknown-correction');
  if (parts.length === 0) {
    return {
      key,
      ateMix: null,
      category: null,
      unknown,
      limit: null,
      parts,
      readings: [...used],
      because: reason(() => ({
        rule: 'no ingredient of known acute toxicity',
        cite: citeHealth(basis, rules.formula.cite),
        working: `no ingredient counts by this route${unknownNote(unknown)}`,
        terms: [],
      })),
    };
  }
  const bounds = rules.categories[key];
  const counted = corrected ? unknownParts : [];
  let category: string | null = null;
  // ATEmix <= L is sum(Ci L / ATEi) + unknown >= 100.
  for (const candidate in bounds) {
    if (meetsScaled(parts, bounds[candidate]!, counted, 100)) {
      category = candidate;
      break;
    }
  }
  const sum = sumOf(parts);
  const numerator = corrected ? 100 - unknown : 100;
  const ateMix = tidy(numerator / sum);
  const unit = unitOf[key];
  if (shared) {
    used.add('same-category');
    return {
      key,
      ateMix,
      category: shared,
      unknown,
      limit: bounds[shared]!,
      parts,
      readings: [...used],
      because: reason(() => ({
        rule: 'all ingredients within one category',
        cite: citeHealth(basis, rules.sameCategory.cite),
        working: `every ingredient is in Category ${shared} by this route, so the mixture is too (by the formula ATEmix = ${show(ateMix)} ${unit})`,
        total: ateMix,
        limit: bounds[shared],
        unit,
        terms,
      })),
    };
  }
  const limit = category ? bounds[category]! : Object.values(bounds).at(-1)!;
  return {
    key,
    ateMix,
    category,
    unknown,
    limit,
    parts,
    readings: [...used],
    because: reason(() => ({
      rule: corrected ? 'additivity formula corrected for unknown ingredients' : 'additivity formula',
      cite: citeHealth(basis, corrected ? rules.unknown.correctedAbove.cite : rules.formula.cite),
      working:
        `${corrected ? `(100 - ${show(unknown)})` : '100'} / ATEmix = ` +
        `${terms.map(({ name, percent, weight }) => `${show(percent)}/${show(weight)} ${name}`).join(' + ')} = ${show(sum)}; ` +
        `ATEmix = ${showBeside(ateMix, limit)} ${unit} ${category ? '<=' : '>'} ${show(limit)}${unknownNote(unknown)}`,
      total: ateMix,
      limit,
      unit,
      terms,
    })),
  };
}

const unknownNote = (unknown: number): string =>
  unknown > 0 ? `; ${show(unknown)} % of the mixture is of unknown toxicity by this route` : '';

/** Acute toxicity by the three routes; inhalation takes the most severe of its forms. */
export function acuteToxicity(context: Context): AcuteToxicity {
  if (concerns(context.mixture, 'Acute Tox.') || context.mixture.ingredients.some(hasEstimateOrGap))
    return judge(context);
  const { basis } = context;
  return constant(basis, 'Acute Tox.', () => judge(context));
}

/** The results of the three routes, with the sums of all routes and forms. */
interface AcuteToxicity {
  readonly results: readonly ClassResult[];
  readonly sums: ReadonlyMap<AcuteKey, AcuteSum>;
}

const hasEstimateOrGap = ({ data: { ate, unknown, hazards } }: Ingredient): boolean =>
  unknown.size > 0 ||
  hazards.length > 0 ||
  Boolean(ate.oral || ate.dermal || ate.gas || ate.vapour || ate.mist);

function judge(context: Context): AcuteToxicity {
  const sums = new Map<AcuteKey, AcuteSum>();
  const results: ClassResult[] = [];
  const { basis } = context;
  for (const route of ['oral', 'dermal', 'inhalation'] as const) {
    let worst: AcuteSum | null = null;
    for (const key of keysOf[route]) {
      const sum = acuteSum(context, key);
      sums.set(key, sum);
      if (!worst || severer(sum, worst)) worst = sum;
    }
    const { category, because, unknown, readings, key } = worst!;
    if (category) {
      results.push({
        class: 'Acute Tox.',
        route,
        because,
        readings,
        outcome: 'classified',
        hazard: {
          code: `Acute Tox. ${category}`,
          hazardClass: 'Acute Tox.',
          category,
          route,
          form: route === 'inhalation' ? (key as 'gas' | 'vapour' | 'mist') : null,
          effect: null,
          organs: [],
          statements: [statementOf[route][category]!],
        },
      });
    } else if (unknown > 0) {
      const { rule, working, total, limit, unit, terms } = because;
      const cite = `${because.cite}; ${basis.acuteToxicity.unknown.relevantFrom.cite}`;
      results.push({
        class: 'Acute Tox.',
        route,
        because: { rule, cite, working, total, limit, unit, terms },
        readings,
        outcome: 'insufficient-data',
      });
    } else results.push({ class: 'Acute Tox.', route, because, readings, outcome: 'not-classified' });
  }
  return { results, sums };
}

// Of one category, the form that is deeper in it, or nearer to the last one.
function severer(a: AcuteSum, b: AcuteSum): boolean {
  if (a.category !== b.category)
    return a.category !== null && (b.category === null || a.category < b.category);
  if (a.limit === null || b.limit === null) return a.limit !== null && b.limit === null;
  const scaled = ({ parts }: AcuteSum, factor: number) =>
    parts.map(part => ({ ...part, weight: part.weight * factor }));
  return compareSum([...scaled(a, a.limit), ...scaled(b, -b.limit)], 0) > 0;
}
