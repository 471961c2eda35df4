import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { IDENTITY, type Matrix, product } from './_matrix.ts';
import { entry } from './_objects.ts';
import type { Extent } from './_shapes.ts';
import { PRACTICE, quote, TOLERANCE } from './_shown.ts';
import { placedContent } from './art-content.ts';
import type { ArtContent } from './art-facts.ts';
import { isBare } from './inks.ts';
import type { PageMarks } from './page-marks.ts';
import type { PlacedMark } from './placed-marks.ts';
import type { LabelPreflight } from './profile.ts';

/** Forms and pictures that a page places, with their place in points. */
function placedObjects({ page, operators }: PageMarks): readonly ArtContent[] {
  const found: ArtContent[] = [];
  const saved: Matrix[] = [];
  let matrix = IDENTITY;
  for (const { operator, operands } of operators) {
    const numbers = operands.flatMap(operand => (operand.kind === 'number' ? [operand.value] : []));
    if (operator === 'q') saved.push(matrix);
    else if (operator === 'Q') matrix = saved.pop() ?? matrix;
    else if (operator === 'cm') matrix = product(numbers as unknown as Matrix, matrix);
    const [name] = operands;
    if (operator !== 'Do' || name?.kind !== 'name') continue;
    const object = entry(entry(page.resources, 'XObject'), name.value);
    if (object) found.push(placedContent(object, matrix));
  }
  return found;
}

/** Reads back the artwork that a label places: color spaces, inks, fonts, resolution. */
export function checkArt(page: PageMarks, { art, dieInk }: LabelPreflight): Diagnostic[] {
  if (!art) return [];
  const reserved = [...art.reservedInks, ...(dieInk === undefined ? [] : [dieInk])];
  return placedObjects(page).flatMap(found => [
    ...[...found.foreign].map(name =>
      finding('art-foreign-color', `placed artwork is painted in ${name}`, 'ISO 15930-7'),
    ),
    ...[...found.fonts]
      .filter(([, embedded]) => !embedded)
      .map(([name]) =>
        finding('font-not-embedded', `placed artwork uses ${name}, which is not embedded`, 'ISO 15930-7'),
      ),
    ...[...found.spots]
      .filter(ink => reserved.includes(ink))
      .map(ink => finding('art-reserved-ink', `placed artwork uses the ink "${ink}"`, 'ISO 19593-1')),
    ...[...found.forbidden].map(what =>
      finding('art-forbidden', `placed artwork has ${what}`, 'ISO 15930-7'),
    ),
    ...(found.ink > art.inkLimit + 0.5
      ? [finding('ink-limit', `placed artwork puts ${Math.round(found.ink)} % of ink on one place`, PRACTICE)]
      : []),
    ...found.images
      .filter(({ dpi }) => dpi < art.dpi - 0.5)
      .map(({ dpi }) => finding('art-resolution', `a placed picture has ${Math.floor(dpi)} dpi`, PRACTICE)),
    ...(found.layers ? [finding('art-layers', 'placed artwork has layers', 'ISO 32000-1 8.11')] : []),
  ]);
}

/** A white rectangle on which the label stands: four corners, nothing but a fill. */
export const isWhiteGround = ({ mark, outlines }: PlacedMark): boolean =>
  mark.paints.join() === 'fill' &&
  mark.operator !== 'Do' &&
  isBare(mark.fill) &&
  !mark.fillOverprint &&
  mark.inside.every(({ layer }) => layer === undefined) &&
  mark.inside.some(({ tag }) => tag === 'Artifact') &&
  outlines.length === 1 &&
  outlines[0]!.length === 4;

const within = (a: Extent, b: Extent): boolean =>
  a[0] >= b[0] - TOLERANCE &&
  a[1] >= b[1] - TOLERANCE &&
  a[2] <= b[2] + TOLERANCE &&
  a[3] <= b[3] + TOLERANCE;

/**
 * Over artwork, everything that the label prints stands on white that was laid before it.
 * @param bare places where it may stand on the artwork itself
 */
export function checkWhite(
  all: readonly PlacedMark[],
  marks: readonly PlacedMark[],
  bare: readonly Extent[],
): Diagnostic[] {
  const order = new Map(all.map((placed, at) => [placed, at]));
  const grounds = all.filter(isWhiteGround);
  return marks
    .filter(
      placed =>
        !bare.some(place => within(placed.extent, place)) &&
        !grounds.some(
          ground => order.get(ground)! < order.get(placed)! && within(placed.extent, ground.extent),
        ),
    )
    .map(placed =>
      finding('on-the-artwork', `${quote(placed)} stands on the artwork, not on white`, PRACTICE),
    );
}
