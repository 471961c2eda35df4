import { describe, expect, it } from 'vitest';
import { verdictOf } from './_screen.ts';

// Each text is of an example of 16 CFR 260, read word for word, or its subject with the words of the paragraph. The
// Guides call a claim deceptive, or not where it is qualified and there is evidence.
const texts: readonly (readonly [text: string, verdict: string, source: string])[] = [
  ['Eco-friendly', 'unqualified', '260.4, Example 1'],
  ['Eco-friendly: made with recycled materials', 'substantiate', '260.4, Example 1'],
  ['Greener than our previous packaging.', 'unqualified', '260.4, Example 2'],
  [
    "Greener than our previous packaging. We've reduced the weight of our packaging by 15%.",
    'substantiate',
    '260.4, Example 2',
  ],
  ['Eco-smart gas-powered lawn mower with improved fuel efficiency!', 'unqualified', '260.4, Example 4'],
  [
    'Environmentally-friendly improvement. 25% less plastic than our previous packaging.',
    'substantiate',
    '260.4, Example 5',
  ],
  ['Neutralize the carbon emissions from your flight', 'substantiate', '260.5, Example 1'],
  ['GreenLogo for Environmental Excellence', 'unqualified', '260.6, Example 1'],
  ['Certified Non-Toxic', 'unqualified', '260.6, Example 4'],
  ['EarthSmart', 'unqualified', '260.6, Example 6'],
  [
    'EarthSmart certifies that this product meets EarthSmart standards: reduced chemical emissions during usage.',
    'substantiate',
    '260.6, Example 6',
  ],
  ['Environment Approved', 'unqualified', '260.6, Example 7'],
  ['Compostable', 'unqualified', '260.7, Examples 3 and 4'],
  [
    'Compostable in California Municipal Yard Trimmings Composting Facilities',
    'unqualified',
    '260.7, Example 2',
  ],
  [
    'This bottle can be composted only in one of the 50 communities that have facilities.',
    'substantiate',
    '260.7, Example 5',
  ],
  ['Degradable', 'substantiate', '260.8, Example 1 and (b)'],
  ['Biodegradable', 'substantiate', '260.8, Example 3 (a shampoo that goes down the drain)'],
  [
    'Photodegradable: will break down into small pieces if left uncovered in sunlight',
    'substantiate',
    '260.8, Example 2',
  ],
  ['Oxo-biodegradable', 'substantiate', '260.8(a)'],
  ['Made with a chlorine-free bleaching process', 'substantiate', '260.9, Example 1'],
  ['Formaldehyde free', 'substantiate', '260.9, Example 2'],
  ['Free of phosphates', 'substantiate', '260.9(a)'],
  ['Contains no ammonia', 'substantiate', '260.9(a)'],
  ['Essentially non-toxic', 'unqualified', '260.10, Example'],
  ['Practically non-toxic', 'unqualified', '260.10, Example'],
  ['Ozone-friendly', 'substantiate', '260.11 (heading)'],
  ['Recyclable', 'unqualified', '260.12, Example 1'],
  ['Recyclable where facilities exist', 'unqualified', '260.12, Example 4'],
  [
    'Recyclable in the few communities with facilities for foam polystyrene cups.',
    'substantiate',
    '260.12, Example 5',
  ],
  ['Please Recycle', 'unqualified', '260.12, Example 10'],
  ['Package made from 30% recycled material', 'substantiate', '260.13, Example 6'],
  ['Recycled', 'unqualified', '260.13, Example 10'],
  ['65% recycled', 'substantiate', '260.13, Example 9'],
  ['Less waste', 'unqualified', '260.17, Example'],
  ['10% less waste than our previous product', 'substantiate', '260.17, Example'],
];

// Statements of use and performance that speak of no environmental benefit (no agency source: plain cleaning words).
const plain = [
  'Streak-free shine',
  'Leaves no residue',
  'Cuts grease',
  'Rinse well with water',
  'Does not scratch',
  'Green in color, fresh scent',
];

describe('environmental claims (16 CFR 260)', () => {
  it('has at least 30 texts of the Guides', () => {
    expect(texts.length).toBeGreaterThanOrEqual(30);
  });
  it.each(texts)('%s: %s (%s)', (text, verdict) => {
    expect(verdictOf(text, 'environment')).toBe(verdict);
  });
  it.each(plain)('no claim: %s', text => {
    expect(verdictOf(text, 'environment')).toBe('none');
  });
});
