import { isWorse } from '../notation/severity.ts';
import type { ClassifiedHazard } from './classification.ts';
import type { ClassResult } from './context.ts';
import type { Because } from './facts/because.ts';
import { figureOf } from './facts/figure.ts';

const outcomeRank = {
  classified: 3,
  'insufficient-data': 2,
  'not-classified': 1,
  'not-applicable': 0,
} as const;

/** Whether one result is more severe than another of the same class. */
export function isMoreSevere(a: ClassResult, b: ClassResult): boolean {
  if (a.outcome !== b.outcome) return outcomeRank[a.outcome] > outcomeRank[b.outcome];
  if (a.outcome !== 'classified' || b.outcome !== 'classified') return false;
  return isWorse(a.hazard, b.hazard);
}

const bare = (statement: string): string => statement.slice(0, 4);

/**
 * One H-code for two of the same number: without letters where either is (H350 covers H350i), else the effects of both,
 * capitals before small letters (CLP Annex VI 1.1.2.1.2).
 */
function joinStatements(a: string, b: string): string {
  if (a === b || bare(a) !== bare(b)) return a;
  if (a === bare(a) || b === bare(b)) return bare(a);
  const letters = a.slice(4) + b.slice(4);
  const [f, d] = ['F', 'D'].map(letter =>
    letters.includes(letter) ? letter : letters.includes(letter.toLowerCase()) ? letter.toLowerCase() : '',
  );
  return bare(a) + (f === 'f' && d === 'D' ? 'Df' : `${f}${d}`);
}

const union = (a: readonly string[], b: readonly string[]): string[] => [...new Set([...a, ...b])];

// An organ that is not known stands beside those that are: the statement then names none.
const joinOrgans = (hazardClass: string, a: readonly string[], b: readonly string[]): readonly string[] =>
  hazardClass.startsWith('STOT') && (a.length === 0 || b.length === 0) ? [] : union(a, b);

const besideOf = (
  a: ClassifiedHazard | undefined,
  b: ClassifiedHazard | undefined,
): ClassifiedHazard | undefined =>
  a && b ? { ...a, organs: joinOrgans(a.hazardClass, a.organs, b.organs) } : (a ?? b);

/** Tells apart what two figures are of. */
const ruleOf = (because: Because): string =>
  [because.kind, 'rule' in because && because.rule, 'category' in because && because.category].join(' ');

/** Whether the figure of one result lies worse against the same limit: higher, or lower where it is a dose. */
function isNearer({ because: a }: ClassResult, { because: b }: ClassResult): boolean {
  const one = figureOf(a);
  const other = figureOf(b);
  if (!one || !other) return one !== null;
  if (ruleOf(a) !== ruleOf(b) || one.limit !== other.limit || one.unit !== other.unit) return false;
  return one.unit === '%' || one.unit === 'ratio' ? one.total > other.total : one.total < other.total;
}

/**
 * The more severe of two results; of one category, with the effects, organs and sub-categories of both and with the
 * working of the worse figure.
 */
function worseOf(one: ClassResult, other: ClassResult): ClassResult {
  if (isMoreSevere(other, one)) return other;
  if (isMoreSevere(one, other)) return one;
  const [a, b] = isNearer(other, one) ? [other, one] : [one, other];
  if (a.outcome !== 'classified' || b.outcome !== 'classified' || a.hazard.code !== b.hazard.code) return a;
  const { triggers, organs, statements, harms, ...hazard } = a.hazard;
  const beside = besideOf(a.beside, b.beside);
  return {
    ...a,
    ...(beside && { beside }),
    hazard: {
      ...hazard,
      // A route is named where both have it; effects of both where they differ.
      route: hazard.route === b.hazard.route ? hazard.route : null,
      ...(harms && b.hazard.harms && { harms: harms === b.hazard.harms ? harms : ('both' as const) }),
      organs: joinOrgans(hazard.hazardClass, organs, b.hazard.organs),
      statements: statements.map((statement, i) =>
        joinStatements(statement, b.hazard.statements[i] ?? statement),
      ),
      ...(triggers && { triggers: union(triggers, b.hazard.triggers ?? []).sort() }),
    },
  };
}

/** For each class the most severe result among compositions (reading `range-end`). */
export function worstOf(compositions: readonly (readonly ClassResult[])[]): readonly ClassResult[] {
  const [first, ...others] = compositions;
  if (others.length === 0) return first!;
  return first!.map((result, i) => others.reduce((worst, other) => worseOf(worst, other[i]!), result));
}

/** For each class the least severe result among compositions. */
export function mildestOf(compositions: readonly (readonly ClassResult[])[]): readonly ClassResult[] {
  const [first, ...others] = compositions;
  return first!.map((result, i) =>
    others.reduce((mildest, other) => (isMoreSevere(mildest, other[i]!) ? other[i]! : mildest), result),
  );
}
