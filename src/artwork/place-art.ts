import { type Millimetres, MM_PER_INCH, toMillimetres, toPoints } from '../quantity/length.ts';
import { sizeText } from '../quantity/length-text.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import type { Art, ArtRules } from './art.ts';
import type { ReadArt } from './read-art.ts';
import type { ReadPage } from './read-page.ts';

/** The label under which artwork is laid; lengths in millimetres. */
export interface ArtGround {
  readonly width: Millimetres;
  readonly height: Millimetres;
  readonly bleed: Millimetres;
  /** By how much a file may differ from it. */
  readonly tolerance: Millimetres;
}

/** Artwork with its place, from the upper left corner of the trim. */
export interface PlacedArt {
  readonly art: Art;
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
}

const says = (
  { file }: { readonly file: string },
  code: string,
  severity: Diagnostic['severity'],
  message: string,
  hint: string,
): Diagnostic => ({ code, severity, message: `${file} ${message}`, hint, at: { file } });

/** Fewest pixels per inch of artwork at a width; null where it has no pixels. */
const dpiAt = (art: ReadArt, width: Millimetres): number | null => {
  if (art.kind === 'picture') return art.columns / (width / MM_PER_INCH);
  if (art.kind === 'drawing' || art.dpi === null) return null;
  return (art.dpi * toMillimetres(art.box[2] - art.box[0])) / width;
};

/** Widest that artwork may be placed by its pixels; null where it has none. */
export const widestOf = (art: ReadArt, { dpi }: ArtRules): Millimetres | null => {
  const at = dpiAt(art, MM_PER_INCH);
  return at === null ? null : (at / dpi) * MM_PER_INCH;
};

/** A picture of too few pixels at the size at which it is placed. */
export function resolutionFault(
  art: ReadArt,
  width: Millimetres,
  { dpi: least }: ArtRules,
): Diagnostic | null {
  const dpi = dpiAt(art, width);
  if (dpi === null || dpi >= least - 0.5) return null;
  const columns = Math.ceil((width / MM_PER_INCH) * least);
  return says(
    art,
    'art-resolution',
    'error',
    `has pictures of ${Math.floor(dpi)} dpi at the size at which it is placed; ${least} dpi is the least`,
    art.kind === 'picture'
      ? `save it with at least ${columns} pixels of width`
      : 'place pictures of more pixels in it',
  );
}

const inkFault = (art: ReadArt, { inkLimit }: ArtRules, most: number): Diagnostic | null =>
  most <= inkLimit + 0.5
    ? null
    : says(
        art,
        'art-ink',
        'error',
        `puts ${Math.round(most)} % of ink on one place; the press takes ${inkLimit} %`,
        'take lighter colors, or a PDF converted with a profile of that ink limit',
      );

/** Most ink on one place of a drawing or a picture, percent; a page was measured when it was read. */
function inkOf(art: ReadArt): number {
  if (art.kind === 'page') return 0;
  if (art.kind === 'drawing')
    return Math.max(
      ...art.shapes.flatMap(({ fill, line }) =>
        [fill, line?.inks].map(inks => (inks ? 100 * inks.reduce((sum, part) => sum + part, 0) : 0)),
      ),
    );
  if (art.space === 'DeviceGray') return 100;
  let most = 0;
  const { samples } = art;
  for (let at = 0; at < samples.length; at += 4)
    most = Math.max(most, samples[at]! + samples[at + 1]! + samples[at + 2]! + samples[at + 3]!);
  return (most / 255) * 100;
}

/** What stands against artwork or a logo at a width. */
export const artFaults = (art: ReadArt, width: Millimetres, rules: ArtRules): readonly Diagnostic[] =>
  [resolutionFault(art, width, rules), inkFault(art, rules, inkOf(art))].filter(found => found !== null);

const NO_BLEED = 'a white edge shows where the cut wanders';

/** Lays artwork under a label: it is as large as the trim, or as the trim with the bleed. */
export function layUnder(read: ReadArt, ground: ArtGround, rules: ArtRules): Outcome<PlacedArt> {
  const placed = read.kind === 'page' ? pageUnder(read, ground) : shapeUnder(read, ground);
  if (!placed.ok) return placed;
  const findings = [...placed.diagnostics, ...artFaults(read, placed.value.width, rules)];
  return hasErrors(findings) ? fail(...findings) : succeed(placed.value, findings);
}

const wrongSize = (art: ReadArt, is: string, { width, height, bleed }: ArtGround): Diagnostic =>
  says(
    art,
    'art-size',
    'error',
    `is ${is}; the label is ${sizeText(width, height, 'mm')}, with its bleed ${sizeText(width + 2 * bleed, height + 2 * bleed, 'mm')}`,
    'make it as large as the label with its bleed, and set the TrimBox of a PDF to the label; or name the pack that it is for: `pack: ID` beside `file`',
  );

const noBleed = (art: ReadArt, { bleed }: ArtGround, has: Millimetres): Diagnostic =>
  says(
    art,
    'art-bleed',
    'warning',
    `reaches ${has <= 0.05 ? 'no further than the cut' : `${has.toFixed(1)} mm over the cut`}, not ${bleed} mm: ${NO_BLEED}`,
    `let it run ${bleed} mm over the cut on every side, unless it ends in white`,
  );

function shapeUnder(art: Exclude<ReadArt, ReadPage>, ground: ArtGround): Outcome<PlacedArt> {
  const { width, height, bleed, tolerance } = ground;
  const off = (wide: number, high: number): number =>
    art.size
      ? Math.max(Math.abs(art.size.width - wide), Math.abs(art.size.height - high))
      : Math.abs(art.aspect * high - wide);
  const full = { x: -bleed, y: -bleed, width: width + 2 * bleed, height: height + 2 * bleed };
  const bare = { x: 0, y: 0, width, height };
  const best = off(full.width, full.height) <= off(bare.width, bare.height) ? full : bare;
  if (off(best.width, best.height) > tolerance) {
    const is = art.size
      ? sizeText(Number(art.size.width.toFixed(1)), Number(art.size.height.toFixed(1)), 'mm')
      : `of another shape, ${art.aspect.toFixed(3)} times as wide as high`;
    return fail(wrongSize(art, is, ground));
  }
  return succeed({ art, ...best }, best === bare && bleed > 0 ? [noBleed(art, ground, 0)] : []);
}

/** The page box, of which the trim is known, as far as the bleed goes. */
function pageUnder(page: ReadPage, ground: ArtGround): Outcome<PlacedArt> {
  const { width, height, bleed, tolerance } = ground;
  const { media, trim, bleed: given } = page;
  const sides = ([left, bottom, right, top]: ReadPage['box']) =>
    [toMillimetres(right - left), toMillimetres(top - bottom)] as const;
  const near = ([wide, high]: readonly [number, number], more: number): boolean =>
    Math.abs(wide - width - 2 * more) <= tolerance && Math.abs(high - height - 2 * more) <= tolerance;
  const shown = trim ?? page.box;
  const edge = toPoints(bleed);
  const cut: ReadPage['box'] | null = near(sides(shown), 0)
    ? shown
    : !trim && near(sides(shown), bleed)
      ? [shown[0] + edge, shown[1] + edge, shown[2] - edge, shown[3] - edge]
      : null;
  const [wide, high] = sides(shown).map(side => Number(side.toFixed(1))) as [number, number];
  if (!cut) return fail(wrongSize(page, `a page of ${sizeText(wide, high, 'mm')}`, ground));
  // As far as the page bleeds, and no further than the label does.
  const limit = given ?? media;
  const reach = [cut[0] - limit[0], cut[1] - limit[1], limit[2] - cut[2], limit[3] - cut[3]];
  const has = Math.max(0, Math.min(edge, ...reach));
  const box: ReadPage['box'] = [cut[0] - has, cut[1] - has, cut[2] + has, cut[3] + has];
  const over = toMillimetres(has);
  const [w, h] = sides(box);
  const place = { x: (width - w) / 2, y: (height - h) / 2, width: w, height: h };
  return succeed(
    { art: { ...page, box }, ...place },
    over < bleed - tolerance ? [noBleed(page, ground, over)] : [],
  );
}
