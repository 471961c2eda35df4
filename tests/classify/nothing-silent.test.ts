import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Because } from '../../src/classify/facts/because.ts';
import { findClass, hazardCode } from '../../src/notation/classes.ts';
import { listedClass } from '../../src/notation/listed-class.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';
import { classifyValue, recordAround } from '../support/cases.ts';
import type { Told } from '../support/told.ts';
import { basis, everyHazard, parts } from './random-records.ts';

const sectionOf = { 'us-hcs': 'us', 'eu-clp': 'clp', 'un-ghs': 'ghs' } as const;

/** Whether the facts of a reason name a constituent. */
function names(value: unknown, place: number, key = ''): boolean {
  if (Array.isArray(value))
    return value.some(each =>
      typeof each === 'number'
        ? each === place && ['flammable', 'lacking'].includes(key)
        : names(each, place, key),
    );
  if (typeof value !== 'object' || value === null) return false;
  if ((value as { constituent?: unknown }).constituent === place) return true;
  return Object.entries(value).some(([at, each]) => names(each, place, at));
}

/** The rules of a class with an order of their own. */
const number = (category: string): number => Number.parseInt(category, 10) || 0;

/** Results of the class, route and effect of a hazard, with reason. */
function resultsFor(found: Told, code: string) {
  const read = parseHazard(code);
  if (!read.ok) throw new Error(read.message);
  const { hazardClass, category, route, effect } = read.value;
  const listed = listedClass(hazardClass);
  const transient = hazardClass === 'STOT SE' && category === '3';
  const isOf = (result: { route?: string | null }) => !route || !result.route || result.route === route;
  const others = found.otherClasses.filter(
    result =>
      isOf(result) &&
      (transient
        ? result.class === `STOT SE 3 (${effect})`
        : result.class === listed || result.class.startsWith(`${listed} (`)),
  );
  const given = found.hazards.filter(
    result =>
      isOf(result) &&
      listedClass(result.hazardClass) === listed &&
      (hazardClass !== 'STOT SE' || (result.category === '3') === transient) &&
      (!transient || result.effect === effect),
  );
  return { hazard: read.value, others, given };
}

/** Reasons other than that no ingredient has the class, which would deny the hazard. */
const denies = ({ kind }: Because): boolean => ['none', 'screening', 'nothing-counts'].includes(kind);

/** Null where a hazard of a constituent is used, open, not applicable with a reason or told; else what became of it. */
function lost(found: Told, id: keyof typeof sectionOf, place: number, code: string): string | null {
  const { hazard, others, given } = resultsFor(found, code);
  if (findClass(hazard.hazardClass)![sectionOf[id]] === null && others.length + given.length === 0)
    return null;
  if (
    found.warnings.some(
      warning =>
        warning.id === 'category-not-in-basis' &&
        warning.constituent === place &&
        warning.hazards.includes(hazardCode(hazard.hazardClass, hazard.category)),
    )
  )
    return null;
  const reasons = [...others, ...given].map(({ because }) => because);
  if (reasons.length === 0) return `${code}: no result of its class`;
  // As severe as the ingredient itself, or worse: nothing of it is lost.
  if (given.some(({ category }) => number(category) <= number(hazard.category))) return null;
  if (others.some(({ outcome, because }) => outcome === 'not-applicable' && because.cites.length > 0))
    return null;
  const outcomes = [...others, ...given];
  if (outcomes.some(each => names(each.because, place) || names(each.calculated, place))) return null;
  const open = found.warnings.some(
    warning => warning.id === 'undecided-with-cause' && warning.constituents.includes(place),
  );
  if (open && others.some(({ outcome }) => outcome === 'insufficient-data')) return null;
  // Acute toxicity is summed for gas, vapour and mist, and the worst of them is shown: a sum of its own form has it.
  const { ateMix, constituents } = found;
  if (
    hazard.route === 'inhalation' &&
    (hazard.form ? ateMix[hazard.form] : (ateMix.gas ?? ateMix.vapour ?? ateMix.mist)) !== null
  )
    return null;
  // Below a specific limit of its own, where another ingredient gives the class.
  const { high, data } = constituents[place]!;
  const lows = data.limits.filter(limit => limit.hazardClass === hazard.hazardClass && limit.low);
  if (given.length > 0 && lows.length > 0 && lows.every(({ low }) => high.value < low!.value)) return null;
  // A measured property decides in place of the ingredients, by its paragraph.
  if (outcomes.some(({ because }) => ['ph', 'flash-point', 'test'].includes(because.kind))) return null;
  return `${code}: ${outcomes.map(({ because }) => `${because.kind}${denies(because) ? ' denies it' : ''}`).join(', ')}`;
}

// 29 CFR 1910.1200(d)(1) and (2), CLP Article 5: all available information on each ingredient is identified and used.
// The outside source of each figure is in the tests of its class; here nothing may vanish between record and result.
describe('every hazard of every ingredient', () => {
  it('is used by a rule, not applicable with a reason, or told', async () => {
    const seen = new Set<string>();
    await fc.assert(
      fc.asyncProperty(parts, basis, async (record, id) => {
        const found = await classifyValue(recordAround(record), id);
        found.constituents.forEach(({ data: { hazards } }, place) => {
          for (const hazard of hazards) {
            const { hazardClass, category, route, form, effect } = hazard;
            const bracket = form ? `${route}: ${form}` : (route ?? effect);
            const code = `${hazardCode(hazardClass, category)}${bracket && hazardClass !== 'STOT RE' && !(hazardClass === 'STOT SE' && category !== '3') ? ` (${bracket})` : ''}`;
            seen.add(code);
            expect(lost(found, id, place, code)).toBeNull();
          }
        });
      }),
      { numRuns: 150, seed: 8 },
    );
    // The records reach most of the notation.
    expect(seen.size).toBeGreaterThan(everyHazard.length / 2);
  });
});
