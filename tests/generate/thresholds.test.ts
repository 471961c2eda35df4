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

  const [inForce] = Object.keys(contentOf(id).texts) as [string];
  // biome-ignore lint/suspicious/noExplicitAny: the content of a file, to be made wrong
  type Content = any;
  const at = (figure: Content) => figure[inForce];
  const faults: [string, (content: Content) => unknown, string][] = [
    [
      'a misspelt key',
      ({ figures }) => (at(figures.skin.corrosive).value.percnt = 5),
      `figures.skin.corrosive.${inForce}.value: `,
    ],
    ['a section too many', ({ figures }) => (figures.skins = figures.skin), 'figures: '],
    ['a section that is missing', ({ figures }) => delete figures.eye, 'figures.eye: '],
    [
      'a figure as text',
      ({ figures }) => (at(figures.skin.corrosive).value.percent = '5'),
      `figures.skin.corrosive.${inForce}.value.percent: `,
    ],
    [
      'a percent above 100',
      ({ figures }) => (at(figures.eye.damage).value.percent = 300),
      `figures.eye.damage.${inForce}.value.percent: `,
    ],
    [
      'a figure without its paragraph',
      ({ figures }) => delete at(figures.eye.damage).cite,
      `figures.eye.damage.${inForce}.cite: `,
    ],
    [
      'a figure without a source',
      ({ figures }) => delete at(figures.eye.damage).source,
      `figures.eye.damage.${inForce}.source: `,
    ],
    [
      'a figure that nobody checked',
      ({ figures }) => delete at(figures.eye.damage).checked,
      `figures.eye.damage.${inForce}.checked: `,
    ],
    [
      'a class of another name',
      ({ figures: { byIngredient } }) => (byIngredient['Skin. Sens.'] = byIngredient['Skin Sens.']),
      'figures.byIngredient.Skin. Sens.: ',
    ],
    ['a date of another form', ({ texts }) => (texts['1 May 2026'] = texts[inForce]), 'texts.1 May 2026: '],
    [
      'a figure of a date without a text',
      ({ figures: { eye } }) => (eye.damage['2030-01-01'] = at(eye.damage)),
      'figures.eye.damage.2030-01-01: no text held',
    ],
    ['a figure without a date', ({ figures: { eye } }) => (eye.damage = {}), 'figures.eye.damage: no date'],
  ];

  it.each(faults)('are refused with %s', (_, spoil, place) => {
    const content = contentOf(id);
    spoil(content);
    expect(() => readThresholds(content)).toThrow(`thresholds ${place}`);
  });
});
