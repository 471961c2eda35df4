import { classesOf } from '../classify/classes-of.ts';
import { highestOf } from '../classify/contexts.ts';
import type { Mixture } from '../classify/ingredient.ts';
import { worstOf } from '../classify/worst.ts';
import type { Product } from '../draft/open-product.ts';
import type { Reference } from '../draft/open-reference.ts';
import { findClass } from '../notation/classes.ts';
import type { Ratio } from './classification.ts';
import { secondsOfEach } from './timing.ts';

/** Outcomes of all classes, with their reasons as facts, against a bare loop over the same ingredients and classes. */
export function outcomeRatios({ record, formula }: Product, { basis, lookup }: Reference): Ratio[] {
  const context = highestOf(record, formula, basis, lookup);
  const spread = { each: [context], apart: false, at: () => [context] };
  const classes = [
    ...new Set(context.mixture.ingredients.flatMap(({ data }) => data.hazards.map(h => h.hazardClass))),
  ];
  const examined = [
    ...classes,
    ...Object.keys(basis.physicalClasses),
    ...Object.keys(basis.byIngredient),
  ].filter((name, i, all) => all.indexOf(name) === i && findClass(name));
  const [outcomes, bare] = secondsOfEach(
    () => void classesOf(spread, worstOf),
    () => void bareSums(context.mixture, examined),
  );
  return [
    {
      what: 'outcomes of all classes, with reasons as facts',
      against: `a loop that adds percent x weight over ${context.mixture.ingredients.length} ingredients for ${examined.length} classes`,
      ratio: outcomes! / bare!,
    },
  ];
}

function bareSums({ ingredients }: Mixture, classes: readonly string[]): number {
  let reached = 0;
  for (const hazardClass of classes) {
    let sum = 0;
    for (const { data, percent } of ingredients)
      for (const hazard of data.hazards) if (hazard.hazardClass === hazardClass) sum += percent.value * 10;
    if (sum >= 10) reached++;
  }
  return reached;
}
