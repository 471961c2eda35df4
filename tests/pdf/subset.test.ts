import fc from 'fast-check';
import { create } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { subset } from '../../src/pdf/subset.ts';
import { loadFonts } from '../../src/text/font-library.ts';

interface ReferenceSubset {
  readonly glyphs: number[];
  includeGlyph(id: number): number;
  encode(): Uint8Array;
}

const fonts = await loadFonts();

// fontkit, a general font library, is the reference: its subsets go to PDF files of many programs.
describe.each(['regular', 'bold', 'italic'] as const)('a subset of the %s face', face => {
  const bytes = fonts.bytes(face);
  const font = create(bytes as Buffer) as unknown as {
    readonly numGlyphs: number;
    createSubset(): ReferenceSubset;
  };

  it('is that of fontkit byte for byte, composite and repeated glyphs too', () => {
    const ids = fc.array(fc.nat(font.numGlyphs - 1), { maxLength: 120 });
    fc.assert(
      fc.property(ids, wanted => {
        const reference = font.createSubset();
        for (const id of wanted)
          if (reference.glyphs.includes(id)) reference.glyphs.push(id);
          else reference.includeGlyph(id);
        const mine = subset(bytes, [...reference.glyphs]);
        expect(Buffer.compare(mine, reference.encode())).toBe(0);
      }),
      { numRuns: 40 },
    );
  });

  it('refuses a file without outlines', () => {
    const bare = Uint8Array.from(Buffer.from('0001000000000000000000', 'hex'));
    expect(() => subset(bare, [0])).toThrow(RangeError);
  });
});
