import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { loadFonts } from '../../src/text/font-library.ts';
import { type FaceName, runWidth } from '../../src/text/glyph-run.ts';
import { MissingGlyphError } from '../../src/text/missing-glyph.ts';

const fonts = await loadFonts();
const open = (path: string) => {
  const file = createRequire(import.meta.url).resolve(`@expo-google-fonts/roboto-condensed/${path}`);
  return create(readFileSync(file)) as Font;
};
const oracle: Record<FaceName, Font> = {
  regular: open('400Regular/RobotoCondensed_400Regular.ttf'),
  bold: open('700Bold/RobotoCondensed_700Bold.ttf'),
  italic: open('400Regular_Italic/RobotoCondensed_400Regular_Italic.ttf'),
};
const statements = (): string[] =>
  ['us-hcs', 'eu-clp'].flatMap(basis => {
    const file = readFileSync(new URL(`../../hazard-data/${basis}/statements.json`, import.meta.url), 'utf8');
    return [...file.matchAll(/"text": "([^"]+)"/g)].map(([, text = '']) => text);
  });

const FACES = ['regular', 'bold', 'italic'] as const;

describe('loadFonts', () => {
  it.each(FACES)('keeps the text of each glyph of the %s face, whatever was drawn before', async face => {
    const drawnFirst = await loadFonts();
    const characters = Array.from({ length: 0x17f - 0x20 }, (_, at) => String.fromCodePoint(0x20 + at));
    const held = characters.filter(each => drawnFirst.missing(each, face).length === 0);
    // Composite glyphs draw others: ½ its figures, é its letter and accent.
    for (const { id } of drawnFirst.shape(held.filter(each => each > '~').join(' '), face).glyphs)
      drawnFirst.glyph(id, face);
    for (const each of held)
      expect(
        drawnFirst
          .shape(each, face)
          .glyphs.map(({ text }) => text)
          .join(''),
      ).toBe(
        fonts
          .shape(each, face)
          .glyphs.map(({ text }) => text)
          .join(''),
      );
    expect(
      drawnFirst
        .shape('½ x 10', face)
        .glyphs.map(({ text }) => text)
        .join(''),
    ).toBe('½ x 10');
  });

  it.each(FACES)('kerns the %s face as fontkit does', face => {
    for (const text of ['AVATAR To', 'WARNING', 'LT. 7', 'P305+P351']) {
      const kerned = oracle[face].layout(text, { liga: false }).advanceWidth;
      expect(fonts.shape(text, face).advance).toBeCloseTo((kerned * 1000) / 2048, 6);
    }
    const unkerned = fonts.shape('AVATAR', face).glyphs.reduce((sum, { width }) => sum + width, 0);
    expect(fonts.shape('AVATAR', face).advance).toBeLessThan(unkerned);
  });

  // Glyphs are put together from pairs that were set before: fontkit, which sets each text as a whole, is the measure.
  it.each(FACES)('sets every statement of the law in the %s face glyph by glyph as fontkit does', face => {
    expect(statements().length).toBeGreaterThan(300);
    for (const text of statements()) {
      const { glyphs, positions } = oracle[face].layout(text, { liga: false, frac: false });
      const set = fonts.shape(text, face).glyphs;
      expect(set.map(({ id }) => id)).toEqual(glyphs.map(({ id }) => id));
      expect(set.map(({ advance }) => advance)).toEqual(
        positions.map(({ xAdvance }) => xAdvance * (1000 / 2048)),
      );
    }
  });

  it.each(FACES)('and any text of Latin letters, figures and signs in the %s face', face => {
    const letters = [...Array(0xff - 0x20).keys()]
      .map(at => at + 0x20)
      .filter(code => code < 0x7f || code > 0xa0)
      .filter(code => code !== 0xad)
      .map(code => String.fromCharCode(code))
      .concat([...'–—‘’“”„•…']);
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...letters), { maxLength: 12 }), drawn => {
        const text = drawn.join('');
        const { glyphs, positions } = oracle[face].layout(text, { liga: false, frac: false });
        const set = fonts.shape(text, face).glyphs;
        expect(set.map(({ id }) => id)).toEqual(glyphs.map(({ id }) => id));
        expect(set.map(({ advance }) => advance)).toEqual(
          positions.map(({ xAdvance }) => xAdvance * (1000 / 2048)),
        );
      }),
      { numRuns: 2000, seed: 7 },
    );
  });

  it.each(FACES)('sets %s without ligatures, one glyph a character', face => {
    const { glyphs } = fonts.shape('office fflow 1/2', face);
    expect(glyphs.map(({ text }) => text).join('')).toBe('office fflow 1/2');
    expect(glyphs).toHaveLength(16);
  });

  it('takes its measures from the font tables', () => {
    const os2 = oracle.regular['OS/2'];
    expect(fonts.metrics('regular').xHeight).toBeCloseTo((os2.xHeight * 1000) / 2048, 9);
    expect(fonts.metrics('regular').capHeight).toBeCloseTo((os2.capHeight * 1000) / 2048, 9);
    expect(fonts.metrics('regular').descent).toBeLessThan(0);
  });

  it('measures in millimetres: an em of 72 pt is an inch', () => {
    expect(runWidth({ ...fonts.shape('x', 'regular'), advance: 1000 }, 72)).toBeCloseTo(25.4, 9);
  });

  it('names every character that the face lacks', () => {
    const shape = () => fonts.shape('pH ✓ 木 ✓', 'bold');
    expect(shape).toThrow(MissingGlyphError);
    expect(shape).toThrow(/U\+2713 \(✓\), U\+6728 \(木\)/);
    expect(fonts.missing('pH ✓ 木 ✓', 'bold')).toEqual(['✓', '木']);
    expect(fonts.missing('≤ ≥ µ ₂ °C – ™ Ω é ß Ж', 'regular')).toEqual([]);
  });

  it('sets no-break spaces and hyphens as plain ones, composes accents, drops break hints', () => {
    expect(fonts.shape('5\u00A0%\u202FA\u2011B', 'regular').text).toBe('5 % A-B');
    expect(fonts.shape('cafe\u0301 so\u00ADdium\u200B', 'regular').text).toBe('café sodium');
  });

  it('shapes the same text once', () => {
    expect(fonts.shape('Danger', 'bold')).toBe(fonts.shape('Danger', 'bold'));
  });

  it('refuses what is not a TrueType font', async () => {
    const junk = new Uint8Array(64);
    await expect(loadFonts({ regular: junk, bold: junk, italic: junk })).rejects.toThrow();
  });
});
