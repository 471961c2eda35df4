import data from '../../../hazard-data/us-cpsc/label-type.json' with { type: 'json' };
import { type Millimetres, MM_PER_INCH } from '../../quantity/length.ts';

/** Least heights of capitals on a principal display panel, in millimetres, each with its paragraph. */
export interface PanelType {
  readonly signal: Millimetres;
  readonly hazard: Millimetres;
  /** Other cautionary material, and the clear space around the block. */
  readonly other: Millimetres;
  readonly cite: string;
  readonly declaration: Millimetres;
  readonly declarationCite: string;
}

const SQUARE_INCH = MM_PER_INCH * MM_PER_INCH;

const rowOf = <Row extends { readonly upTo: number | null }>(
  rows: readonly Row[],
  squareInches: number,
): Row =>
  // An area in square millimetres that was meant as a whole number of square inches.
  rows.find(({ upTo }) => upTo === null || squareInches <= upTo + 1e-9)!;

const millimetres = (inches: string): Millimetres => {
  const [over, under = 1] = inches.split('/').map(Number);
  return (over! / under) * MM_PER_INCH;
};

/**
 * Least heights of type for a panel (16 CFR 1500.121(c)(2), Table 1; 16 CFR 500.21(b)).
 * @param area of the principal display panel in square millimetres
 */
export function panelType(area: number): PanelType {
  const squareInches = area / SQUARE_INCH;
  const row = rowOf(data.cautionary.rows, squareInches);
  return {
    signal: millimetres(row.signal),
    hazard: millimetres(row.hazard),
    other: millimetres(row.other),
    cite: data.cautionary.cite,
    declaration: millimetres(rowOf(data.contents.rows, squareInches).declaration),
    declarationCite: data.contents.cite,
  };
}

/** The part of height times circumference, or of the whole surface, that is the principal display panel. */
export const panelPart: number = data.panel.part;

/** Where on the panel the declaration of contents stands (16 CFR 500.6(b)); areas in square millimetres. */
export const declarationPlace: { readonly part: number; readonly freeUpTo: number; readonly cite: string } = {
  ...data.contents.lowestPart,
  freeUpTo: data.contents.lowestPart.freeUpTo * SQUARE_INCH,
};
