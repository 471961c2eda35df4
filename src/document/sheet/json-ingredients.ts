import { prescribedRange } from './concentration.ts';
import { ingredients, type NamingSection } from './disclosure.ts';
import { figure } from './fill.ts';
import { isOfStandard } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';

/** An ingredient as section 3 tells it. */
export interface JsonIngredient {
  readonly name: string;
  readonly cas: string | null;
  /** Percent by weight, of a gas by volume; equal ends are one figure, null where the law has no range for a withheld one. */
  readonly percent: { readonly low: number; readonly high: number } | null;
  /** What is withheld as a trade secret (29 CFR 1910.1200(i)). */
  readonly withheld: readonly ('identity' | 'percent')[];
  /** Class and category in the notation of Annex VI of Regulation (EC) No 1272/2008. */
  readonly hazards: readonly string[];
  /** Sections that name it for a limit or a listing, where it is not due in section 3. */
  readonly namedIn: readonly NamingSection[];
}

/** The ingredients of section 3, with what is withheld left out. */
export function jsonIngredients(input: SheetInput): readonly JsonIngredient[] {
  const { name, cas, identity, percent } = secretsOf(input);
  return ingredients(input)
    .filter(({ listed }) => listed)
    .map(({ index, classified: { low, high }, hazards, due, namedIn }) => {
      const range = { low: Number(figure(low.value)), high: Number(figure(high.value)) };
      const withheld = [
        ...(identity.has(index) ? (['identity'] as const) : []),
        ...(percent.has(index) ? (['percent'] as const) : []),
      ];
      return {
        name: name(index),
        cas: cas(index),
        percent: percent.has(index) ? prescribedRange({ low: low.value, high: high.value }) : range,
        withheld,
        hazards: hazards.filter(({ hazardClass }) => isOfStandard(hazardClass)).map(({ code }) => code),
        namedIn: due ? [] : namedIn,
      };
    });
}
