import { errorLevel, type MatrixName, type MatrixSpec, matrixSpec } from './matrix-spec.ts';
import { type Environment, type SymbolName, type SymbolSpec, symbolSpec, wideToNarrow } from './spec.ts';

/** One bar in modules from the left edge of the first bar. */
export interface ModuleBar {
  readonly x: number;
  readonly width: number;
  /** A guard bar, which reaches below the others. */
  readonly guard: boolean;
}

/** A digit under or beside the bars. */
export interface ModuleDigit {
  readonly text: string;
  /** Middle of the digit, in modules from the first bar; negative in the left quiet zone. */
  readonly centre: number;
  /** Stands in the quiet zone at reduced size. */
  readonly small: boolean;
}

/** A symbol encoded into bars, before it has a size. */
export interface EncodedSymbol {
  readonly spec: SymbolSpec;
  /** The number as encoded, with its check digit. */
  readonly text: string;
  readonly bars: readonly ModuleBar[];
  readonly digits: readonly ModuleDigit[];
}

interface Encoding {
  readonly sbs: readonly number[];
  readonly bbs: readonly number[];
}

/**
 * Encodes a number with a right check digit, or element strings.
 * @param digits 8 for EAN-8 and UPC-E, 12 for UPC-A, 13 for EAN-13, 14 for ITF-14; for GS1-128 the element strings
 * with their identifiers in parentheses, as `bracketed` writes them
 * @throws RangeError where the environment does not use the symbol; Error where the encoder refuses the number.
 */
export async function encodeSymbol(
  name: SymbolName,
  digits: string,
  environment: Environment,
): Promise<EncodedSymbol> {
  const spec = symbolSpec(name, environment);
  if (!spec) throw new RangeError(`${name} is not used in ${environment}`);
  const { default: bwip } = await import('bwip-js');
  // Only the raw encoding is exact; the drawing interface rounds to pixels. With text it tells the guard bars.
  const [encoding] = bwip.raw({
    bcid: spec.encoder,
    text: digits,
    includetext: true,
  }) as unknown as readonly Encoding[];
  const bars = toBars(encoding!, name);
  const modules = name === 'GS1-128' ? Math.max(...bars.map(({ x, width }) => x + width)) : spec.modules;
  return { spec: { ...spec, modules }, text: digits, bars, digits: placeDigits(name, digits, modules) };
}

/** A symbol of square modules, before it has a size. */
export interface EncodedMatrix {
  readonly spec: MatrixSpec;
  readonly text: string;
  /** Rows from the top; true is dark. */
  readonly rows: readonly (readonly boolean[])[];
}

/**
 * Encodes a GS1 Digital Link into a two-dimensional symbol.
 * @throws Error where the encoder refuses the link (an identifier or a check digit in it is wrong)
 */
export async function encodeMatrix(name: MatrixName, link: string): Promise<EncodedMatrix> {
  const spec = matrixSpec(name);
  const { default: bwip } = await import('bwip-js');
  const level = spec.encoder.endsWith('qrcode') ? { eclevel: errorLevel } : {};
  const [found] = bwip.raw({ bcid: spec.encoder, text: link, ...level }) as unknown as readonly {
    readonly pixs: readonly number[];
    readonly pixx: number;
    readonly pixy: number;
  }[];
  const { pixs, pixx, pixy } = found!;
  const rows = Array.from({ length: pixy }, (_, row) =>
    Array.from(pixs.slice(row * pixx, (row + 1) * pixx), pixel => pixel === 1),
  );
  return { spec, text: link, rows };
}

function toBars({ sbs, bbs }: Encoding, name: SymbolName): ModuleBar[] {
  // The encoder writes interleaved 2 of 5 with wide elements of two modules.
  const widen = (width: number) => (name === 'ITF-14' && width > 1 ? wideToNarrow : width);
  const bars: ModuleBar[] = [];
  let x = 0;
  for (const [index, element] of sbs.entries()) {
    const width = widen(element);
    if (index % 2 === 0) bars.push({ x, width, guard: (bbs[index / 2] ?? 0) < 0 });
    x += width;
  }
  return bars;
}

const GUARD = 3;
const CENTRE = 5;
const DIGIT = 7;

/** Places digits as in the symbol drawings of GS1 General Specifications 5.2.2. */
function placeDigits(name: SymbolName, text: string, modules: number): ModuleDigit[] {
  const digits = [...text];
  const inside = (index: number, half: number, skipped: number): ModuleDigit => {
    const position = index - skipped;
    const centre = GUARD + DIGIT * (position + 0.5) + (position >= half ? CENTRE : 0);
    return { text: digits[index]!, centre, small: false };
  };
  const each = (from: number, to: number, half: number, skipped: number) =>
    digits.slice(from, to).map((_, at) => inside(from + at, half, skipped));
  const beside = (index: number, centre: number): ModuleDigit => ({
    text: digits[index]!,
    centre,
    small: true,
  });
  switch (name) {
    case 'EAN-13':
      return [{ text: digits[0]!, centre: -6.5, small: false }, ...each(1, 13, 6, 1)];
    case 'EAN-8':
      return each(0, 8, 4, 0);
    case 'UPC-A':
      return [beside(0, -5), ...each(1, 11, 6, 0), beside(11, 95 + 5)];
    case 'UPC-E':
      return [beside(0, -5), ...each(1, 7, 6, 1), beside(7, 51 + 4.5)];
    case 'GS1-128':
      return [{ text, centre: modules / 2, small: false }];
    case 'ITF-14': {
      const groups = [
        text.slice(0, 1),
        text.slice(1, 3),
        text.slice(3, 8),
        text.slice(8, 13),
        text.slice(13),
      ];
      return [{ text: groups.join(' '), centre: middle(text), small: false }];
    }
  }
}

// Half the width: start 4, a pair of digits two wide and three narrow each, stop N + 2.
const middle = (text: string): number =>
  (4 + (text.length / 2) * (4 * wideToNarrow + 6) + wideToNarrow + 2) / 2;
