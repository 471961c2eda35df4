import { describe, expect, it } from 'vitest';
import { verdictOf } from './_screen.ts';

// 16 CFR 323.2 (read): no product is labelled as made in the United States unless all or virtually all ingredients
// are made and sourced there. FTC, Enforcement Policy Statement on U.S. Origin Claims (1997) and "Complying with the
// Made in USA Standard": "American-made", "65 percent U.S. content", "made of imported and U.S. materials" read in
// summaries; the other examples from memory of the same two papers.
const unqualified = [
  'Made in USA',
  'Made in the USA.',
  'Made in the U.S.A.',
  'Made in the United States',
  'Made in the United States of America',
  'Made in America',
  'Proudly made in America',
  'Manufactured in the USA',
  'Built in America',
  'Produced in the United States',
  'Created in the USA',
  'Crafted in the U.S.',
  'American-made',
  'American made quality',
  'All-American made',
  'USA made',
  'Product of USA',
  'Products of the United States',
  'True American quality!',
];
const qualified = [
  'Made in USA of U.S. and imported parts',
  'Made in the USA from imported parts',
  'Made in USA with imported ingredients',
  'Made in the U.S.A. with domestic and imported materials',
  'Made in USA of imported and U.S. materials',
  '65 percent U.S. content',
  '60% U.S. content',
  'Assembled in USA',
  'Couch assembled in USA from Italian leather and Mexican frame',
  'Hand carved in U.S. - wood from Philippines',
  'Designed in the USA',
  'Blended and bottled in the USA',
  'Formulated in the United States',
  'Made in Germany',
];
const plain = [
  'A better clean for every shop',
  'Use us on stone',
  'American Standard drains are safe to rinse',
  'Made for painters',
];

describe('claims of origin (16 CFR 323)', () => {
  it('has at least 30 texts', () => {
    expect(unqualified.length + qualified.length).toBeGreaterThanOrEqual(30);
  });
  it.each(unqualified)('all or virtually all: %s', text => {
    expect(verdictOf(text, 'origin')).toBe('unqualified');
  });
  it.each(qualified)('to be substantiated: %s', text => {
    expect(verdictOf(text, 'origin')).toBe('substantiate');
  });
  it.each(plain)('no claim: %s', text => {
    expect(verdictOf(text, 'origin')).toBe('none');
  });
});
