import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asNumber, entry, members } from './_objects.ts';
import { type Extent, overlap } from './_shapes.ts';
import { isText, PRACTICE, quote, TOLERANCE } from './_shown.ts';
import { isBare, isBrand } from './inks.ts';
import type { PageMarks, PaintedMark } from './page-marks.ts';
import type { PlacedMark } from './placed-marks.ts';
import type { LabelPreflight } from './profile.ts';

type Clear = NonNullable<NonNullable<LabelPreflight['geometry']>['clear']>;

/** A solid ground in the maker's color, which may run over the cut and over folds. */
export const isGround = ({ paints, fill }: PaintedMark, brand: LabelPreflight['brand']): boolean =>
  paints.join() === 'fill' && isBrand(fill, brand);

const shortSide = ([left, bottom, right, top]: Extent): number => Math.min(right - left, top - bottom);

/** Millimetres that the bleed box reaches beyond the trim at the left. */
const bleedOf = ({ page }: PageMarks): number => {
  const [trim = 0, bleed = 0] = ['TrimBox', 'BleedBox'].map(
    box => asNumber(members(entry(page.dict, box))[0]) ?? 0,
  );
  return ((trim - bleed) * 25.4) / 72;
};

/** The ground runs over the cut as far as the bleed goes, and white words stand on it. */
export function checkGround(
  page: PageMarks,
  marks: readonly PlacedMark[],
  brand: LabelPreflight['brand'],
): Diagnostic[] {
  const grounds = marks.filter(({ mark }) => isGround(mark, brand));
  const bleed = bleedOf(page);
  const lost = marks.filter(
    placed =>
      isText(placed) &&
      isBare(placed.mark.fill) &&
      !grounds.some(ground => overlap(ground.extent, placed.extent) >= shortSide(placed.extent) - TOLERANCE),
  );
  const short = grounds.filter(({ extent: [left] }) => left < -TOLERANCE && left > TOLERANCE - bleed);
  return [
    ...lost.map(placed => finding('white-on-white', `${quote(placed)} is white on bare ground`, PRACTICE)),
    ...short.map(() =>
      finding('bleed-missing', 'the ground in the color of the maker ends within the bleed', PRACTICE),
    ),
  ];
}

const STRIPS = { fold: 'over a fold', overlap: 'in the strip that the other end covers' } as const;

/** Nothing stands over a fold, or where the other end of a wrap-around label lies. */
export const checkStrips = (marks: readonly PlacedMark[], strips: Clear): Diagnostic[] =>
  strips.flatMap(({ what, from, to }) =>
    marks
      .filter(({ extent }) => Math.min(extent[2], to) - Math.max(extent[0], from) > TOLERANCE)
      .map(placed => finding(`on-the-${what}`, `${quote(placed)} stands ${STRIPS[what]}`, PRACTICE)),
  );
