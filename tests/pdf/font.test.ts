import { create, type Font } from 'fontkit';
import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  type PDFNumber,
  type PDFRawStream,
} from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { PagedDocument } from '../../src/layout/frame.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import type { FaceName, FontLibrary } from '../../src/text/glyph-run.ts';
import { SHEET, tag, textItem } from '../support/paged-documents.ts';
import { extractText, openPdf } from '../support/render.ts';

const fonts = await loadFonts();
// Accents are composite glyphs; Greek, Cyrillic and signs come from far parts of the font.
const SAMPLE = 'AVATAR Tö fi ÀÉÎÕÜ ñçß Ωμ Привет ≤≥ ₂ µ ™ — “P305+P351” 0123456789 %‰ §';

const setText = (text: string, face: FaceName = 'regular', library: FontLibrary = fonts): PagedDocument => {
  const paragraph = tag('P');
  return {
    frames: [
      {
        width: 900,
        height: 50,
        bleed: 0,
        slug: 0,
        items: [textItem(library, text, { x: 10, y: 20, tag: paragraph, face })],
      },
    ],
    root: tag('Document', [paragraph]),
    title: 'Sample',
    language: 'en',
    subject: '',
    date: '2026-01-02T03:04:05Z',
    attachments: [],
  };
};

interface EmbeddedFont {
  readonly program: Font;
  readonly widths: readonly number[];
  readonly unicode: string;
  readonly descriptor: PDFDict;
  readonly name: string;
}

/** Reads the one font of a file with pdf-lib and parses its embedded program anew. */
const readFont = async (bytes: Uint8Array): Promise<EmbeddedFont> => {
  const { context } = await PDFDocument.load(bytes, { updateMetadata: false });
  const dicts = context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFDict ? [object] : []));
  const find = (key: string, value: string) =>
    dicts.find(dict => dict.get(PDFName.of(key)) === PDFName.of(value))!;
  const descriptor = find('Type', 'FontDescriptor');
  const data = (dict: PDFDict, key: string) =>
    decodePDFRawStream(dict.lookup(PDFName.of(key)) as PDFRawStream).decode();
  const [, widths] = find('Subtype', 'CIDFontType2').lookup(PDFName.of('W'), PDFArray).asArray() as [
    PDFNumber,
    PDFArray,
  ];
  return {
    program: create(Buffer.from(data(descriptor, 'FontFile2'))) as Font,
    widths: widths.asArray().map(width => (width as PDFNumber).asNumber()),
    unicode: new TextDecoder().decode(data(find('Subtype', 'Type0'), 'ToUnicode')),
    descriptor,
    name: (find('Subtype', 'Type0').get(PDFName.of('BaseFont')) as PDFName).decodeText(),
  };
};

describe('embedded fonts', () => {
  it.each(['regular', 'bold', 'italic'] as const)('hold the outlines of the original %s face', async face => {
    const original = create(fonts.bytes(face) as Buffer) as Font;
    const { program, unicode } = await readFont(await writePdf(setText(SAMPLE, face), fonts, SHEET));
    const pairs = [...unicode.matchAll(/^<([0-9A-F]{4})> <([0-9A-F]{4})>$/gmu)].slice(1);
    expect(pairs).toHaveLength(new Set(SAMPLE).size);
    for (const [, code, unit] of pairs) {
      const expected = original.glyphForCodePoint(Number.parseInt(unit!, 16)).path.toSVG();
      expect(program.getGlyph(Number.parseInt(code!, 16)).path.toSVG()).toBe(expected);
    }
  });

  it('declare the widths of the font program', async () => {
    const { program, widths } = await readFont(await writePdf(setText(SAMPLE), fonts, SHEET));
    expect(widths.length).toBeGreaterThan(40);
    for (const [code, width] of widths.entries())
      expect(Math.abs(width - (program.getGlyph(code).advanceWidth * 1000) / 2048)).toBeLessThan(0.001);
  });

  it('map to text in blocks of at most 100', async () => {
    const characters = Array.from({ length: 190 }, (_, index) => String.fromCodePoint(0xa1 + index))
      .filter(character => fonts.missing(character, 'regular').length === 0)
      .join('')
      .normalize('NFC');
    const bytes = await writePdf(setText(characters), fonts, SHEET);
    const { unicode } = await readFont(bytes);
    const counts = [...unicode.matchAll(/(\d+) beginbfchar/gu)].map(([, count]) => Number(count));
    expect(counts.length).toBeGreaterThan(1);
    expect(Math.max(...counts)).toBe(100);
    expect((await extractText(bytes))[0]!.trim()).toBe(fonts.shape(characters, 'regular').text);
  });

  it('describe themselves as the font tables do', async () => {
    const { descriptor, name } = await readFont(await writePdf(setText('Warning', 'italic'), fonts, SHEET));
    const number = (key: string) => (descriptor.get(PDFName.of(key)) as PDFNumber).asNumber();
    const { capHeight } = fonts.metrics('italic');
    // ISO 32000-1 Table 122: the height that glyphs reach, those of accented characters left out.
    const heights = fonts
      .outline('d', 'italic')
      .flatMap(([, ...points]) => points.filter((_, at) => at % 2 === 1));
    expect(name).toMatch(/^[A-Z]{6}\+RobotoCondensed-Italic$/u);
    expect(number('CapHeight')).toBe(Math.round(capHeight));
    expect(number('Ascent')).toBe(Math.round(Math.max(...heights)));
    expect(number('ItalicAngle')).toBeLessThan(0);
    expect(number('Flags')).toBe(4 + 64);
    // Stems of a regular sans serif are between 60 and 110 thousandths of the em.
    expect(number('StemV')).toBeGreaterThan(60);
    expect(number('StemV')).toBeLessThan(110);
  });

  it('are set at the kerned width that fontkit gives', async () => {
    const original = create(fonts.bytes('bold') as Buffer) as Font;
    const pdf = await openPdf(await writePdf(setText('AVATAR To', 'bold'), fonts, SHEET));
    const { items } = await (await pdf.getPage(1)).getTextContent();
    const width = items.reduce((sum, item) => sum + ('width' in item ? item.width : 0), 0);
    const units = original.layout('AVATAR To', { liga: false }).advanceWidth;
    expect(width).toBeCloseTo((units * 8) / 2048, 1);
    const unkerned = [...'AVATAR To'].reduce(
      (sum, character) => sum + original.layout(character).advanceWidth,
      0,
    );
    expect(unkerned - units).toBeGreaterThan(200);
  });

  it('give two codes to one glyph that stands for two texts', async () => {
    const shape: FontLibrary['shape'] = (text, face) => {
      const run = fonts.shape(text, face);
      const glyphs = run.glyphs.map((glyph, index) => (index === 1 ? { ...glyph, text: 'B' } : glyph));
      return { ...run, glyphs };
    };
    const bytes = await writePdf(setText('AA', 'regular', { ...fonts, shape }), fonts, SHEET);
    expect((await extractText(bytes))[0]!.trim()).toBe('AB');
    const { program } = await readFont(bytes);
    expect(program.getGlyph(1).path.toSVG()).toBe(program.getGlyph(2).path.toSVG());
  });
});
