import table from '../../hazard-data/strong-acids-and-bases.json' with { type: 'json' };
import type { Context } from './context.ts';
import { hazardsOf, type Ingredient, type Mixture } from './ingredient.ts';

export type Side = 'acid' | 'base';

/** Percent from which a pH is asked for. */
export const askedFrom: number = table.asked.percent;

const byCas = new Map(table.members.map(({ cas, side }) => [cas, side as Side]));
const byName = new Map(table.members.map(({ name, side }) => [name, side as Side]));
const sides = ['acid', 'base'] as const;

/**
 * Whether a constituent is a strong acid or base, of which the pH of the mixture decides (A.2.3.3.4, A.3.3.3.4; CLP and
 * UN 3.2.3.3.4, 3.3.3.3.4): by CAS number, by name, or by a word of its name where it is corrosive to skin.
 */
export function strongSide(ingredient: Ingredient): Side | null {
  const { cas, water } = ingredient;
  if (water) return null;
  const listed = cas === null ? undefined : byCas.get(cas);
  if (listed) return listed;
  if (hazardsOf(ingredient, table.words.hazardClass).length === 0) return null;
  const name = ingredient.name.toLowerCase();
  const named = byName.get(name);
  if (named) return named;
  return sides.find(side => table.words[side].some(word => name.includes(word))) ?? null;
}

/**
 * Strong acids and bases of a mixture whose pH is not known: a sum of concentrations says too little of them. None where
 * the record gives a pH, and none of a gas.
 */
export const strongWithoutPh = ({ properties, form, ingredients }: Mixture): readonly Ingredient[] =>
  properties.pH || !table.forms.includes(form)
    ? []
    : ingredients.filter(ingredient => strongSide(ingredient) !== null);

/** Those that are judged at the severe side, each by itself (reading `ph-missing`). */
export const judgedSevere = ({ mixture, take }: Context): readonly Ingredient[] =>
  take('ph-missing') === 'category-1' ? strongWithoutPh(mixture) : [];
