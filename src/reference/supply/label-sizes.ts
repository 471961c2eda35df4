import data from '../../../hazard-data/eu-clp/label-sizes.json' with { type: 'json' };
import type { Millimetres } from '../../quantity/length.ts';
import { type Dated, inForceOn } from '../dated.ts';

/** Sizes that the law asks of a label for supply in the Union, by the capacity of the package. */
export interface SupplySizes {
  /** Shorter and longer side of the label; `asked` where the table sets them, else they are to be reached if possible. */
  readonly label: { readonly sides: readonly [Millimetres, Millimetres]; readonly asked: boolean };
  /** Side of the square of each pictogram: to be reached if possible, and least. */
  readonly pictogram: { readonly wanted: Millimetres; readonly least: Millimetres };
  /** Capacity up to which the row holds, in litres; null for the last. */
  readonly upTo: number | null;
  readonly cite: string;
}

/** Least height of the lower-case x, with the day from which it applies, YYYY-MM-DD. */
export interface SupplyLetters {
  readonly xHeight: Millimetres;
  readonly cite: string;
  readonly from: string;
}

interface Row {
  readonly upTo: number | null;
}

const rowOf = <Found extends Row>(rows: readonly Found[], litres: number): Found =>
  rows.find(({ upTo }) => upTo === null || litres <= upTo + 1e-9)!;

/**
 * The row of CLP Annex I, Table 1.3 for a package.
 * @param litres capacity of the package
 * @param day YYYY-MM-DD
 */
export function supplySizes(litres: number, day: string): SupplySizes {
  const { dimensions } = inForceOn(data.figures as unknown as Dated, day) as {
    readonly dimensions: readonly SupplySizes[];
  };
  return rowOf(dimensions, litres);
}

/**
 * The heights of type of CLP Annex I, Table 1.3: those that apply on a day and those that will.
 * @param litres capacity of the package
 * @param day YYYY-MM-DD
 */
export function supplyLetters(
  litres: number,
  day: string,
): { readonly now: SupplyLetters | null; readonly next: SupplyLetters | null } {
  const all = Object.entries(data.figures.letters)
    .sort(([a], [b]) => a.localeCompare(b))
    .map(([from, { table }]): SupplyLetters => {
      const { xHeight, cite } = rowOf(table, litres);
      return { xHeight, cite, from };
    });
  return {
    now: all.filter(({ from }) => from <= day).at(-1) ?? null,
    next: all.find(({ from }) => from > day) ?? null,
  };
}

/** Distance of lines in times the size of the face, with its paragraph (CLP Annex I, 1.2.1.5). */
export const supplyLines: { readonly spacing: number; readonly cite: string } = (() => {
  const [newest] = Object.values(data.figures.lines);
  return { spacing: newest!.value.spacing, cite: newest!.cite };
})();
