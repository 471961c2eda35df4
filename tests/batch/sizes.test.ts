import { describe, expect, it } from 'vitest';
import { readBatchSize } from '../../src/batch/batch-size.ts';
import { inContainers } from '../../src/batch/containers.ts';
import { batchGrams, shopMeasure } from '../../src/batch/ticket.ts';
import { Exact } from '../../src/quantity/exact.ts';

const gramsOf = (text: string, density: string | null) => {
  const read = readBatchSize(text);
  if (!read.ok) throw new Error(read.message);
  return batchGrams(read.value, density === null ? null : Exact.decimal(density));
};

describe('the size of a batch', () => {
  // Common practice, no source: a 55 US gal drum of a liquid of density 1.09 holds about 500 lb.
  it('of one drum at density 1.09 is about 500 lb', () => {
    const { pounds, gallons } = shopMeasure(gramsOf('1 drum', '1.09')!, Exact.decimal('1.09'));
    expect(pounds).toBeCloseTo(500.3, 1);
    expect(gallons).toBeCloseTo(55, 9);
  });

  // NIST Handbook 44, Appendix C: 1 US gal = 231 cubic inches = 3.785411784 L; 1 lb = 453.59237 g.
  it.each([
    ['250 gal', '1', 250 * 3785.411784],
    ['3 drums', '1', 165 * 3785.411784],
    ['2 1/2 drums', '1', 137.5 * 3785.411784],
    ['1/2 Drum', '1', 27.5 * 3785.411784],
    ['4 pails', '1', 20 * 3785.411784],
    ['1 tote', '1', 275 * 3785.411784],
    ['2000 lb', null, 2000 * 453.59237],
    ['945 kg', null, 945_000],
    ['1/4 kg', null, 250],
  ])('%s at density %s', (text, density, grams) => {
    expect(gramsOf(text, density)!.value).toBeCloseTo(grams, 6);
  });

  it('needs a density for a volume', () => {
    expect(gramsOf('250 gal', null)).toBeNull();
  });

  it.each(['3', 'drums', '-2 drums', '0 drums', '1/0 drum', '3 firkins', '0 kg', '1,5 drums x'])(
    'is not %j',
    text => {
      expect(readBatchSize(text)).toMatchObject({ ok: false, hint: expect.stringContaining('2 1/2 drums') });
    },
  );
});

describe('containers', () => {
  const gallons = (number: number) => inContainers(Exact.decimal(String(number * 3785.411784)));
  it.each([
    [132, { container: 'drum', full: 2, count: 2.4, restGallons: 22 }],
    [13.75, { container: 'drum', full: 0, count: 0.25, restGallons: 13.75 }],
    [12, { container: 'pail', full: 2, count: 2.4, restGallons: 2 }],
    [5, { container: 'pail', full: 1, count: 1, restGallons: 0 }],
  ])('%d gal', (number, { container, full, count, restGallons }) => {
    const found = gallons(number)!;
    expect([found.container, found.full]).toEqual([container, full]);
    expect(found.count).toBeCloseTo(count, 9);
    expect(found.restGallons).toBeCloseTo(restGallons, 6);
  });

  it('take nothing under a pail', () => expect(gallons(4.9)).toBeNull());
});
