import { describe, expect, it } from 'vitest';
import { supplyLetters, supplyLines, supplySizes } from '../../../src/reference/supply/label-sizes.ts';

// CLP Annex I, 1.2.1.4, Table 1.3, typed from quotations of the consolidated text in secondary texts that agree.
describe('Table 1.3 of CLP Annex I', () => {
  it.each([
    // Not exceeding 3 litres: if possible, at least 52 x 74; pictograms not smaller than 10 x 10, if possible 16 x 16.
    [0.01, [52, 74], false, 16, 10],
    [3, [52, 74], false, 16, 10],
    // Greater than 3 litres, but not exceeding 50 litres: at least 74 x 105; at least 23 x 23.
    [3.001, [74, 105], true, 23, 23],
    [50, [74, 105], true, 23, 23],
    // Greater than 50 litres, but not exceeding 500 litres: at least 105 x 148; at least 32 x 32.
    [50.001, [105, 148], true, 32, 32],
    [500, [105, 148], true, 32, 32],
    // Greater than 500 litres: at least 148 x 210; at least 46 x 46.
    [500.001, [148, 210], true, 46, 46],
    [20_000, [148, 210], true, 46, 46],
  ] as const)('%s L', (litres, sides, asked, wanted, least) => {
    const row = supplySizes(litres, '2026-11-25');
    expect(row.label).toEqual({ sides, asked });
    expect(row.pictogram).toEqual({ wanted, least });
    expect(row.cite).toContain('Table 1.3');
  });

  // CLP Annex I, 1.2.1.3: at least one fifteenth of the least surface of the label and 1 cm2. The table rounds to
  // whole millimetres: 16 x 16 and 32 x 32 are less by 0.2 % and 1.2 %.
  it.each([3, 50, 500, 5000])('agrees with one fifteenth of the least surface at %s L', litres => {
    const { label, pictogram } = supplySizes(litres, '2026-11-25');
    const share = (15 * pictogram.wanted ** 2) / (label.sides[0] * label.sides[1]);
    expect(share).toBeGreaterThan(0.985);
    expect(share).toBeLessThan(1.05);
    expect(pictogram.least ** 2).toBeGreaterThanOrEqual(100);
  });
});

// Regulation (EU) 2024/2865, from secondary texts; the day from announcements of Council and Parliament on
// Regulation (EU) 2025/2439.
describe('heights of the lower-case x', () => {
  it.each([
    [0.1, 1.2],
    [0.5, 1.2],
    [0.501, 1.4],
    [3, 1.4],
    [3.001, 1.8],
    [50, 1.8],
    [50.001, 2],
    [1000, 2],
  ])('%s L: %s mm', (litres, xHeight) => {
    expect(supplyLetters(litres, '2028-01-01').now).toMatchObject({ xHeight, from: '2028-01-01' });
  });

  it('apply from 1 January 2028 on, and not the day before', () => {
    expect(supplyLetters(1, '2027-12-31')).toMatchObject({ now: null, next: { from: '2028-01-01' } });
    expect(supplyLetters(1, '2028-01-01').next).toBeNull();
  });

  it('go with lines at 120 % of the size', () => {
    expect(supplyLines.spacing).toBe(1.2);
  });
});
