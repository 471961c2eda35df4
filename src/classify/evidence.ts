import { findCode, followingStatement } from '../notation/classes.ts';
import { listedByEffect, listedClass } from '../notation/listed-class.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Evidence } from '../record/product-record.ts';
import { dilutionFault, principleFault } from './bridging.ts';
import { ruleOf } from './class-rules.ts';
import type { ClassResult, Context } from './context.ts';
import type { Because } from './facts/because.ts';
import { ofHealth, type Provision } from './facts/provision.ts';
import type { Warning } from './facts/warning.ts';
import type { EvidenceFault } from './facts/warning-evidence.ts';
import type { ReadingId } from './readings.ts';
import { isMoreSevere } from './worst.ts';

/** STOT SE 3 without its effect: each has a statement of its own, and neither follows from the category. */
export const lacksEffect = ({ hazard }: Evidence): boolean =>
  hazard !== null && hazard.code === 'STOT SE 3' && !hazard.effect;

/** The class that the evidence is about, as listed; null where it names none. */
export function classOf(evidence: Evidence): string | null {
  if (lacksEffect(evidence)) return null;
  const listed = listedClass(evidence.hazardClass);
  const effect = evidence.hazard?.effect;
  return listed === 'STOT SE' && effect ? listedByEffect(effect) : listed;
}

/** Whether a result is of the class, route and effect that the evidence is about. */
export function speaksOf(evidence: Evidence): (result: ClassResult) => boolean {
  const name = classOf(evidence);
  return result => result.class === name && (result.route ?? null) === (result.route ? evidence.route : null);
}

/**
 * Whole-mixture evidence and bridging come before the calculation of their class (A.0.4.1(a) and (b), A.0.5; CLP
 * Articles 5 to 9); what the calculation would have said stays beside it. For mutagenicity, carcinogenicity and
 * reproductive toxicity the order is the other way round (A.0.4.2): evidence counts case by case, with the reviewer's
 * reason, and under eu-clp only where it is more severe.
 * @param diluted the mixture at the compositions that are least in the ingredients of a class.
 */
export function applyEvidence(
  context: Context,
  results: readonly ClassResult[],
  diluted: readonly Context[],
): readonly ClassResult[] {
  const heard = context.mixture.evidence.map(entry => ({ entry, isAbout: speaksOf(entry) }));
  return results.map(result => {
    const about = heard.filter(({ isAbout }) => isAbout(result)).map(({ entry }) => entry);
    if (about.length === 0) return result;
    const tests = about.filter(({ kind }) => kind !== 'reserve');
    const weighed = tests.length > 0 ? weigh(context, result, tests, diluted) : result;
    // What evidence on reserve finds itself is the least that stands.
    return about
      .filter(({ kind, hazard }) => kind === 'reserve' && hazard)
      .map(entry => replaced(context, result, entry, false))
      .reduce((worst, found) => (isMoreSevere(found, worst) ? found : worst), weighed);
  });
}

/**
 * The evidence on one class against the calculation and against each other. Where evidence disagrees with other evidence
 * or with a measured property, that is told, and the more severe stands until the reviewer gives a reason with the one
 * that weighs more (A.2.1.3, A.2.2.7.3, A.3.1.2, A.0.3: weight of evidence).
 */
function weigh(
  context: Context,
  result: ClassResult,
  tests: readonly Evidence[],
  diluted: readonly Context[],
): ClassResult {
  const judgedAll = tests.map(entry => ({ entry, found: judged(context, result, entry, diluted) }));
  const usable = judgedAll.filter(({ found }) => isReplaced(found));
  const refusals = judgedAll.filter(({ found }) => !isReplaced(found));
  if (usable.length === 0) return refusals[0]!.found;
  const reasoned = usable.filter(({ entry }) => entry.reason);
  const taken = (reasoned.length > 0 ? reasoned : usable).reduce((worst, each) =>
    isMoreSevere(each.found, worst.found) ? each : worst,
  );
  const cites = taken.found.because.cites;
  const warnings: Warning[] = usable
    .filter(({ found }) => codeOf(found) !== codeOf(taken.found))
    .map(({ entry, found }) => ({
      id: 'evidence-conflict',
      class: result.class,
      finds: codeOf(found),
      method: entry.method,
      source: entry.source,
      against: { kind: 'evidence', method: taken.entry.method, source: taken.entry.source },
      other: codeOf(taken.found),
      taken: 'other',
      cites,
    }));
  const measured = measuredIn(result);
  // The reason why other evidence could not be used is told all the same.
  for (const { found } of refusals)
    warnings.push(...(found.warnings ?? []).slice(result.warnings?.length ?? 0));
  const disagrees =
    measured !== null &&
    (isMoreSevere(result, taken.found) ||
      (measured.property === 'flash-point' && isMoreSevere(taken.found, result)));
  if (!disagrees) return { ...taken.found, warnings: [...(taken.found.warnings ?? []), ...warnings] };
  const { method, source, reason } = taken.entry;
  const stands = !reason && isMoreSevere(result, taken.found);
  warnings.push({
    id: 'evidence-conflict',
    class: result.class,
    finds: codeOf(taken.found),
    method,
    source,
    against: { kind: 'measured', ...measured },
    other: codeOf(result),
    taken: stands ? 'other' : 'evidence',
    cites,
  });
  const basis = stands ? result : taken.found;
  return { ...basis, warnings: [...(basis.warnings ?? []), ...warnings] };
}

const isReplaced = ({ because }: ClassResult): boolean =>
  because.kind === 'test' || because.kind === 'bridging';

const codeOf = (result: ClassResult): string =>
  result.outcome === 'classified' ? result.hazard.code : result.outcome;

/** The measured property by which a class was calculated; null where none was. */
function measuredIn({ because }: ClassResult): {
  readonly property: 'pH' | 'flash-point';
  readonly value: Exact;
} | null {
  if (because.kind === 'ph') return { property: 'pH', value: because.measured.value };
  if (because.kind === 'flash-point' && because.found === 'temperature')
    return { property: 'flash-point', value: because.measured!.value };
  return null;
}

function first<T, R>(list: readonly T[], find: (each: T) => R | null): R | null {
  for (const each of list) {
    const found = find(each);
    if (found !== null) return found;
  }
  return null;
}

/** The warning that evidence is not used. */
export const notUsed = (
  { hazardClass, method, source }: Evidence,
  why: EvidenceFault,
  cites: readonly Provision[],
): Warning => ({ id: 'evidence-not-used', class: hazardClass, method, source, why, cites });

function judged(
  context: Context,
  result: ClassResult,
  evidence: Evidence,
  diluted: readonly Context[],
): ClassResult {
  const { basis, mixture } = context;
  const refused = (why: EvidenceFault, cite: Provision): ClassResult => ({
    ...result,
    warnings: [...(result.warnings ?? []), notUsed(evidence, why, [cite])],
  });
  const found =
    principleFault(basis, evidence, mixture.form) ?? first(diluted, each => dilutionFault(each, evidence));
  if (found) return refused(found.fault, found.cite);
  const cite = ofHealth(basis, basis.mixtureEvidence.cite);
  const caseByCase = basis.mixtureEvidence.caseByCase.includes(evidence.hazardClass);
  if (caseByCase && !evidence.reason) return refused({ kind: 'no-reason' }, cite);
  if (caseByCase && !basis.mixtureEvidence.mayLower && !evidence.hazard)
    return refused({ kind: 'cannot-lower' }, cite);
  return replaced(context, result, evidence, caseByCase);
}

function replaced(
  { basis }: Context,
  result: ClassResult,
  evidence: Evidence,
  caseByCase: boolean,
): ClassResult {
  const { class: name, route: resultRoute } = result;
  // What disagrees in the data of an ingredient does so whatever a test of the mixture finds.
  const warnings = (result.warnings ?? []).filter(({ id }) => id === 'ate-contradicts-category');
  const { method, source, reason, principle } = evidence;
  const cites = [citeOf(basis, name, evidence)];
  const because: Because = principle
    ? { kind: 'bridging', principle, method, source, reason, cites }
    : { kind: 'test', method, source, reason, cites };
  const calculated = {
    outcome: result.outcome === 'classified' ? result.hazard.code : result.outcome,
    because: result.because,
  };
  const readings: readonly ReadingId[] = caseByCase ? ['case-by-case'] : [];
  if (!evidence.hazard)
    return {
      class: name,
      route: resultRoute,
      because,
      readings,
      warnings,
      outcome: 'not-classified',
      calculated,
    };
  const { code, hazardClass, category, form, effect, organs } = evidence.hazard;
  // The route may stand beside the result; the statement then follows from it (C.4; CLP Annex I, Table 3.1.3).
  const route = evidence.hazard.route ?? evidence.route;
  const found = findCode(code);
  const statement = evidence.hazard.statement ?? (found && followingStatement(found.category, route, effect));
  const statements = statement ? [statement] : [];
  const hazard = { code, hazardClass, category, route, form, effect, organs, statements, calculated };
  return { class: name, route: resultRoute, because, readings, warnings, outcome: 'classified', hazard };
}

/** The paragraph on tests or bridging of a class; for a physical class the paragraph of the class, which rests on tests. */
function citeOf(basis: Context['basis'], name: string, { principle }: Evidence): Provision {
  const criteria = ruleOf(name)?.criteria?.(basis);
  if (criteria) return criteria;
  const { byClass, bridging, cite } = basis.mixtureEvidence;
  const health = byClass[name.replace(/ 3 \(.*\)$/, '')];
  if (!health) return ofHealth(basis, cite);
  if (!principle) return ofHealth(basis, health.test);
  return ofHealth(basis, `${health.bridging}, ${bridging.principles[principle].cite}`);
}
