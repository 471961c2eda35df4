import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestLayer } from '../../src/logistics/layer.ts';
import { palletLoad } from '../../src/logistics/pallet.ts';

const eur = { length: 1200, width: 800 };
const gma = { length: 1219.2, width: 1016 };

describe('cases on a layer', () => {
  // Modules of 600 x 400 mm divide the pallet of 1200 x 800 mm without rest (ISO 3394); 10 cases of 16 x 12 in on
  // 48 x 40 in: area divides into 10, common practice, no source.
  it.each([
    [eur, 600, 400, 4],
    [eur, 400, 300, 8],
    [eur, 300, 200, 16],
    [gma, 406.4, 304.8, 10],
    [eur, 1300, 80, 0],
  ])('%j: %d x %d mm gives %d', (pallet, length, width, count) => {
    expect(bestLayer(pallet, { length, width })).toHaveLength(count);
    expect(bestLayer(pallet, { length: width, width: length })).toHaveLength(count);
  });

  it('lie within the pallet, apart from each other, and no fewer than in columns', () => {
    const side = fc.integer({ min: 120, max: 700 });
    fc.assert(
      fc.property(side, side, (length, width) => {
        const placed = bestLayer(eur, { length, width });
        for (const [at, a] of placed.entries()) {
          expect(Math.min(a.x, a.y)).toBeGreaterThanOrEqual(-1e-6);
          expect(a.x + a.length).toBeLessThanOrEqual(1200 + 1e-6);
          expect(a.y + a.width).toBeLessThanOrEqual(800 + 1e-6);
          for (const b of placed.slice(at + 1)) {
            const apart =
              a.x + a.length <= b.x + 1e-6 ||
              b.x + b.length <= a.x + 1e-6 ||
              a.y + a.width <= b.y + 1e-6 ||
              b.y + b.width <= a.y + 1e-6;
            expect(apart).toBe(true);
          }
        }
        const columns = (l: number, w: number) => Math.floor(1200 / l) * Math.floor(800 / w);
        expect(placed.length).toBeGreaterThanOrEqual(
          Math.max(columns(length, width), columns(width, length)),
        );
        expect(placed.length).toBeLessThanOrEqual(Math.floor((1200 * 800) / (length * width)));
      }),
      { numRuns: 60 },
    );
  });
});

describe('a pallet', () => {
  const size = { length: 400, width: 300, height: 280 };

  it('is as high and heavy as its parts', () => {
    // 144 mm and 25 kg of pallet, 4 layers of 8 cases (arithmetic).
    const load = palletLoad('1200x800', size, 22.5, null, null);
    expect(load).toMatchObject({
      perLayer: 8,
      layers: 4,
      cases: 32,
      height: 144 + 4 * 280,
      limitedBy: 'height',
    });
    expect(load.mass).toBeCloseTo(25 + 32 * 22.5, 9);
    expect(load.covers).toBeCloseTo(1, 9);
  });

  it('stops at its safe load, at the layers asked for, and where nothing goes', () => {
    expect(palletLoad('1200x800', size, 100, 2500, null)).toMatchObject({ layers: 1, limitedBy: 'load' });
    expect(palletLoad('1200x800', size, 22.5, null, 2)).toMatchObject({ layers: 2, limitedBy: 'asked' });
    expect(palletLoad('1200x800', { ...size, length: 1500 }, 22.5, null, null)).toMatchObject({
      cases: 0,
      limitedBy: 'too-large',
    });
    expect(palletLoad('1200x800', size, null, null, null).mass).toBeNull();
  });
});
