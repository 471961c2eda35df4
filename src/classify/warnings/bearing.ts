import doubts from '../../../hazard-data/measured-doubts.json' with { type: 'json' };
import type { Properties } from '../../record/product-record.ts';
import type { Ingredient } from '../ingredient.ts';
import { groupsOf } from '../reactivity.ts';

/** Properties that rules compare with a limit, with their keys in the record. */
export const judgedProperties = {
  pH: 'pH',
  density: 'density',
  flashPoint: 'flash-point',
  initialBoilingPoint: 'initial-boiling-point',
  kinematicViscosity40C: 'kinematic-viscosity-40C',
} as const satisfies Partial<Record<keyof Properties, string>>;

export type JudgedProperty = keyof typeof judgedProperties;

interface Bearing {
  readonly from: number;
  readonly classes?: readonly string[];
  /** Acids and bases bear on it too. */
  readonly sides?: boolean;
}

const rules = doubts.bearing.properties as Readonly<
  Record<(typeof judgedProperties)[JudgedProperty], Bearing>
>;
const sides: readonly string[] = [...doubts.pH.acids, ...doubts.pH.bases];

/** Share of what a constituent was by which it must differ to count as moved. */
export const movedFrom: number = doubts.bearing.share;

/** Percent from which a constituent bears on a property. */
export const bearsFrom = (property: JudgedProperty): number => rules[judgedProperties[property]].from;

/**
 * Whether a measured property rests on a constituent, whatever its percent: a flash point on what burns, a pH on acids and
 * bases, a viscosity on all; without data nobody can say that it does not. Common practice (`measured-doubts.json`).
 */
export function bearsOn(
  property: JudgedProperty,
  ingredient: Pick<Ingredient, 'cas' | 'name' | 'water' | 'data'>,
): boolean {
  const { classes, sides: acidOrBase } = rules[judgedProperties[property]];
  if (!classes || ingredient.data.noData) return true;
  if (ingredient.data.hazards.some(({ hazardClass }) => classes.includes(hazardClass))) return true;
  if (!acidOrBase) return false;
  const groups = groupsOf(ingredient);
  return sides.some(side => groups.has(side));
}
