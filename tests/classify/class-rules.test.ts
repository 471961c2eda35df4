import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { classRules, ruleFor } from '../../src/classify/class-rules.ts';
import { outsideBasis } from '../../src/classify/outside-basis.ts';
import { effectsOf } from '../../src/document/sheet/hazards.ts';
import { hazardClasses, hazardCode, permittedStatements } from '../../src/notation/classes.ts';
import type { Route, TransientEffect } from '../../src/notation/hazard.ts';
import { listedClass } from '../../src/notation/listed-class.ts';
import { openQuestion } from '../../src/notation/open-question.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';
import { basisIds, loadBasis } from '../../src/reference/basis.ts';
import { en } from '../../src/words/en/index.ts';

const sectionOf = { 'us-hcs': 'us', 'eu-clp': 'clp', 'un-ghs': 'ghs' } as const;
const bases = await Promise.all(
  basisIds.map(async id => {
    const loaded = await loadBasis(id, '2026-11-25');
    if (!loaded.ok) throw new Error(id);
    return loaded.value;
  }),
);

// The classes and categories of the law: hazard-classes.json, compared with CLP Annex VI Table 1.1 and UN GHS Annex 3.
const every = hazardClasses.flatMap(entry =>
  entry.categories.map(({ category }) => ({ entry, category, code: hazardCode(entry.class, category) })),
);

/** A hazard that a record may write, whose answer is a question, not a class. */
function isRefused(code: string): boolean {
  const read = parseHazard(code);
  return read.ok && openQuestion(read.value) !== null && !/^(Acute Tox\.|STOT SE 3)/.test(code);
}

describe('the list of class rules', () => {
  it('judges every category of the notation once', () => {
    for (const { entry, category, code } of every) {
      const rules = classRules.filter(
        ({ listed, categories }) =>
          listed === listedClass(entry.class) && (!categories || categories.includes(category)),
      );
      expect([code, rules.length]).toEqual([code, 1]);
    }
  });

  it('names no class that the notation has not', () => {
    const known = new Set(hazardClasses.map(entry => listedClass(entry.class)));
    expect(classRules.filter(({ listed }) => !known.has(listed))).toEqual([]);
  });

  it('stands in the order of the law', () => {
    const order = [...new Set(hazardClasses.map(entry => listedClass(entry.class)))];
    expect([...new Set(classRules.map(({ listed }) => listed))]).toEqual(order);
  });

  it.each(bases)('has of $id the classes that its text has', basis => {
    for (const { entry, category } of every)
      expect([entry.class, ruleFor(entry.class, category)!.isOf(basis)]).toEqual([
        entry.class,
        entry[sectionOf[basis.id]] !== null,
      ]);
  });
});

describe('every category that the notation accepts', () => {
  // The law names no cut-off for what only a test decides, nor for simple asphyxiants.
  it.each(bases)('has under $id a cut-off, or is outside it by name', basis => {
    const lacking = every.filter(({ entry, category, code }) => {
      const rule = ruleFor(entry.class, category)!;
      if (!rule.isOf(basis) || entry.kind === 'physical' || entry.class === 'Simple Asphyx.') return false;
      return !(rule.cutOff(basis, category) !== null || outsideBasis(basis, code) || isRefused(code));
    });
    expect(lacking.map(({ code }) => code)).toEqual([]);
  });

  // Annex 3 of UN GHS and Appendix C of 29 CFR 1910.1200 print none for these.
  const without = [/^Expl\. 1\.6$/, / G$/, /^Comb\. Dust$/, /^Simple Asphyx\.$/];

  it('has a statement', () => {
    const lacking = every.filter(
      ({ entry, category, code }) =>
        permittedStatements(entry.categories.find(each => each.category === category)!).length === 0 &&
        !isRefused(code) &&
        !without.some(pattern => pattern.test(code)),
    );
    expect(lacking.map(({ code }) => code)).toEqual([]);
  });

  // Categories of an ingredient that count towards another one of the mixture and are never its own: estimates above
  // 2,000 mg/kg (29 CFR 1910.1200 App. A, A.1.3.6.1(a)); CLP Annex I, Table 3.3.2 has one Category 2 for 2A and 2B.
  const counted: Readonly<Record<string, readonly string[]>> = {
    'us-hcs': ['Acute Tox. 5'],
    'eu-clp': ['Eye Irrit. 2B'],
  };

  it.each(bases)('has the text of its statement under $id', ({ id }) => {
    const { hazard, supplemental = {} } = JSON.parse(
      readFileSync(`hazard-data/${id}/statements.json`, 'utf8'),
    );
    const lacking = every
      .filter(({ entry, code }) => entry[sectionOf[id]] !== null && !outsideBasis({ id }, code))
      .flatMap(({ entry, category, code }) => {
        const { statements, byRoute, byEffect } = entry.categories.find(each => each.category === category)!;
        const [first] = [...statements, ...Object.values(byRoute ?? byEffect ?? {})];
        return first && !(first in hazard || first in supplemental || counted[id]?.includes(code))
          ? [`${code} ${first}`]
          : [];
      });
    expect(lacking).toEqual([]);
  });

  it('has words for the sheet on what it does to an exposed person, where it is of health', () => {
    const variants = (name: string, category: string) =>
      name === 'Acute Tox.'
        ? (['oral', 'dermal', 'inhalation'] as const).map(route => ({ route, effect: null }))
        : name === 'STOT SE' && category === '3'
          ? (['respiratory irritation', 'narcotic effects'] as const).map(effect => ({ route: null, effect }))
          : [{ route: null, effect: null }];
    const lacking = every
      .filter(({ entry, code }) => entry.kind === 'health' && entry.us !== null && !isRefused(code))
      .flatMap(({ entry, category, code }) =>
        variants(entry.class, category).flatMap(
          ({ route, effect }: { route: Route | null; effect: TransientEffect | null }) => {
            const hazard = {
              code,
              hazardClass: entry.class,
              category,
              route,
              effect,
              form: null,
              organs: ['liver'],
            };
            const because = { kind: 'test', method: '', source: '', reason: null, cites: [] } as const;
            const given = [{ ...hazard, statements: [], because }];
            const words = (['acute', 'delayed'] as const).flatMap(kind => effectsOf(given, kind, en.sheet));
            return words.length === 0 ? [`${code} ${route ?? effect ?? ''}`] : [];
          },
        ),
      );
    expect(lacking).toEqual([]);
  });
});
