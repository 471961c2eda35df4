import { describe, expect, it } from 'vitest';
import { caseMass } from '../../src/logistics/case-mass.ts';
import { gtinHierarchy } from '../../src/logistics/hierarchy.ts';
import { acrossCorners, limitedQuantityMark } from '../../src/logistics/package-marks.ts';
import { Exact } from '../../src/quantity/exact.ts';

const of = (number: string) => Exact.decimal(number);
const contents = (written: string) => ({ contents: { value: of('1'), unit: '', written } });

describe('mass of a case', () => {
  it('is contents, empty packs and empty case', () => {
    // 20 x 946 mL x 1.09 g/mL = 20.6228 kg; 20 x 62 g = 1.24 kg; 0.9 kg (arithmetic).
    const mass = caseMass(contents('946 mL'), 20, of('1.09'), of('0.062'), of('0.9'));
    expect(mass.net).toBe(20.6228);
    expect(mass.gross).toBe(22.7628);
    expect(mass.missing).toEqual([]);
  });

  it('takes contents by mass as they are', () => {
    expect(caseMass(contents('1 lb'), 2, null, of('0'), of('0')).gross).toBeCloseTo(0.90718474, 12);
  });

  it('is open while a part is not known', () => {
    const mass = caseMass(contents('946 mL'), 20, of('1.09'), null, null);
    expect(mass).toMatchObject({ gross: null, missing: ['empty-pack', 'case-tare'], atLeast: 20.6228 });
    expect(caseMass(contents('1 L'), 2, null, null, null).missing).toContain('density');
  });
});

describe('numbers of pack and case', () => {
  // The GTIN-14 of a grouping repeats the digits of the item (GS1 General Specifications, allocation of GTIN-14:
  // 614141000418 and 10614141000415 are numbers of GS1's example company).
  const ids = (unit: string | null, grouping: string | null, count = 20) =>
    gtinHierarchy(unit, grouping, count).map(({ id }) => id);

  it('fit', () => {
    expect(ids('0614141000418', '10614141000415')).toEqual([]);
    expect(ids('614141000418', '10614141000415')).toEqual([]);
  });

  it('do not fit', () => {
    expect(ids('0614141000418', '10614141000422')).toEqual(['other-item']);
    expect(gtinHierarchy('0614141000418', '10614141000422', 20)).toMatchObject([{ right: '10614141000415' }]);
    expect(ids('0614141000418', '00614141000418')).toEqual(['same-number']);
    expect(ids('0614141000418', '90614141000411')).toEqual(['variable-measure']);
  });

  it('leave something open', () => {
    expect(ids('0614141000418', '0614141000425')).toEqual(['own-number']);
    expect(ids(null, null)).toEqual(['unit-missing', 'case-missing']);
    expect(ids('0614141000418', '10614141000415', 1)).toEqual(['case-of-one']);
  });
});

describe('mark of a limited quantity', () => {
  // 49 CFR 172.315(a)(2): sides of 100 mm, border of 2 mm; reduced to 50 mm and 1 mm where the size requires it.
  it('is 100 mm where the case takes it or nothing is known of it', () => {
    expect(limitedQuantityMark(null)).toMatchObject({ side: 100, border: 2 });
    const height = acrossCorners(100);
    expect(limitedQuantityMark({ length: 400, width: 300, height })).toMatchObject({ side: 100, border: 2 });
    // The narrow end does not take it, the long side does.
    expect(limitedQuantityMark({ length: 400, width: 90, height: 200 })).toMatchObject({ side: 100 });
  });

  it('is smaller on a low case, never under 50 mm', () => {
    expect(limitedQuantityMark({ length: 400, width: 300, height: 120 })).toMatchObject({
      side: 84,
      // In proportion to 2 mm at 100 mm.
      border: 1.68,
      because: 'no-side-takes-it',
    });
    expect(limitedQuantityMark({ length: 400, width: 300, height: 70.72 })).toMatchObject({
      side: 50,
      border: 1,
    });
    expect(limitedQuantityMark({ length: 400, width: 300, height: 70.7 })).toBeNull();
  });
});
