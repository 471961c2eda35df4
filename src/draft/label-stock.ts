import { clearStrips } from '../layout/die/clear-strips.ts';
import type { Die } from '../layout/die/die.ts';
import { outlineOf } from '../layout/die/outline.ts';
import { isWhite } from '../layout/label/art-areas.ts';
import { dieOnDots, PRINTER_NAMES, type PrinterName, printerProfile } from '../layout/roll-printer.ts';
import type { PressProfile, Stock } from '../layout/stock.ts';
import type { DieProfile } from '../pdf/profile.ts';
import type { LabelPreflight, PreflightProfile } from '../preflight/profile.ts';
import type { LengthUnit } from '../quantity/length-text.ts';
import type { Pack } from '../record/product-record.ts';
import type { PressWish } from '../record/record-blocks.ts';
import type { LabelTarget } from './label-options.ts';

export const LABEL_TARGETS: readonly LabelTarget[] = [
  'press',
  ...PRINTER_NAMES.map(name => `printer-${name}` as const),
];

const printerOf = (target: LabelTarget): PrinterName | null =>
  PRINTER_NAMES.find(name => target === `printer-${name}`) ?? null;

/** The die of a pack, with what stands on its stock. */
export type PackDie = Die &
  Partial<Pick<NonNullable<Pack['label']>, 'redFrames' | 'eyeMark'>> & { readonly unit: LengthUnit };

/** The die of a pack with what its target asks; the record of the maker goes before the press profile. */
export function labelStock(
  { unit, redFrames = [], eyeMark, ...die }: PackDie,
  profile: PressProfile,
  wish: PressWish | null | undefined,
  { target, jobLine }: { readonly target: LabelTarget; readonly jobLine: ((stock: Stock) => string) | null },
): Stock {
  const shared = { unit, ...(eyeMark && { eyeMark }) };
  const printer = printerOf(target);
  if (printer) {
    const onDots = printerProfile(printer, profile);
    return { ...shared, die: dieOnDots(die, onDots.dpi!), profile: onDots, redFrames };
  }
  const stock = { ...shared, die, profile: pressOf(profile, wish) };
  return jobLine ? { ...stock, jobLine: jobLine(stock) } : stock;
}

function pressOf(profile: PressProfile, wish: PressWish | null | undefined): PressProfile {
  const source = 'record of the maker';
  const given = (key: 'safeZone' | 'bleed' | 'barWidthReduction', value: number | null | undefined) =>
    value === null || value === undefined ? {} : { [key]: { value, source } };
  return {
    ...profile,
    ...given('safeZone', wish?.safe),
    ...given('bleed', wish?.bleed),
    ...given('barWidthReduction', wish?.barWidthReduction),
  };
}

/** What the call says of the press, and where it is silent the record of the maker. */
export function pressWish(record: PressWish | null | undefined, call: Partial<PressWish> = {}): PressWish {
  return {
    dieInk: call.dieInk ?? record?.dieInk ?? null,
    cut: call.cut ?? record?.cut ?? null,
    barWidthReduction: call.barWidthReduction ?? record?.barWidthReduction ?? null,
    safe: call.safe ?? record?.safe ?? null,
    bleed: call.bleed ?? record?.bleed ?? null,
  };
}

/** The cut line as the converter wants it. */
export const cutOf = (wish: PressWish | null | undefined): DieProfile => ({
  ...(wish?.dieInk && { ink: wish.dieInk }),
  ...(wish?.cut && { step: wish.cut === 'kiss' ? ('PartialCutting' as const) : ('Cutting' as const) }),
});

/** What the finished label is held against. */
export function labelPreflight(
  stock: Stock,
  {
    dieInk,
    pdfx4,
    capitals,
    pictogramSide,
    inks,
  }: {
    readonly dieInk: string | undefined;
    readonly pdfx4: boolean;
    readonly capitals: NonNullable<LabelPreflight['geometry']>['capitals'];
    /** Least side that the law of the label asks. */
    readonly pictogramSide: number;
    /** Which are not printed. */
    readonly inks: readonly string[];
  },
): PreflightProfile {
  const { die, profile, redFrames = [], eyeMark } = stock;
  const geometry = {
    safe: profile.safeZone.value,
    xHeight: profile.xHeight.minimum,
    pictogramSide: Math.max(profile.pictogram.minimumSide, pictogramSide),
    clear: clearStrips(die, profile.safeZone.value),
    capitals,
  };
  if (profile.dpi === undefined)
    return { kind: 'label', ...(dieInk && { dieInk }), pdfx4, geometry, ...heldArt(stock, inks) };
  return {
    kind: 'printer',
    label: {
      ...geometry,
      dpi: profile.dpi,
      cut: cutPoints(die),
      frames: redFrames,
      ...(eyeMark && { eyeMark }),
    },
  };
}

/** What placed artwork is held against; nothing where the label has none. */
function heldArt(
  { artwork, logo, profile }: Stock,
  reservedInks: readonly string[],
): Pick<LabelPreflight, 'art'> {
  if (!artwork && !logo) return {};
  const bare = artwork?.areas
    .filter(area => !isWhite(area))
    .map(({ left, bottom, width, height }) => [left, bottom, left + width, bottom + height] as const);
  const { inkLimit, artwork: rules } = profile;
  return { art: { inkLimit: inkLimit.value, dpi: rules.dpi, reservedInks, ...(bare && { bare }) } };
}

/** Steps of a corner. */
const STEPS = 32;

/** The cut as a polygon in millimetres from the lower left corner. */
function cutPoints(die: Stock['die']): readonly (readonly [number, number])[] {
  const points: (readonly [number, number])[] = [];
  for (const [name, ...numbers] of outlineOf(die).segments) {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x = 0, y = 0] = numbers as readonly number[];
    const last = points.at(-1);
    if (name === 'C' && last) {
      for (let step = 1; step <= STEPS; step += 1) {
        const t = step / STEPS;
        const u = 1 - t;
        const at = (a: number, b: number, c: number, d: number) =>
          u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d;
        points.push([at(last[0], x1, x2, x), at(last[1], y1, y2, y)]);
      }
    } else if (name !== 'Z') points.push([x1, y1]);
  }
  return points.map(([x, y]) => [x, die.height - y]);
}
