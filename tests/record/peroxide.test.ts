import { describe, expect, it } from 'vitest';
import { expandFormula } from '../../src/formula/expand.ts';
import { changed, load, told } from './_example.ts';

const line = 'percent: 1.5';
const withPeroxide = (text: string) => load(changed([line, `${line}\n    peroxide: ${text}`]));

describe('peroxide', () => {
  it('gives groups and molar mass, in any of its units', () => {
    for (const mass of ['194.2 g/mol', '0.1942 kg/mol']) {
      const loaded = withPeroxide(`{groups: 2, molar-mass: ${mass}}`);
      if (!loaded.ok) throw new Error(told(loaded).join('\n'));
      const given = loaded.value.formula.flatMap(each =>
        each.kind === 'substance' && each.given.peroxide ? [each.given.peroxide] : [],
      );
      expect(given.map(({ groups, molarMass }) => [groups, molarMass.exact.toFraction()])).toEqual([
        [2, '971/5'],
      ]);
    }
  });

  it.each([
    ['{groups: 0, molar-mass: 194.2 g/mol}', /not a number of peroxygen groups -> write how many -O-O-/],
    ['{groups: 1.5, molar-mass: 194.2 g/mol}', /not a number of peroxygen groups/],
    ['{groups: 1, molar-mass: 194.2}', /no unit -> write for example `194.2 g\/mol`/],
    ['{groups: 1, molar-mass: 0 g/mol}', /not a molar mass -> give a molar mass above 0/],
    ['{groups: 1, molar-mass: 194.2 g/mL}', /unit `g\/mL`.* -> use one of g\/mol/],
    ['{groups: 1}', /molar-mass/],
  ])('%s is a slip', (text, finding) => {
    expect(told(withPeroxide(text))).toEqual([expect.stringMatching(finding)]);
  });

  it('is the same in every line of a constituent', () => {
    const twice = (first: string, second: string) => {
      const formula = [first, second].map(
        peroxide => `  - {name: perester, cas: 614-45-9, percent: 2, peroxide: ${peroxide}}`,
      );
      const loaded = load(changed(['formula:', `formula:\n${formula.join('\n')}`]));
      if (!loaded.ok) throw new Error(told(loaded).join('\n'));
      return expandFormula(loaded.value).diagnostics.map(({ code }) => code);
    };
    const data = '{groups: 1, molar-mass: 194.2 g/mol}';
    expect(twice(data, data)).not.toContain('contradicting-lines');
    expect(twice(data, '{groups: 2, molar-mass: 194.2 g/mol}')).toContain('contradicting-lines');
    expect(twice(data, '{groups: 1, molar-mass: 194.3 g/mol}')).toContain('contradicting-lines');
  });
});
