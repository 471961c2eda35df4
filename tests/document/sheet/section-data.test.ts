import { describe, expect, it } from 'vitest';
import data from '../../../hazard-data/us-hcs/sheet/sections.json' with { type: 'json' };
import places from '../../../hazard-data/us-hcs/sheet/statement-places.json' with { type: 'json' };
import statements from '../../../hazard-data/us-hcs/statements.json' with { type: 'json' };

const words = (text: string): string[] => text.toLowerCase().match(/[a-z]+/gu) ?? [];

describe('the data of the sections', () => {
  // Words that join parts of a subheading which the table prints apart, or that divide one of its items.
  const OWN = new Set([
    'and',
    'the',
    'contact',
    'hand',
    'face',
    'body',
    'respiratory',
    'protection',
    'toxicological',
    'health',
    'effects',
    'data',
    'used',
    'method',
    'listed',
    'carcinogens',
    'ntp',
    'iarc',
    'osha',
    'acgih',
    'preparation',
    'or',
    'revision',
    'last',
    'of',
    'with',
    'date',
    'skin',
    'eye',
  ]);

  it('sets every subheading in words of Table D.1', () => {
    for (const { subheadings } of data.sections) {
      for (const { heading, printed } of subheadings) {
        if (printed === '') continue;
        const known = new Set(words(printed));
        for (const word of words(heading))
          expect(known.has(word) || OWN.has(word), `${heading}: ${word}`).toBe(true);
      }
    }
  });

  it('has a key of its own for every subheading', () => {
    for (const { number, subheadings } of data.sections) {
      const keys = subheadings.map(({ key }) => key);
      expect(new Set(keys).size, `section ${number}`).toBe(keys.length);
    }
  });
});

describe('the places of precautionary statements', () => {
  it('knows every statement of 29 CFR 1910.1200 App. C once', () => {
    const placed = new Set(Object.values(places.places).flat());
    for (const code of Object.keys(statements.precautionary)) {
      const parts = code.replace(/[[\]]/gu, '').split('+').filter(Boolean);
      expect(placed.has(code) || parts.some(part => placed.has(part)), code).toBe(true);
    }
    expect(Object.values(places.places).flat()).toHaveLength(placed.size);
  });
});
