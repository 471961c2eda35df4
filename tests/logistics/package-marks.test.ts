import { describe, expect, it } from 'vitest';
import { layoutLimitedQuantity } from '../../src/layout/case/mark-labels.ts';
import { layoutShippingMark } from '../../src/layout/case/shipping-mark.ts';
import {
  identificationHeight,
  limitedQuantityMark,
  marinePollutantMark,
} from '../../src/logistics/package-marks.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { type Dots, oneBit } from '../support/one-bit.ts';

const fonts = await loadFonts();
const date = '2026-11-26T00:00:00Z';
const copy = { kind: 'distribution', fingerprint: '0'.repeat(64) } as never;
const dpi = 203.2;
const printed = async (document: Parameters<typeof writePdf>[0]): Promise<Dots> =>
  oneBit(await writePdf(document, fonts, { kind: 'printer', version: '0', copy }), dpi);
/** Rows with black, as runs of dots. */
const bands = (dots: Dots): { readonly from: number; readonly height: number }[] => {
  const found: { from: number; height: number }[] = [];
  for (let y = 0, open = false; y < dots.height; y += 1) {
    const black = Array.from({ length: dots.width }, (_, x) => dots.at(x, y)).some(Boolean);
    if (black && !open) found.push({ from: y, height: 1 });
    else if (black) found.at(-1)!.height += 1;
    open = black;
  }
  return found;
};

// 49 CFR 172.301(a)(1): 12 mm; 6 mm for packages up to 30 kg net.
describe('characters of the identification number', () => {
  it.each([
    [29.99, 6],
    [30, 6],
    [30.01, 12],
    [null, 12],
  ])('of %d kg net: %d mm', (net, least) => {
    expect(identificationHeight(net)).toBe(least);
  });

  // A name as long as the stock takes leaves no more than the least height.
  const long = `Corrosive liquids, toxic, n.o.s. (${'contains phosphoric acid and hydrofluoric acid, '.repeat(4)}water)`;
  it.each([6, 12])('are measured on the finished label: %d mm and more', async least => {
    for (const name of ['Hypochlorite solutions', long]) {
      const mark = { id: 'UN1791', name, small: ['DRAFT'], title: 't', subject: 's', date };
      const document = layoutShippingMark(mark, least, dpi, fonts);
      expect(document, name).not.toBeNull();
      const [number] = bands(await printed(document!));
      // Eighths of a millimetre.
      expect(number!.height / 8, name).toBeGreaterThanOrEqual(least);
    }
  });
});

// 49 CFR 172.315(a)(2): 100 mm a side, reduced down to 50 mm; across the corners 50 x root of 2 = 70.71 mm (arithmetic).
describe('the mark of a limited quantity', () => {
  it.each([
    [70.7, null],
    [70.72, 50],
    [80, 56],
    [141.4, 99],
    [141.43, 100],
    [300, 100],
  ])('on a case %d mm high has sides of %s mm, measured on the finished label', async (height, side) => {
    const mark = limitedQuantityMark({ length: 400, width: 300, height });
    if (side === null) return void expect(mark).toBeNull();
    expect(mark!.side).toBe(side);
    const laid = layoutLimitedQuantity(mark!, { alt: 'a', foot: 'f', title: 't', date }, dpi, fonts)!;
    const dots = await printed(laid.document);
    const [first] = bands(dots);
    expect(first!.height / 8).toBeGreaterThanOrEqual(side * Math.SQRT2);
    expect(first!.height / 8).toBeLessThan(side * Math.SQRT2 + 1);
    // The border at the level of the side corners, cut along the row: its width times the root of 2.
    const middle = first!.from + Math.round(first!.height / 2);
    const row = middle - Math.round(first!.height / 12);
    let x = 0;
    while (!dots.at(x, row)) x += 1;
    let border = 0;
    while (dots.at(x + border, row)) border += 1;
    expect(border / 8 / Math.SQRT2).toBeGreaterThanOrEqual(side === 50 ? 1 : mark!.border - 0.01);
  });
});

// 49 CFR 172.322(d)(1), (2) and (4), (e)(2): none on inner packagings up to 5 L or 5 kg, none on limited quantities.
describe('the mark of a marine pollutant', () => {
  it.each([
    [{ millilitres: 4999, grams: null }, false, 'small'],
    [{ millilitres: 5000, grams: null }, false, 'small'],
    [{ millilitres: 5001, grams: null }, false, 'due'],
    [{ millilitres: null, grams: 5000 }, true, 'small'],
    [{ millilitres: null, grams: 5001 }, true, 'due'],
    [{ millilitres: null, grams: 6000 }, false, 'open'],
  ] as const)('of %j, solid %s: %s', (inner, isSolid, status) => {
    expect(marinePollutantMark(inner, isSolid, false)).toMatchObject({ status, side: 100, border: 2 });
    expect(marinePollutantMark(inner, isSolid, true).status).toBe('limited-quantity');
  });
});
