import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Exact } from '../../src/quantity/exact.ts';
import { inUnit, readMeasure } from '../../src/quantity/measure.ts';
import { type UnitKind, unitSymbols } from '../../src/quantity/units.ts';

const base = (text: string, kind: UnitKind): number => {
  const read = readMeasure(text, kind);
  if (!read.ok) throw new Error(read.message);
  return read.value.base.value;
};

describe('readMeasure', () => {
  // NIST SP 811 (2008), Appendix B.8, as printed there to seven figures.
  it.each([
    ['1 lb', 'mass', 453.5924],
    ['1 oz', 'mass', 28.34952],
    ['1 gal', 'volume', 3785.412],
    ['1 qt', 'volume', 946.3529],
    ['1 pt', 'volume', 473.1765],
    ['1 fl oz', 'volume', 29.57353],
    ['1 in', 'length', 25.4],
    ['1 ft', 'length', 304.8],
    ['1 lb/gal', 'density', 0.1198264],
    ['1 psi', 'pressure', 6894.757],
    ['1 mmHg', 'pressure', 133.3224],
    ['1 atm', 'pressure', 101325],
    ['1 cSt', 'viscosity', 1],
    ['0.2 kg/mol', 'molarMass', 200],
  ] as const)('%s agrees with NIST SP 811 B.8', (text, kind, printed) => {
    expect(Number(base(text, kind).toPrecision(7))).toBe(printed);
  });

  // 16 CFR 500.19(a), factors to six figures.
  it.each([
    ['1 fl oz', 'volume', 29.5735],
    ['1 gal', 'volume', 3785.41],
    ['1 oz', 'mass', 28.3495],
    ['1 lb', 'mass', 453.592],
  ] as const)('%s agrees with 16 CFR 500.19', (text, kind, printed) => {
    expect(Number(base(text, kind).toPrecision(6))).toBe(printed);
  });

  // Fixed points of the scales: water freezes at 32 F, boils at 212 F; both scales meet at -40.
  it.each([
    ['32 F', 0],
    ['212 F', 100],
    ['-40 F', -40],
    ['115 F', 46.11],
    ['273.15 K', 0],
    ['46 °C', 46],
    ['46C', 46],
  ])('%s is %f C', (text, celsius) => {
    expect(base(text, 'temperature')).toBeCloseTo(celsius, 2);
  });

  it('reads the units of the trade however they are spelled', () => {
    for (const text of ['2 L', '2 l', '2 liters', '2000 mL', '2000 ml', '2000 cc'])
      expect(base(text, 'volume')).toBe(2000);
    for (const text of ['12 fl oz', '12 FL OZ', '12 fl. oz.', '12 fluid ounces'])
      expect(base(text, 'volume')).toBeCloseTo(354.882, 3);
    for (const text of ['1.09 g/mL', '1.09 g/cm³', '1.09 kg/L', '1090 kg/m3', '1090 kg/m^3'])
      expect(base(text, 'density')).toBe(1.09);
    expect(base('1.1 mm²/s', 'viscosity')).toBe(1.1);
  });

  it('tells MPa from mPa', () => {
    expect(base('1 MPa', 'pressure')).toBe(1e6);
    expect(readMeasure('1 mPa', 'pressure').ok).toBe(false);
  });

  it('says which unit is missing, unknown or written with a comma', () => {
    expect(readMeasure('40', 'mass')).toMatchObject({
      message: '`40` has no unit',
      hint: 'write for example `40 kg`',
    });
    expect(readMeasure('40 stone', 'mass')).toMatchObject({
      ok: false,
      hint: 'use one of kg, g, mg, lb, oz',
    });
    expect(readMeasure('1,09 g/mL', 'density')).toMatchObject({ hint: 'write `1.09 g/mL`' });
    expect(readMeasure('kg', 'mass').ok).toBe(false);
  });

  it('comes back to the number written, exactly, through every unit', () => {
    const kinds: UnitKind[] = [
      'mass',
      'volume',
      'length',
      'density',
      'temperature',
      'pressure',
      'viscosity',
      'molarMass',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.nat(),
        fc.integer({ min: -100_000, max: 100_000 }),
        (kind, pick, thousandths) => {
          const symbols = unitSymbols(kind);
          const symbol = symbols[pick % symbols.length]!;
          const read = readMeasure(`${thousandths / 1000} ${symbol}`, kind);
          if (!read.ok) throw new Error(read.message);
          const back = inUnit(read.value.base, kind, symbol);
          expect(back.exact.equals(Exact.decimal(thousandths / 1000).exact)).toBe(true);
        },
      ),
    );
  });

  // Common practice: a 55 US gallon drum of a liquid of density 1.09 holds about 500 lb.
  it('finds 500 lb in a 55 gallon drum of density 1.09', () => {
    const volume = readMeasure('55 gal', 'volume');
    const density = readMeasure('1.09 g/mL', 'density');
    if (!volume.ok || !density.ok) throw new Error('unread');
    const grams = Exact.fraction(volume.value.base.exact.mul(density.value.base.exact));
    expect(inUnit(grams, 'mass', 'lb').value).toBeCloseTo(500, -1);
    expect(Math.abs(inUnit(grams, 'mass', 'lb').value - 500)).toBeLessThan(1);
  });
});
