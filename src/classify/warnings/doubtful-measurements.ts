import doubts from '../../../hazard-data/measured-doubts.json' with { type: 'json' };
import type { Context } from '../context.ts';
import { bySource } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import { groupsOf } from '../reactivity.ts';
import { type Side, strongSide } from '../strong.ts';

const shareOf = ({ index, percent }: Ingredient) => ({ constituent: index, amount: percent });

/**
 * Measured properties that cannot be true beside the ingredients, or hardly: no flash point, or a high one, with much
 * flammable liquid; a moderate pH with a strong acid and no base, or the reverse. A question, not a verdict. Figures are
 * common practice (`measured-doubts.json`).
 * @param context at the upper ends of ranges.
 */
export const doubtfulMeasurements = (context: Context): Warning[] => [...flashPoint(context), ...pH(context)];

function flashPoint({ mixture, basis, scale }: Context): Warning[] {
  const measured = mixture.properties.flashPoint;
  if (!measured || mixture.form !== 'liquid') return [];
  const { value } = measured;
  const { flammable } = basis.flammableLiquids.flashPoint;
  if (value.kind === 'temperature' && scale.compare(value.celsius, flammable) <= 0) return [];
  const found = doubts.flashPoint.from.flatMap(({ categories, percent }) => {
    // A high flash point contradicts those alone whose own is far below it.
    if (value.kind === 'temperature' && categories.includes('3')) return [];
    const of = mixture.ingredients.filter(ingredient =>
      hazardsOf(ingredient, 'Flam. Liq.').some(({ category }) => categories.includes(category)),
    );
    return scale.meets(
      of.map(({ percent: amount }) => ({ amount, weight: 1 })),
      percent,
    )
      ? of
      : [];
  });
  if (found.length === 0) return [];
  return [
    {
      id: 'doubtful-measurement',
      property: 'flash-point',
      value: value.kind === 'none' ? null : value.celsius,
      constituents: found.map(shareOf),
      cites: [bySource(doubts.flashPoint.source)],
    },
  ];
}

function pH({ mixture, scale }: Context): Warning[] {
  const measured = mixture.properties.pH;
  if (!measured) return [];
  const { percent: from, moderate, acids, bases, source } = doubts.pH;
  const [low, high] = moderate as [number, number];
  const { ingredients } = mixture;
  // Whatever is unknown may be what neutralizes.
  if (ingredients.some(({ data }) => data.noData)) return [];
  const isIn = (ingredient: Ingredient, ids: readonly string[]): boolean => {
    const groups = groupsOf(ingredient);
    return ids.some(id => groups.has(id));
  };
  const strong = (side: Side): readonly Ingredient[] =>
    ingredients.filter(each => strongSide(each) === side && scale.reaches(each.percent, from));
  const holds = (side: Side, ids: readonly string[]): boolean =>
    ingredients.some(each => strongSide(each) === side || isIn(each, ids));
  const unanswered = (side: Side, other: Side, ids: readonly string[]): readonly Ingredient[] => {
    const found = strong(side);
    return found.length > 0 && !holds(other, ids) ? found : [];
  };
  const isAboveAcid = scale.compare(measured.value, low) > 0;
  const isBelowBase = scale.compare(measured.value, high) < 0;
  const acid = isAboveAcid ? unanswered('acid', 'base', bases) : [];
  const doubted = acid.length === 0 && isBelowBase ? unanswered('base', 'acid', acids) : acid;
  if (doubted.length === 0) return [];
  return [
    {
      id: 'doubtful-measurement',
      property: 'pH',
      value: measured.value,
      constituents: doubted.map(shareOf),
      cites: [bySource(source)],
    },
  ];
}
