import type { Exact } from '../../quantity/exact.ts';
import type { Scale } from '../../quantity/scale.ts';
import type { AcuteKey, AcuteToxicityRules } from '../../reference/thresholds.ts';
import { acuteCategories } from '../acute-categories.ts';
import type { Ingredient } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import { figure } from '../sums.ts';

/** What an ingredient brings to the additivity formula by one route and form. */
export interface Estimate {
  readonly value: Exact;
  /** Category that the value lies in; null above the last one. */
  readonly category: string | null;
  /** The point estimate of a category, not a value of the ingredient itself. */
  readonly converted: boolean;
  /** The reading on which the value or its category rests. */
  readonly reading?: ReadingId;
  /** The category listed, where the value lies in another one. */
  readonly contradicts?: string;
}

/** The category of an estimate: the first whose upper bound it does not exceed (Table A.1.1; CLP Table 3.1.1). */
function categoryOf(scale: Scale, value: Exact, bounds: Readonly<Record<string, number>>): string | null {
  for (const category of acuteCategories) {
    const bound = bounds[category];
    if (bound !== undefined && scale.compare(value, bound) <= 0) return category;
  }
  return null;
}

/** The most severe category that an ingredient is classified in by one route and form; null where it is not. */
function listedCategory(
  { data }: Ingredient,
  key: AcuteKey,
  rules: AcuteToxicityRules,
  open: AcuteKey | null,
): string | null {
  let worst: string | null = null;
  for (const { hazardClass, category, route, form } of data.hazards) {
    if (hazardClass !== 'Acute Tox.' || (route === 'inhalation' ? (form ?? open) : route) !== key) continue;
    if (rules.conversion[key][category] !== undefined && (worst === null || category < worst))
      worst = category;
  }
  return worst;
}

/**
 * An ingredient's estimate by one route and form: its own value, else the point estimate of its category (A.1.3.3(d),
 * Note (b) to Table A.1.1; CLP and UN 3.1.3.3(d), Table 3.1.1).
 */
export function estimateOf(
  ingredient: Ingredient,
  key: AcuteKey,
  rules: AcuteToxicityRules,
  unnamedForm: AcuteKey,
  scale: Scale,
): Estimate | null {
  const { ate, hazards } = ingredient.data;
  const value = ate[key];
  if (!value && hazards.length === 0) return null;
  // Reading `inhalation-forms-apart`: an estimate names the form that a category leaves open.
  const named = Boolean(ate.gas || ate.vapour || ate.mist);
  const open = !named ? unnamedForm : value && isInhaled(key) ? key : null;
  const listed = listedCategory(ingredient, key, rules, open);
  const point = listed === null ? null : rules.conversion[key][listed]!;
  if (!value) return point === null ? null : { value: figure(point), category: listed, converted: true };
  const own = { value, category: categoryOf(scale, value, rules.categories[key]), converted: false };
  if (point === null || own.category === listed) return own;
  // A category that counts in the sum, and that the basis does not give, lies above the last one.
  if (own.category === null && !(listed! in rules.categories[key])) return own;
  // A value that is the point estimate of the listed category was converted from it.
  return scale.compare(value, point) === 0
    ? { ...own, category: listed, reading: 'ate-at-point-estimate' }
    : { ...own, reading: 'ate-before-category', contradicts: listed! };
}

/** Whether a route and form is one of inhalation. */
export const isInhaled = (key: AcuteKey): boolean => key !== 'oral' && key !== 'dermal';

/** Whether an ingredient has an estimate or a category by inhalation in any form. */
export const isToxicInhaled = ({ data: { ate, hazards } }: Ingredient): boolean =>
  Boolean(ate.gas || ate.vapour || ate.mist) ||
  hazards.some(({ hazardClass, route }) => hazardClass === 'Acute Tox.' && route === 'inhalation');

/** Toxic in one inhalation form is not unknown in another (reading `inhalation-forms-apart`). */
export const knownInAnotherForm = (ingredient: Ingredient, key: AcuteKey): boolean =>
  isInhaled(key) && isToxicInhaled(ingredient);
