import { describe, expect, it } from 'vitest';
import { netDeclaration } from '../../../src/document/net-declaration.ts';
import { displayPanel } from '../../../src/labelling/consumer/panel-area.ts';
import { Exact } from '../../../src/quantity/exact.ts';
import { panelType } from '../../../src/reference/consumer/label-type.ts';

const INCH = 25.4;
const area = (squareInches: number) => squareInches * INCH * INCH;
const inches = (millimetres: number) => millimetres / INCH;

// 16 CFR 1500.121(c)(2), Table 1, typed here from the table as printed: the end of a range belongs to it.
describe('least heights of capitals on cautions', () => {
  it.each([
    [0.1, 3 / 64, 3 / 64, 1 / 32],
    [2, 3 / 64, 3 / 64, 1 / 32],
    [2.01, 1 / 16, 3 / 64, 3 / 64],
    [5, 1 / 16, 3 / 64, 3 / 64],
    [5.01, 3 / 32, 1 / 16, 1 / 16],
    [10, 3 / 32, 1 / 16, 1 / 16],
    [10.01, 7 / 64, 3 / 32, 1 / 16],
    [15, 7 / 64, 3 / 32, 1 / 16],
    [15.01, 1 / 8, 3 / 32, 5 / 64],
    [30, 1 / 8, 3 / 32, 5 / 64],
    [30.01, 5 / 32, 7 / 64, 3 / 32],
    [900, 5 / 32, 7 / 64, 3 / 32],
  ])('%s square inches', (squareInches, signal, hazard, other) => {
    const type = panelType(area(squareInches));
    expect(inches(type.signal)).toBeCloseTo(signal, 9);
    expect(inches(type.hazard)).toBeCloseTo(hazard, 9);
    expect(inches(type.other)).toBeCloseTo(other, 9);
  });
});

// 16 CFR 500.21(b); 21 CFR 701.13(i)(1) to (4) has the same rows.
describe('least height of the net contents', () => {
  it.each([
    [5, 1 / 16],
    [5.01, 1 / 8],
    [25, 1 / 8],
    [25.01, 3 / 16],
    [100, 3 / 16],
    [100.01, 1 / 4],
    [400, 1 / 4],
    [400.01, 1 / 2],
  ])('%s square inches', (squareInches, height) => {
    expect(inches(panelType(area(squareInches)).declaration)).toBeCloseTo(height, 9);
  });
});

// 16 CFR 1500.121(c)(1)(i) to (iii).
describe('principal display panel', () => {
  const container = { diameter: null, labelPanelHeight: null };

  it('is 40 percent of height times circumference of a cylinder', () => {
    expect(displayPanel({ shape: 'cylinder', diameter: 88, labelPanelHeight: 150 })).toMatchObject({
      panel: { area: 0.4 * 150 * Math.PI * 88, width: 0.4 * Math.PI * 88 },
    });
  });

  it('is one side of a rectangular package', () => {
    const found = displayPanel({ ...container, shape: 'rectangular', width: 80, depth: 40, height: 200 });
    expect(found).toMatchObject({ panel: { area: 16_000 } });
  });

  it('is 40 percent of the whole surface of another shape', () => {
    const found = displayPanel({ ...container, shape: 'other', width: 10, depth: 20, height: 30 });
    expect(found).toMatchObject({ panel: { area: 0.4 * 2200 } });
  });

  it('is not guessed', () => {
    expect(displayPanel({ ...container, shape: 'cylinder', diameter: 80 })).toEqual({
      missing: ['label-panel-height'],
    });
  });
});

// Forms of 21 CFR 701.13(m)(1) to (5): ounces, then the largest whole units; with the metric measure of 15 U.S.C. 1453(a)(2).
describe('declaration of contents', () => {
  it.each([
    ['946', 'mL', '32 FL OZ (1 QT) 946 mL'],
    ['8', 'fl oz', '8 FL OZ (236 mL)'],
    ['1.75', 'qt', '56 FL OZ (1 QT 1 PT 8 FL OZ) 1.65 L'],
    ['16.9', 'fl oz', '16.9 FL OZ (1 PT 0.9 FL OZ) 500 mL'],
    ['1', 'gal', '1 GAL (3.78 L)'],
    ['24', 'oz', 'NET WT 24 OZ (1 LB 8 OZ) 680 g'],
    ['12', 'oz', 'NET WT 12 OZ (340 g)'],
    ['5', 'lb', 'NET WT 5 LB (2.26 kg)'],
  ])('%s %s', (value, unit, text) => {
    const quantity = { value: Exact.decimal(value), unit, written: `${value} ${unit}` };
    expect(netDeclaration(quantity)?.replaceAll('\u00a0', ' ')).toBe(text);
  });
});
