import type { Font } from 'fontkit';
import { readFontFiles } from '../environment/font-files.ts';
import { cubic } from './cubic.ts';
import type { FaceMetrics, FaceName, FontLibrary, Glyph, GlyphRun, OutlineCommand } from './glyph-run.ts';
import { MissingGlyphError } from './missing-glyph.ts';
import { settable } from './settable.ts';

/** Font files by face; complete static TrueType fonts, not WOFF2. */
export type FontFiles = Readonly<Record<FaceName, Uint8Array>>;

// Codes such as "P302+P352" must come back from the file character by character: no ligature, no fraction.
const FEATURES = { liga: false, clig: false, dlig: false, frac: false, numr: false, dnom: false };

/** Latin letters, figures and the signs between them. */
const KERNED_BY_PAIRS = /^[\u0020-\u007E\u00A1-\u00FF\u2013\u2014\u2018-\u201E\u2022\u2026]*$/u;

class Face {
  readonly name: FaceName;
  readonly bytes: Uint8Array;
  readonly metrics: FaceMetrics;
  readonly #font: Font;
  readonly #open: () => Font;
  #drawn: Font | null = null;
  readonly #perMille: number;
  readonly #runs = new Map<string, GlyphRun>();
  readonly #held = new Map<string, boolean>();
  /** The first glyph of each pair of neighbours, kerned against the second. */
  readonly #firsts = new Map<string, Glyph>();

  constructor(name: FaceName, bytes: Uint8Array, open: () => Font) {
    const font = open();
    this.name = name;
    this.bytes = bytes;
    this.#font = font;
    this.#open = open;
    this.#perMille = 1000 / font.unitsPerEm;
    this.metrics = {
      ascent: font.ascent * this.#perMille,
      descent: font.descent * this.#perMille,
      capHeight: font.capHeight * this.#perMille,
      xHeight: font.xHeight * this.#perMille,
    };
  }

  missing(text: string): readonly string[] {
    const lacking: string[] = [];
    for (const character of settable(text))
      if (!this.#has(character) && !lacking.includes(character)) lacking.push(character);
    return lacking;
  }

  #has(character: string): boolean {
    let has = this.#held.get(character);
    if (has === undefined) {
      has = this.#font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0);
      this.#held.set(character, has);
    }
    return has;
  }

  shape(text: string): GlyphRun {
    const known = this.#runs.get(text);
    if (known) return known;
    const run = this.#shape(settable(text));
    this.#runs.set(text, run);
    return run;
  }

  glyph(id: number, x = 0): readonly OutlineCommand[] {
    // fontkit keeps a glyph as it was first asked for: one drawn as part of another would have no text when it is set.
    this.#drawn ??= this.#open();
    return cubic(this.#drawn.getGlyph(id).path.commands, x, this.#perMille);
  }

  outline(text: string): OutlineCommand[] {
    const run = this.shape(text);
    const commands: OutlineCommand[] = [];
    let x = 0;
    for (const { id, advance } of run.glyphs) {
      commands.push(...this.glyph(id, x));
      x += advance;
    }
    return commands;
  }

  #shape(text: string): GlyphRun {
    const missing = this.missing(text);
    if (missing.length > 0) throw new MissingGlyphError(missing, text, this.name);
    const isByPairs = KERNED_BY_PAIRS.test(text);
    const known = isByPairs ? this.#byPairs(text) : null;
    const glyphs = known ?? this.#laidOut(text);
    if (isByPairs && !known) this.#kept(text, glyphs);
    return { face: this.name, text, glyphs, advance: glyphs.reduce((sum, { advance }) => sum + advance, 0) };
  }

  /**
   * The glyphs of a text from pairs of neighbours that were set before: without ligatures and marks a face kerns by pairs
   * alone, and there are far fewer pairs than texts. Null where a mark or a sign of another script may change its
   * neighbours, and where a pair is new.
   */
  #byPairs(text: string): Glyph[] | null {
    const glyphs: Glyph[] = [];
    for (let at = 0; at < text.length; at++) {
      const first = this.#firsts.get(text.slice(at, at + 2));
      if (!first) return null;
      glyphs.push(first);
    }
    return glyphs;
  }

  #kept(text: string, glyphs: readonly Glyph[]): void {
    for (const [at, glyph] of glyphs.entries()) this.#firsts.set(text.slice(at, at + 2), glyph);
  }

  #laidOut(text: string): Glyph[] {
    const { glyphs, positions } = this.#font.layout(text, FEATURES);
    return glyphs.map(
      ({ id, advanceWidth, codePoints }, index): Glyph => ({
        id,
        advance: (positions[index]?.xAdvance ?? advanceWidth) * this.#perMille,
        width: advanceWidth * this.#perMille,
        text: String.fromCodePoint(...codePoints),
      }),
    );
  }
}

/**
 * Opens the three faces, by default those of Roboto Condensed (SIL Open Font License).
 * @throws Error where a file cannot be read or is not a single TrueType font.
 */
export const loadFonts = async (files?: FontFiles): Promise<FontLibrary> => {
  const [{ create }, sources] = await Promise.all([import('fontkit'), files ?? readFontFiles()]);
  const load = (name: FaceName): Face =>
    new Face(name, sources[name], () => {
      const font = create(sources[name] as Buffer);
      if (!('layout' in font) || font.type !== 'TTF')
        throw new Error(`the ${name} face is not a TrueType font`);
      return font;
    });
  const faces: Readonly<Record<FaceName, Face>> = {
    regular: load('regular'),
    bold: load('bold'),
    italic: load('italic'),
  };
  return {
    shape: (text, face) => faces[face].shape(text),
    missing: (text, face) => faces[face].missing(text),
    metrics: face => faces[face].metrics,
    outline: (text, face) => faces[face].outline(text),
    glyph: (id, face) => faces[face].glyph(id),
    bytes: face => faces[face].bytes,
  };
};
