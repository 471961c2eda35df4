import { en } from 'zod/locales';
import * as z from 'zod/mini';
import type { Art } from '../artwork/art.ts';
import type { PlacedArt } from '../artwork/place-art.ts';
import type { LengthUnit } from '../quantity/length-text.ts';
import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { Die } from './die/die.ts';

export type { Die } from './die/die.ts';

z.config(en());

const length = z.number().check(z.positive());
const allowance = z.number().check(z.nonnegative());
const text = z.string().check(z.minLength(1));
const size = z.strictObject({ width: length, height: length });

const schema = z.strictObject({
  $comment: z.optional(z.string()),
  labelwright: z.literal('stock/1'),
  name: text,
  bleed: z.strictObject({ value: allowance, source: text }),
  safeZone: z.strictObject({ value: length, source: text }),
  barWidthReduction: z.strictObject({ value: allowance, source: text }),
  xHeight: z.strictObject({
    minimum: length,
    preferred: length,
    largest: length,
    largestPart: z.number().check(z.positive()),
    source: text,
  }),
  pictogram: z.strictObject({
    minimumSide: length,
    largestSide: length,
    frame: z.number().check(z.minimum(0.02), z.maximum(0.15)),
    source: text,
  }),
  barCode: z.strictObject({ environment: z.enum(['retail', 'general-distribution']), source: text }),
  lotWindow: z.strictObject({ minimum: size, largest: size, source: text }),
  inkLimit: z.strictObject({ value: length, source: text }),
  artwork: z.strictObject({
    dpi: length,
    tolerance: length,
    leastLogo: length,
    cutInks: z.array(text),
    source: text,
  }),
  taper: z.strictObject({ most: allowance, source: text }),
  rule: z.strictObject({ thin: length, heavy: length, source: text }),
});

interface Sourced {
  readonly source: string;
}

/** What a press and a material ask of a label; every number with its source. Lengths in millimetres. */
export interface PressProfile {
  readonly name: string;
  readonly bleed: Sourced & { readonly value: number };
  readonly safeZone: Sourced & { readonly value: number };
  readonly barWidthReduction: Sourced & { readonly value: number };
  readonly xHeight: Sourced & {
    readonly minimum: number;
    readonly preferred: number;
    readonly largest: number;
    /** Largest x-height as part of the square root of the area of the die. */
    readonly largestPart: number;
  };
  readonly pictogram: Sourced & {
    readonly minimumSide: number;
    readonly largestSide: number;
    /** Stroke of the frame as part of the side. */
    readonly frame: number;
  };
  readonly barCode: Sourced & { readonly environment: 'retail' | 'general-distribution' };
  readonly lotWindow: Sourced & { readonly minimum: Size; readonly largest: Size };
  /** Most ink on one place, in percent of all inks together. */
  readonly inkLimit: Sourced & { readonly value: number };
  readonly artwork: Sourced & {
    /** Least pixels per inch. */
    readonly dpi: number;
    /** By how much a file may differ from the label. */
    readonly tolerance: number;
    /** Least side of a logo that is placed where the name leaves room. */
    readonly leastLogo: number;
    /** Names under which cut lines are known, in lower case without spaces. */
    readonly cutInks: readonly string[];
  };
  /** By how much the places of the upper and lower edge of a straight label may differ in length. */
  readonly taper: Sourced & { readonly most: number };
  readonly rule: Sourced & { readonly thin: number; readonly heavy: number };
  /** Dots per inch of a printer with black alone, on whose dots everything is laid; a press has none. */
  readonly dpi?: number;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A label as it is cut and printed. */
export interface Stock {
  readonly die: Die;
  readonly profile: PressProfile;
  /** Least x-height of running text that the law of the label asks, where that is more than the press's. */
  readonly legalXHeight?: number;
  /** Side of pictograms to be reached if possible, where the die has no room for it at the least text. */
  readonly wantedSide?: number;
  /** Shorter and longer side that the law of the label asks. */
  readonly leastSides?: readonly [number, number];
  /** In which people gave the size of the die; advice comes back in it. Default mm. */
  readonly unit?: LengthUnit;
  /** The head of the label is a band in the maker's color, and its words in this ink. */
  readonly brand?: { readonly words: 'black' | 'white' };
  /** Red frames that the stock brings with it, where it is not printed by a press. */
  readonly redFrames?: readonly RedFrame[];
  /** Solid mark that the eye of the labeler looks for, from the lower left corner of the label. */
  readonly eyeMark?: {
    readonly left: number;
    readonly bottom: number;
    readonly width: number;
    readonly height: number;
  };
  /** Artwork of the maker under the label, and the areas of it that the label prints on. */
  readonly artwork?: { readonly placed: PlacedArt; readonly areas: readonly StockArea[] };
  /** Logo of the maker beside the name. */
  readonly logo?: {
    readonly art: Art;
    /** Kept for it; null where it takes what the name leaves free. */
    readonly width: number | null;
    /** Least side where nothing is kept. */
    readonly least: number;
    /** Widest that its pixels allow; null where it has none. */
    readonly most: number | null;
  };
  /** The die is an area of artwork, not a label. */
  readonly isArea?: boolean;
  /** A line on the job, to be set with crop marks outside the bleed; left out, there are no marks. */
  readonly jobLine?: string;
}

/** An area of artwork that the label prints on, from the lower left corner of the trim. */
export interface StockArea {
  readonly holds: 'regulated' | 'identity' | 'directions' | 'bar-code' | 'net-contents' | 'lot';
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
  readonly ground: 'white' | 'artwork';
}

/** A preprinted red square set at a point, in millimetres from the lower left corner of the label. */
export interface RedFrame {
  /** To its left corner. */
  readonly left: number;
  /** To its lower corner. */
  readonly bottom: number;
  /** Outer side of the square, not between its corners. */
  readonly side: number;
}

/** The least x-height of running text: the greater of what press and law ask. */
export const leastXHeight = ({ profile, legalXHeight = 0 }: Stock): number =>
  Math.max(profile.xHeight.minimum, legalXHeight);

/** Validates a press profile; a wrong one is a finding, not a defect. */
export function parsePressProfile(value: unknown, file: string): Outcome<PressProfile> {
  const result = schema.safeParse(value);
  if (result.success) return succeed(result.data);
  return fail(
    ...result.error.issues.map(({ message, path }) => ({
      code: 'press-profile',
      severity: 'error' as const,
      message,
      path: path.join('.'),
      at: { file },
    })),
  );
}

/** Reads a press profile from the folder of templates, for example `roll-paper`. */
export async function loadPressProfile(
  read: (path: string) => Promise<string>,
  name = 'roll-paper',
): Promise<Outcome<PressProfile>> {
  const file = `stocks/${name}.json`;
  try {
    return parsePressProfile(JSON.parse(await read(file)), file);
  } catch (cause) {
    const message = cause instanceof Error ? cause.message : String(cause);
    return fail({ code: 'press-profile', severity: 'error', message, at: { file } });
  }
}
