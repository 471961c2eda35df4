import { describe, expect, it } from 'vitest';
import { labelPlaces } from '../../src/logistics/label-places.ts';

// 49 CFR 172.407(c)(1): sides of 100 mm, so a square on a point is 100 × √2 = 141.42 mm across (arithmetic).
describe('size of hazard labels', () => {
  it('is 100 mm a side, number of the class 6.3 to 12.7 mm (172.407(c)(1), (3))', () => {
    expect(labelPlaces(null, 1)).toMatchObject({ side: 100, together: 150, room: 'size-unknown', sides: 1 });
    expect(labelPlaces(null, 1).across).toBeCloseTo(141.42, 2);
    expect(labelPlaces(null, 1).number).toMatchObject({ least: 6.3, most: 12.7 });
  });

  it.each([
    [{ length: 300, width: 200, height: 141.5 }, 1, 'one-side'],
    [{ length: 141.5, width: 141.5, height: 50 }, 1, 'one-side'],
    [{ length: 141.4, width: 141.4, height: 141.4 }, 1, 'smaller'],
    [{ length: 283, width: 200, height: 150 }, 2, 'one-side'],
    [{ length: 282, width: 200, height: 150 }, 2, 'more-sides'],
    [{ length: 300, width: 140, height: 140 }, 1, 'smaller'],
  ] as const)('on %j with %d: %s', (size, labels, room) => {
    expect(labelPlaces(size, labels).room).toBe(room);
  });

  // 172.406(e)(1): two sides from 1.8 m3.
  it.each([
    [1199, 1],
    [1200, 2],
    [1201, 2],
  ])('on a case of 1000 x 1500 x %d mm: %d sides', (height, sides) => {
    expect(labelPlaces({ length: 1500, width: 1000, height }, 1).sides).toBe(sides);
  });
});
