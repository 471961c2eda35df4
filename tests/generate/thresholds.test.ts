import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readThresholds } from '../../src/generate/thresholds-schema.ts';
import { basisIds } from '../../src/reference/basis.ts';

// The shape is our own; there is nothing outside to compare it with. The figures are checked against the law elsewhere.
const contentOf = (id: string) => JSON.parse(readFileSync(`hazard-data/${id}/thresholds.json`, 'utf8'));

describe.each(basisIds)('figures of %s', id => {
  it('have the shape that the rules read', () => {
    expect(readThresholds(contentOf(id)).id).toBe(id);
  });

  // biome-ignore lint/suspicious/noExplicitAny: the content of a file, to be made wrong
  const faults: [string, (version: any) => unknown, string][] = [
    ['a misspelt key', v => (v.skin.corrosive.percnt = 5), 'versions.0.skin.corrosive: '],
    ['a section too many', v => (v.skins = v.skin), 'versions.0: '],
    ['a section that is missing', v => delete v.eye, 'versions.0.eye: '],
    ['a figure as text', v => (v.skin.corrosive.percent = '5'), 'versions.0.skin.corrosive.percent: '],
    ['a percent above 100', v => (v.eye.damage.percent = 300), 'versions.0.eye.damage.percent: '],
    ['a figure without its paragraph', v => delete v.eye.damage.cite, 'versions.0.eye.damage.cite: '],
    ['a figure without a source', v => delete v.eye.damage.source, 'versions.0.eye.damage: no source'],
    [
      'a class of another name',
      v => (v.byIngredient['Skin. Sens.'] = v.byIngredient['Skin Sens.']),
      'versions.0.byIngredient.Skin. Sens.: ',
    ],
    ['a date of another form', v => (v.inForce = '1 May 2026'), 'versions.0.inForce: '],
  ];

  it.each(faults)('are refused with %s', (_, spoil, place) => {
    const content = contentOf(id);
    spoil(content.versions[0]);
    expect(() => readThresholds(content)).toThrow(`thresholds ${place}`);
  });
});
