import { type PDFContext, PDFName, type PDFRef } from 'pdf-lib';
import type { Ink } from '../layout/frame.ts';
import { type BrandInk, DEFAULT_DIE, type PdfProfile } from './profile.ts';

/** Inks of layers that a press uses and does not print. */
type TechnicalInk = 'die' | 'coder';

/** Operators that set an ink for filling and for stroking. */
interface InkOperators {
  readonly fill: string;
  readonly stroke: string;
}

const process = (components: string, fill: string): InkOperators => ({
  fill: `${components} ${fill}`,
  stroke: `${components} ${fill.toUpperCase()}`,
});

// Press: black alone for text and bars, red as a build of two inks, white as bare ground.
const PRESS: Readonly<Record<Exclude<Ink, TechnicalInk | 'brand'>, InkOperators>> = {
  black: process('0 0 0 1', 'k'),
  grey: process('0 0 0 0.6', 'k'),
  tint: process('0 0 0 0.1', 'k'),
  white: process('0 0 0 0', 'k'),
  red: process('0 1 1 0', 'k'),
};

const SCREEN: Readonly<Record<Exclude<Ink, TechnicalInk | 'brand'>, InkOperators>> = {
  black: process('0', 'g'),
  grey: process('0.4', 'g'),
  tint: process('0.9', 'g'),
  white: process('1', 'g'),
  red: process('1 0 0', 'rg'),
};

// A printer with one ribbon: black, or the bare stock.
const PRINTER: Readonly<Partial<Record<Ink, InkOperators>>> = {
  black: process('0', 'g'),
  white: process('1', 'g'),
};

export const DIE_SPACE = 'CSdie';
export const CODER_SPACE = 'CScoder';
/** Name of the spot ink of the window of a coder. */
export const CODER_INK = 'CoderWindow';
const spot = (space: string): InkOperators => ({ fill: `/${space} cs 1 scn`, stroke: `/${space} CS 1 SCN` });
const TECHNICAL: Readonly<Record<TechnicalInk, InkOperators>> = {
  die: spot(DIE_SPACE),
  coder: spot(CODER_SPACE),
};

export const BRAND_SPACE = 'CSbrand';

const brandOperators = (profile: PdfProfile): InkOperators => {
  const brand = profile.kind === 'label' ? profile.brand : undefined;
  if (!brand) throw new Error('the document has no brand color');
  if (brand.spot === undefined) return process(parts(brand).join(' '), 'k');
  return { fill: `/${BRAND_SPACE} cs 1 scn`, stroke: `/${BRAND_SPACE} CS 1 SCN` };
};

/** Process parts of 0 to 1. */
const parts = ({ cmyk }: BrandInk): readonly number[] => cmyk.map(part => Number((part / 100).toFixed(4)));

/**
 * The operators of an ink.
 * @throws Error for the cut-line ink on a data sheet, for all but black and white on a printer, and for a brand color
 * that the profile lacks
 */
export const inkOperators = (profile: PdfProfile, ink: Ink): InkOperators => {
  const { kind } = profile;
  if (kind === 'printer') {
    const operators = PRINTER[ink];
    if (!operators) throw new Error(`a printer with black alone has no ink "${ink}"`);
    return operators;
  }
  if (ink === 'brand') return brandOperators(profile);
  if (ink !== 'die' && ink !== 'coder') return (kind === 'label' ? PRESS : SCREEN)[ink];
  if (kind === 'sheet') throw new Error('a data sheet has no cut line');
  return TECHNICAL[ink];
};

/** Registers a spot ink: one Separation with one tint transform for the whole file; `shown` is how a screen draws it. */
export const registerSpotInk = (
  context: PDFContext,
  ink: string = DEFAULT_DIE.ink,
  shown: readonly number[] = [0, 1, 0, 0],
): PDFRef => {
  const tint = context.register(
    context.obj({ FunctionType: 2, Domain: [0, 1], C0: [0, 0, 0, 0], C1: [...shown], N: 1 }),
  );
  return context.register(
    context.obj([PDFName.of('Separation'), PDFName.of(ink), PDFName.of('DeviceCMYK'), tint]),
  );
};

/** Registers the maker's color where it is a spot ink; null where it is printed in process inks. */
export const registerBrandInk = (context: PDFContext, brand: BrandInk | undefined): PDFRef | null =>
  brand?.spot === undefined ? null : registerSpotInk(context, brand.spot, parts(brand));

export const OVERPRINT_STATE = 'GSover';
export const KNOCKOUT_STATE = 'GSknock';

/** Graphics states: overprinting, where zero components leave the ground alone (OPM 1), and knocking out. */
export const overprintStates = (context: PDFContext): Readonly<Record<string, PDFRef>> => ({
  [OVERPRINT_STATE]: context.register(context.obj({ Type: 'ExtGState', OP: true, op: true, OPM: 1 })),
  [KNOCKOUT_STATE]: context.register(context.obj({ Type: 'ExtGState', OP: false, op: false, OPM: 0 })),
});
