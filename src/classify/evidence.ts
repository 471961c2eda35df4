import { findCode, followingStatement } from '../notation/classes.ts';
import type { Evidence } from '../record/product-record.ts';
import { dilutionFault, principleFault } from './bridging.ts';
import type { ClassResult, Context } from './context.ts';
import type { Because } from './facts/because.ts';
import { ofHealth, ofPhysical, type Provision } from './facts/provision.ts';
import type { EvidenceFault, Warning } from './facts/warning.ts';
import { listedClass } from './listed-class.ts';
import type { ReadingId } from './readings.ts';

// Each effect of Category 3 has a statement of its own, and neither follows from the category.
const lacksEffect = ({ hazard }: Evidence): boolean =>
  hazard !== null && hazard.code === 'STOT SE 3' && !hazard.effect;

/** Whether a result is of the class, route and effect that the evidence is about. */
function speaksOf(evidence: Evidence): (result: ClassResult) => boolean {
  if (lacksEffect(evidence)) return () => false;
  const listed = listedClass(evidence.hazardClass);
  const effect = evidence.hazard?.effect;
  const name = listed === 'STOT SE' && effect ? `STOT SE 3 (${effect})` : listed;
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
  const { mixture } = context;
  let changed: ClassResult[] | null = null;
  for (const evidence of mixture.evidence) {
    if (evidence.kind === 'reserve') continue;
    const at = results.findIndex(speaksOf(evidence));
    if (at < 0) continue;
    changed ??= [...results];
    // The first of several stands, as it does in the record.
    if (changed[at] === results[at]) changed[at] = judged(context, results[at]!, evidence, diluted);
  }
  return changed ?? results;
}

/**
 * Warnings on evidence that speaks of no class of the basis or lacks its route, and on entries after the first for one
 * class: none of it is used, and none of it may be lost in silence.
 */
export function unheardEvidence(
  { evidence, basis }: { readonly evidence: readonly Evidence[]; readonly basis: Context['basis'] },
  results: readonly ClassResult[],
): Warning[] {
  const heard = new Set<ClassResult>();
  return evidence.flatMap((entry): Warning[] => {
    if (entry.kind === 'reserve') return [];
    const result = results.find(speaksOf(entry));
    if (result && !heard.has(result)) {
      heard.add(result);
      return [];
    }
    const listed = listedClass(entry.hazardClass);
    const why: EvidenceFault = result
      ? { kind: 'earlier-entry' }
      : results.some(({ class: name, route }) => name === listed && route)
        ? { kind: 'no-route' }
        : lacksEffect(entry)
          ? { kind: 'no-effect' }
          : { kind: 'no-such-class', basis: basis.title };
    return [notUsed(entry, why, [])];
  });
}

function first<T, R>(list: readonly T[], find: (each: T) => R | null): R | null {
  for (const each of list) {
    const found = find(each);
    if (found !== null) return found;
  }
  return null;
}

const notUsed = (
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
    return { class: name, route: resultRoute, because, readings, outcome: 'not-classified', calculated };
  const { code, hazardClass, category, form, effect, organs } = evidence.hazard;
  // The route may stand beside the result; the statement then follows from it (C.4; CLP Annex I, Table 3.1.3).
  const route = evidence.hazard.route ?? evidence.route;
  const found = findCode(code);
  const statement = evidence.hazard.statement ?? (found && followingStatement(found.category, route, effect));
  const statements = statement ? [statement] : [];
  const hazard = { code, hazardClass, category, route, form, effect, organs, statements, calculated };
  return { class: name, route: resultRoute, because, readings, outcome: 'classified', hazard };
}

/** The paragraph on tests or bridging of a class; for a physical class the paragraph of the class, which rests on tests. */
function citeOf(basis: Context['basis'], name: string, { principle }: Evidence): Provision {
  if (name === 'Flam. Liq.') return ofPhysical(basis, basis.flammableLiquids.cite);
  const physical = basis.physicalClasses.find(entry => entry.class === name);
  if (physical) return ofPhysical(basis, physical.criteria, physical.instrument);
  const { byClass, bridging, cite } = basis.mixtureEvidence;
  const health = byClass[name.replace(/ 3 \(.*\)$/, '')];
  if (!health) return ofHealth(basis, cite);
  if (!principle) return ofHealth(basis, health.test);
  return ofHealth(basis, `${health.bridging}, ${bridging.principles[principle].cite}`);
}
