import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { loadFonts } from '../../src/text/font-library.ts';
import { pairKerning } from '../../src/text/pair-kerning.ts';

const fonts = await loadFonts();
const ASCII = Array.from({ length: 95 }, (_, at) => String.fromCharCode(32 + at));
// Signs that open, close and join, and accented capitals that lean on their neighbours.
const OTHERS = [...'‘’“”„–—…•ÀÄÅÇÉÑÖÜßàéöüÿ'];

// The reference is fontkit, which sets each pair as a text of its own.
describe.each(['regular', 'bold', 'italic'] as const)('kerning of pairs in the %s face', face => {
  const bytes = fonts.bytes(face);
  const font = create(bytes as Buffer) as Font;
  const kerning = pairKerning(bytes)!;
  const differing = (firsts: readonly string[], seconds: readonly string[]): string[] =>
    firsts.flatMap(first =>
      seconds.filter(second => {
        const { glyphs, positions } = font.layout(first + second, { liga: false, clig: false });
        const [one, two] = [first, second].map(text => font.glyphForCodePoint(text.codePointAt(0)!));
        const advance = one!.advanceWidth + kerning(one!.id, two!.id);
        return glyphs[0]!.id !== one!.id || glyphs[1]!.id !== two!.id || positions[0]!.xAdvance !== advance;
      }),
    );

  it('is that of fontkit for every pair of ASCII', () => {
    expect(differing(ASCII, ASCII)).toEqual([]);
  });

  it('is that of fontkit for signs and accented letters', () => {
    expect(differing(OTHERS, [...OTHERS, ...ASCII])).toEqual([]);
    expect(differing(ASCII, OTHERS)).toEqual([]);
  });

  it('is some kerning', () => {
    const of = (pair: string) => {
      const [one, two] = [...pair].map(text => font.glyphForCodePoint(text.codePointAt(0)!).id);
      return kerning(one!, two!);
    };
    expect(of('AV')).toBeLessThan(0);
    expect(of('ll')).toBe(0);
  });
});

describe('a font without tables of layout', () => {
  it('has no kerning by pairs', () => {
    expect(pairKerning(Uint8Array.from([0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]))).toBeNull();
  });
});
