import { describe, expect, it } from 'vitest';
import { hazardClasses } from '../../src/notation/classes.ts';
import type { Hazard } from '../../src/notation/hazard.ts';
import { isLessSpecific, isWorse, milderThan } from '../../src/notation/severity.ts';

const of = (hazardClass: string, category: string) => ({ hazardClass, category });
const hazard = (hazardClass: string, category: string) =>
  ({ hazardClass, category, route: null, effect: null }) as Hazard;

// GHS 1.2, definition of hazard category: categories compare hazard severity within a class, 1 the most severe; letters
// divide a category in that order (3.2.2, Table 3.2.1: 1A before 1B before 1C; 2.8.2.4: types A to G).
describe('severity', () => {
  it.each([
    ['Acute Tox.', ['1', '2', '3', '4', '5']],
    ['Skin Corr.', ['1A', '1B', '1C', '1']],
    ['Carc.', ['1A', '1B', '1', '2']],
    ['Eye Irrit.', ['2A', '2B']],
    ['Flam. Liq.', ['1', '2', '3', '4']],
    ['Org. Perox.', ['A', 'B', 'C', 'CD', 'D', 'E', 'EF', 'F', 'G']],
  ])('of %s falls by %j', (name, categories) => {
    for (const [at, category] of categories.entries())
      for (const [other, milder] of categories.entries())
        expect(isWorse(of(name, category), of(name, milder)), `${category} ${milder}`).toBe(at < other);
  });

  // CLP Annex I, 3.2.2.1 and 3.3.2.1: Category 1 is the irreversible effect, Category 2 the reversible one; 2.1.2.1:
  // unstable explosives are too dangerous for any division.
  it.each([
    [of('Skin Corr.', '1'), of('Skin Irrit.', '2')],
    [of('Skin Corr.', '1C'), of('Skin Irrit.', '3')],
    [of('Eye Dam.', '1'), of('Eye Irrit.', '2A')],
    [of('Unst. Expl.', ''), of('Expl.', '1.1')],
  ])('%j before %j', (worse, milder) => {
    expect([isWorse(worse, milder), isWorse(milder, worse)]).toEqual([true, false]);
  });

  // CLP Annex I, 2.5.2.1: groups by physical state in the package.
  it('does not tell groups of gases under pressure apart', () => {
    expect(isWorse(of('Press. Gas', 'Comp.'), of('Press. Gas', 'Liq.'))).toBe(false);
    expect(milderThan([hazard('Press. Gas', 'Liq.')], [hazard('Press. Gas', 'Comp.')])).toEqual([]);
  });

  it('of a category is not worse than itself', () => {
    for (const { class: name, categories } of hazardClasses)
      for (const { category } of categories) {
        expect(isWorse(of(name, category), of(name, category))).toBe(false);
        expect(milderThan([hazard(name, category)], [hazard(name, category)])).toEqual([]);
      }
  });

  it('is open between a category and its sub-category', () => {
    expect(isLessSpecific(of('Skin Corr.', '1'), of('Skin Corr.', '1B'))).toBe(true);
    expect(isLessSpecific(of('Skin Corr.', '1B'), of('Skin Corr.', '1'))).toBe(false);
    expect(isLessSpecific(of('Skin Corr.', '1'), of('Skin Irrit.', '2'))).toBe(false);
  });
});
