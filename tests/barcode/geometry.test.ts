import { describe, expect, it } from 'vitest';
import { symbolGeometry } from '../../src/barcode/geometry.ts';
import { type SymbolName, smallestDiameter, widestUprightBars } from '../../src/barcode/spec.ts';
import { encodeSymbol } from '../../src/barcode/symbols.ts';

// Sizes with quiet zones at 80, 100 and 200 %: size tables of GS1 Ireland and GS1 Bulgaria.
const sizes: [SymbolName, string, number, number, number][] = [
  ['EAN-13', '6291041500213', 80, 29.83, 18.28],
  ['EAN-13', '6291041500213', 100, 37.29, 22.85],
  ['UPC-A', '614141000418', 100, 37.29, 22.85],
  ['EAN-13', '6291041500213', 200, 74.58, 45.7],
  ['EAN-8', '96385074', 80, 21.38, 14.58],
  ['EAN-8', '96385074', 100, 26.73, 18.23],
  ['UPC-E', '01234565', 100, 22.11, 22.85],
];

describe('EAN/UPC', () => {
  it.each(sizes)(
    '%s %s at %d %% is %d mm wide with bars %d mm high',
    async (name, digits, percent, width, height) => {
      const geometry = symbolGeometry(await encodeSymbol(name, digits, 'retail'), 0.0033 * percent);
      expect(geometry.width).toBeCloseTo(width, 1);
      expect(geometry.quietZone.height).toBeCloseTo(height, 1);
      expect(geometry.magnification).toBeCloseTo(percent, 6);
      const last = geometry.bars.at(-1)!;
      // Right quiet zone: the bars end where it begins.
      const { right } = (await encodeSymbol(name, digits, 'retail')).spec.quietZone;
      expect(last.x + last.width).toBeCloseTo(geometry.width - right * geometry.x, 9);
    },
  );

  it('extends guard bars by five modules', async () => {
    const geometry = symbolGeometry(await encodeSymbol('EAN-13', '6291041500213', 'retail'), 0.33);
    const heights = geometry.bars.map(({ height }) => Math.round(height * 1000) / 1000);
    // Two bars in each guard and in the middle (GS1 General Specifications 5.2.2.1).
    expect(heights.filter(height => height === 24.5)).toHaveLength(6);
    expect(heights.filter(height => height === 22.85)).toHaveLength(24);
  });

  it('takes the reduction off every bar and leaves the pitch', async () => {
    const symbol = await encodeSymbol('UPC-A', '614141000418', 'retail');
    const plain = symbolGeometry(symbol, 0.33).bars;
    const reduced = symbolGeometry(symbol, 0.33, { barWidthReduction: 0.05 }).bars;
    for (const [at, bar] of reduced.entries()) {
      expect(bar.width).toBeCloseTo(plain[at]!.width - 0.05, 9);
      expect(bar.x + bar.width / 2).toBeCloseTo(plain[at]!.x + plain[at]!.width / 2, 9);
    }
  });

  it('refuses sizes outside 80 to 200 %, and a reduction that eats a bar', async () => {
    const symbol = await encodeSymbol('EAN-13', '6291041500213', 'retail');
    expect(() => symbolGeometry(symbol, 0.26)).toThrow(RangeError);
    expect(() => symbolGeometry(symbol, 0.67)).toThrow(RangeError);
    expect(() => symbolGeometry(symbol, 0.3, { barWidthReduction: 0.3 })).toThrow(RangeError);
  });

  it('keeps digits inside the box', async () => {
    for (const [name, digits] of sizes) {
      const geometry = symbolGeometry(await encodeSymbol(name, digits, 'retail'), 0.33);
      for (const { centre, maxWidth, baseline } of geometry.digits) {
        expect(centre - maxWidth / 2).toBeGreaterThanOrEqual(-1e-9);
        expect(centre + maxWidth / 2).toBeLessThanOrEqual(geometry.width + 1e-9);
        expect(baseline).toBeLessThanOrEqual(geometry.height);
      }
    }
  });
});

describe('ITF-14', () => {
  it('is 142.75 mm wide at X 1.016 mm with wide elements of 2.5', async () => {
    // The 100 % size of ITF-14 (GS1 General Specifications 5.3.2, from memory).
    const symbol = await encodeSymbol('ITF-14', '10614141000415', 'general-distribution');
    const geometry = symbolGeometry(symbol, 1.016);
    expect(geometry.width).toBeCloseTo(142.75, 1);
    expect(new Set(symbol.bars.map(({ width }) => width))).toEqual(new Set([1, 2.5]));
  });
});

describe('curvature', () => {
  it('asks for 60 mm of diameter for EAN-13 at 100 %', () => {
    // 1.91 times the bars' width: bars within 30 degrees of the middle.
    expect(smallestDiameter(95 * 0.33)).toBeCloseTo(59.9, 1);
    expect(widestUprightBars(smallestDiameter(20))).toBeCloseTo(20, 9);
  });
});
