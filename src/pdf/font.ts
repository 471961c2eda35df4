import { createHash } from 'node:crypto';
import { create, type Font } from 'fontkit';
import { type PDFContext, type PDFRef, PDFString } from 'pdf-lib';
import type { FaceName, FontLibrary, Glyph, GlyphRun } from '../text/glyph-run.ts';
import { pdfNumber, snapped } from './_number.ts';
import { flateStream } from './flate.ts';
import { toUnicode } from './to-unicode.ts';

// Reserved by ISO 32000-1 Table 123: bits for "not the standard Latin set" and "italic".
const SYMBOLIC = 4;
const ITALIC = 64;

/** fontkit's subset as it is; its published type differs. */
interface GlyphSubset {
  readonly glyphs: number[];
  includeGlyph(id: number): number;
  encode(): Uint8Array;
}

interface CodedGlyph {
  readonly text: string;
  readonly width: number;
}

/** What a glyph is in a text array: its code in hexadecimal digits, and the kerning after it. */
interface GlyphOperand {
  readonly code: string;
  readonly kern: string;
}

const hex4 = (code: number): string => code.toString(16).toUpperCase().padStart(4, '0');

// Parsing is the dear part and depends on the bytes alone.
const parsed = new WeakMap<Uint8Array, Font>();

const parse = (bytes: Uint8Array): Font => {
  const known = parsed.get(bytes);
  if (known) return known;
  const font = create(bytes as Buffer);
  if (!('createSubset' in font)) throw new Error('a collection of fonts cannot be embedded');
  parsed.set(bytes, font);
  return font;
};

/** One face of the file: hands out codes as text is set, then embeds the subset that was used. */
class EmbeddedFace {
  readonly #font: Font;
  readonly #subset: GlyphSubset;
  readonly #codes = new Map<string, number>();
  readonly #operands = new Map<Glyph, GlyphOperand>();
  readonly #glyphs: CodedGlyph[];

  constructor(bytes: Uint8Array) {
    const font = parse(bytes);
    this.#font = font;
    this.#subset = font.createSubset() as unknown as GlyphSubset;
    this.#glyphs = [{ text: '', width: this.#scaled(font.getGlyph(0).advanceWidth) }];
  }

  #scaled(units: number): number {
    return (units * 1000) / this.#font.unitsPerEm;
  }

  /** Code of a glyph; a glyph that stands for two different texts gets two codes, so that both extract. */
  code({ id, text, width }: Glyph): number {
    const key = `${id}:${text}`;
    const known = this.#codes.get(key);
    if (known !== undefined) return known;
    const code = this.#subset.glyphs.includes(id)
      ? this.#subset.glyphs.push(id) - 1
      : this.#subset.includeGlyph(id);
    this.#codes.set(key, code);
    this.#glyphs[code] = { text, width };
    return code;
  }

  /** As `code`, with the kerning after the glyph. */
  operand(glyph: Glyph): GlyphOperand {
    let known = this.#operands.get(glyph);
    if (!known) {
      known = { code: hex4(this.code(glyph)), kern: pdfNumber(glyph.width - glyph.advance) };
      this.#operands.set(glyph, known);
    }
    return known;
  }

  /** Area by height of "l", which is nothing but a stem in a sans serif face: true for slanted ones too. */
  #stemWidth(): number {
    const { path, bbox } = this.#font.glyphForCodePoint(0x6c);
    const points = path.commands.flatMap(({ args }) => (args.length >= 2 ? [args.slice(-2)] : []));
    const area = points.reduce((sum, [x = 0, y = 0], index) => {
      const [nextX = 0, nextY = 0] = points[(index + 1) % points.length]!;
      return sum + (x * nextY - nextX * y) / 2;
    }, 0);
    return Math.round(this.#scaled(Math.abs(area) / (bbox.maxY - bbox.minY)));
  }

  embed(context: PDFContext): PDFRef {
    const font = this.#font;
    const program = this.#subset.encode();
    const name = `${subsetTag(program)}+${font.postscriptName}`;
    const { minX, minY, maxX, maxY } = font.bbox;
    const reach = (letter: string) => font.glyphForCodePoint(letter.codePointAt(0)!).bbox;
    const descriptor = context.register(
      context.obj({
        Type: 'FontDescriptor',
        FontName: name,
        Flags: SYMBOLIC + (font.italicAngle === 0 ? 0 : ITALIC),
        FontBBox: [minX, minY, maxX, maxY].map(units => Math.round(this.#scaled(units))),
        ItalicAngle: snapped(font.italicAngle),
        // Without accented capitals (ISO 32000-1 Table 122): readers that order text by its boxes keep lines apart.
        Ascent: Math.round(this.#scaled(reach('d').maxY)),
        Descent: Math.round(this.#scaled(reach('p').minY)),
        CapHeight: Math.round(this.#scaled(font.capHeight)),
        XHeight: Math.round(this.#scaled(font.xHeight)),
        StemV: this.#stemWidth(),
        FontFile2: context.register(flateStream(context, program, { Length1: program.length })),
      }),
    );
    const descendant = context.register(
      context.obj({
        Type: 'Font',
        Subtype: 'CIDFontType2',
        BaseFont: name,
        CIDSystemInfo: { Registry: PDFString.of('Adobe'), Ordering: PDFString.of('Identity'), Supplement: 0 },
        CIDToGIDMap: 'Identity',
        FontDescriptor: descriptor,
        DW: 1000,
        W: [0, this.#glyphs.map(({ width }) => snapped(width))],
      }),
    );
    const map = toUnicode(this.#glyphs.map(({ text }) => text));
    return context.register(
      context.obj({
        Type: 'Font',
        Subtype: 'Type0',
        BaseFont: name,
        Encoding: 'Identity-H',
        DescendantFonts: [descendant],
        ToUnicode: context.register(flateStream(context, map)),
      }),
    );
  }
}

/** Six letters that follow from the subset, so that the same text gives the same file (ISO 32000-1 9.6.4). */
const subsetTag = (program: Uint8Array): string =>
  [...createHash('sha256').update(program).digest().subarray(0, 6)]
    .map(byte => String.fromCharCode(65 + (byte % 26)))
    .join('');

const RESOURCE: Readonly<Record<FaceName, string>> = { regular: 'FR', bold: 'FB', italic: 'FI' };

/** The fonts of one file: the core's library on the one side, embedded subsets on the other. */
export class EmbeddedFonts {
  readonly #library: FontLibrary;
  readonly #faces = new Map<FaceName, EmbeddedFace>();

  constructor(library: FontLibrary) {
    this.#library = library;
  }

  /** Name of a face in the resources of every page. */
  resourceName(face: FaceName): string {
    return RESOURCE[face];
  }

  #face(name: FaceName): EmbeddedFace {
    const known = this.#faces.get(name);
    if (known) return known;
    const face = new EmbeddedFace(this.#library.bytes(name));
    this.#faces.set(name, face);
    return face;
  }

  /** Operand of `TJ` for a run; with `space` a word space follows, so that words stay apart at line ends. */
  textArray(run: GlyphRun, space = false): string {
    const face = this.#face(run.face);
    const glyphs = space ? [...run.glyphs, ...this.#library.shape(' ', run.face).glyphs] : run.glyphs;
    let codes = '';
    let array = '';
    for (const glyph of glyphs) {
      const { code, kern } = face.operand(glyph);
      codes += code;
      if (kern === '0') continue;
      array += `<${codes}>${kern}`;
      codes = '';
    }
    return codes === '' ? `[${array}]` : `[${array}<${codes}>]`;
  }

  /** Embeds the subsets used, by resource name. */
  embed(context: PDFContext): ReadonlyMap<string, PDFRef> {
    const order: readonly FaceName[] = ['regular', 'bold', 'italic'];
    const used = order.flatMap(name => {
      const face = this.#faces.get(name);
      return face ? [[RESOURCE[name], face.embed(context)] as const] : [];
    });
    return new Map(used);
  }
}
