import { describe, expect, it } from 'vitest';
import { type VocProduct, volatileContent } from '../../src/duties/voc.ts';
import { Exact } from '../../src/quantity/exact.ts';
import { vocData } from '../../src/reference/duties/voc-data.ts';

type Parts = readonly (readonly [
  cas: string | null,
  percent: string,
  stated?: 'voc' | 'low' | 'fragrance',
])[];

const product = (parts: Parts, more: Partial<VocProduct> = {}): VocProduct => ({
  constituents: parts.map(([cas, , stated]) => ({
    name: cas ?? 'unknown',
    cas,
    water: cas === '7732-18-5',
    stated: stated ?? null,
  })),
  most: () => parts.map(([, percent]) => Exact.decimal(percent)),
  category: 'general-purpose-cleaner',
  aerosol: false,
  consumer: true,
  dilutions: [],
  ...more,
});

const found = (parts: Parts, more: Partial<VocProduct> = {}) =>
  volatileContent(product(parts, more), vocData);
const [ethanol, acetone, water] = ['64-17-5', '67-64-1', '7732-18-5'];

// 40 CFR 59.203: levels of table 1 "are not exceeded"; the limits themselves as the data file says, from memory.
describe('volatile organic content', () => {
  it.each([
    ['general-purpose-cleaner', '9.99', 'within'],
    ['general-purpose-cleaner', '10', 'within'],
    ['general-purpose-cleaner', '10.01', 'above'],
    ['glass-cleaner', '8', 'within'],
    ['glass-cleaner', '8.01', 'above'],
    ['engine-degreaser', '75', 'within'],
    ['engine-degreaser', '75.1', 'above'],
    ['bathroom-and-tile-cleaner', '5', 'within'],
    ['bathroom-and-tile-cleaner', '5.1', 'above'],
  ])('of a %s with %s %% ethanol is %s', (category, percent, outcome) => {
    expect(
      found(
        [
          [ethanol, percent],
          [water, '0'],
        ],
        { category },
      )!.outcome,
    ).toBe(outcome);
  });

  // Decimal arithmetic: 9.9 + 0.1 is 10, not above it.
  it('adds in decimals', () => {
    expect(
      found([
        [ethanol, '9.9'],
        ['67-63-0', '0.1'],
      ])!.outcome,
    ).toBe('within');
  });

  it('leaves out exempt compounds, 40 CFR 51.100(s)(1)', () => {
    expect(
      found([
        [acetone, '50'],
        [ethanol, '2'],
      ]),
    ).toMatchObject({
      outcome: 'within',
      sure: 2,
      exempt: [{ name: acetone, percent: 50 }],
    });
  });

  it('leaves out low vapor pressure, 59.203(f)', () => {
    expect(found([['57-55-6', '40']])).toMatchObject({ outcome: 'within', sure: 0, atMost: 0 });
  });

  it.each([
    ['2', 10],
    ['3', 11],
  ])('counts fragrance of %s %% beyond 2 %%, 59.203(e)', (percent, sure) => {
    expect(
      found([
        [ethanol, '10'],
        ['5989-27-5', percent, 'fragrance'],
      ])!.sure,
    ).toBeCloseTo(sure, 9);
  });

  it('is open where an unknown constituent decides, and not where it does not', () => {
    expect(
      found([
        [ethanol, '9'],
        [null, '2'],
      ]),
    ).toMatchObject({ outcome: 'open', sure: 9, atMost: 11 });
    expect(
      found([
        [ethanol, '9'],
        [null, '1'],
      ])!.outcome,
    ).toBe('within');
    expect(
      found([
        [ethanol, '9'],
        [null, '2', 'low'],
      ])!.outcome,
    ).toBe('within');
    expect(
      found([
        [ethanol, '11'],
        [null, '2'],
      ])!.outcome,
    ).toBe('above');
  });

  it('is that of the least dilution, 59.203(b)', () => {
    const third = { written: '1:2', share: Exact.fraction(Exact.decimal('1').exact.div(3)) };
    const tenth = { written: '1:9', share: Exact.decimal('0.1') };
    expect(found([[ethanol, '30']], { dilutions: [tenth, third] })).toMatchObject({
      outcome: 'within',
      diluted: { written: '1:2' },
    });
    expect(found([[ethanol, '30.01']], { dilutions: [tenth, third] })!.outcome).toBe('above');
  });

  it('asks for the category, and takes none for an answer', () => {
    expect(found([[ethanol, '30']], { category: null })!.outcome).toBe('no-category');
    expect(found([[ethanol, '30']], { category: 'none' })!.outcome).toBe('no-limit');
  });

  it('is not limited where no consumer buys', () => {
    expect(found([[ethanol, '30']], { consumer: false })).toBeNull();
  });

  it('knows each substance one way', () => {
    expect(vocData.kind(ethanol!)).toBe('voc');
    expect(vocData.kind('1310-73-2')).toBe('none');
    expect(vocData.kind('64742-47-8')).toBeNull();
  });
});
