import { describe, expect, it } from 'vitest';
import { verdictOf } from './_screen.ts';

type Sourced = readonly (readonly [text: string, source: string])[];

const from = (source: string, texts: readonly string[]): Sourced =>
  texts.map(text => [text, source] as const);

// The parts of 16 CFR 323 are not among the stored texts; 323.2 was read in a quotation of the eCFR.
const RULE =
  '16 CFR 323.2 (read in a quotation), 323.1(a): made, manufactured, built, produced, created, crafted (from memory)';
const EXPRESS =
  'FTC, Complying with the Made in USA Standard, examples of express claims (read in an excerpt)';
const POLICY =
  'FTC, Enforcement Policy Statement on U.S. Origin Claims (1997), qualified claims (from memory)';
const POLICY_READ = 'the same, as read in summaries';
const COMPARED =
  'FTC, Enforcement Policy Statement on U.S. Origin Claims (1997), comparative claims (from memory)';
const WHOLE = '16 CFR 323.2: all or virtually all; the whole qualifies nothing';

const unqualified: Sourced = [
  ...from(RULE, [
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
    'Made right here in America',
    'Made in Toledo, USA',
  ]),
  ...from(EXPRESS, ['Our products are American-made.', 'USA.']),
  ...from('FTC, Enforcement Policy Statement (from memory)', ['True American quality!']),
  ...from(WHOLE, ['Made 100% in the USA', '100% American made']),
  ...from('16 CFR 323.1(a), other claims without qualification (from memory)', [
    'American made quality',
    'All-American made',
    'USA made',
    'Product of USA',
    'Products of the United States',
  ]),
];
const qualified: Sourced = [
  ...from(POLICY, [
    'Made in USA of U.S. and imported parts',
    'Made in the USA from imported parts',
    'Made in USA with imported ingredients',
    'Made in the U.S.A. with domestic and imported materials',
    '60% U.S. content',
    'Assembled in USA',
    'Couch assembled in USA from Italian leather and Mexican frame',
    'Hand carved in U.S. - wood from Philippines',
    'Designed in the USA',
    'Painted and fired in USA',
    'Blended and bottled in the USA',
    'Formulated in the United States',
  ]),
  ...from(POLICY_READ, ['Made in USA of imported and U.S. materials', '65 percent U.S. content']),
  ...from(COMPARED, ['More U.S. content than our competitor', 'U.S. content more than any other brand']),
  ...from('15 U.S.C. 45; 19 U.S.C. 1304 (from memory)', ['Made in Germany']),
];
const plain = [
  'A better clean for every shop',
  'Use us on stone',
  'American Standard drains are safe to rinse',
  'Made for painters',
  'Contact us at any time.',
  'Made with care.',
  'Packed in cases of twelve.',
];

describe('claims of origin (16 CFR 323)', () => {
  it('has at least 30 texts', () => {
    expect(unqualified.length + qualified.length).toBeGreaterThanOrEqual(30);
  });
  it.each(unqualified)('all or virtually all: %s (%s)', text => {
    expect(verdictOf(text, 'origin')).toBe('unqualified');
  });
  it.each(qualified)('to be substantiated: %s (%s)', text => {
    expect(verdictOf(text, 'origin')).toBe('substantiate');
  });
  it.each(plain)('no claim: %s', text => {
    expect(verdictOf(text, 'origin')).toBe('none');
  });
});
