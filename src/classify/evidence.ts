import type { Evidence } from '../record/product-record.ts';
import type { Because } from './classification.ts';
import { type ClassResult, type Context, citeHealth, citePhysical, plainHazard } from './context.ts';
import type { ReadingId } from './readings.ts';

/** Classes as listed, for a class named in evidence. */
const listedAs: Readonly<Record<string, string>> = {
  'Skin Corr.': 'Skin Corr./Irrit.',
  'Skin Irrit.': 'Skin Corr./Irrit.',
  'Eye Dam.': 'Eye Dam./Irrit.',
  'Eye Irrit.': 'Eye Dam./Irrit.',
};

const speaksOf = (evidence: Evidence, result: ClassResult): boolean => {
  const listed = listedAs[evidence.hazardClass] ?? evidence.hazardClass;
  const effect = evidence.hazard?.effect;
  if (listed === 'STOT SE' && effect) return result.class === `STOT SE 3 (${effect})`;
  return result.class === listed && (result.route ?? null) === (result.route ? evidence.route : null);
};

/**
 * Whole-mixture evidence and bridging (A.0.4.2, A.0.5; CLP Articles 5 to 9) replace the calculation of their class;
 * what the calculation would have said stays beside it. For mutagenicity, carcinogenicity and reproductive toxicity
 * evidence counts case by case: with the reviewer's reason, and under eu-clp only where it is more severe.
 */
export function applyEvidence(context: Context, results: readonly ClassResult[]): readonly ClassResult[] {
  const { basis, mixture } = context;
  if (mixture.evidence.length === 0) return results;
  const decisive = mixture.evidence.filter(({ kind }) => kind !== 'reserve');
  if (decisive.length === 0) return results;
  return results.map(result => {
    const evidence = decisive.find(candidate => speaksOf(candidate, result));
    if (!evidence) return result;
    const caseByCase = basis.mixtureEvidence.caseByCase.includes(evidence.hazardClass);
    if (caseByCase && !evidence.reason)
      return withWarning(
        result,
        `evidence on ${evidence.hazardClass} has no reason and is not used`,
        context,
      );
    if (caseByCase && basis.id === 'eu-clp' && !evidence.hazard)
      return withWarning(result, `evidence on ${evidence.hazardClass} cannot lower the class`, context);
    return replaced(context, result, evidence, caseByCase);
  });
}

function withWarning(result: ClassResult, text: string, { basis }: Context): ClassResult {
  const warning = { id: 'evidence-not-used', text, cite: citeHealth(basis, basis.mixtureEvidence.cite) };
  return { ...result, warnings: [...(result.warnings ?? []), warning] };
}

function replaced(
  { basis }: Context,
  result: ClassResult,
  evidence: Evidence,
  caseByCase: boolean,
): ClassResult {
  const physical =
    basis.physicalClasses.some(({ class: name }) => name === result.class) || result.class === 'Flam. Liq.';
  const cite = physical
    ? citePhysical(basis, paragraphOf(basis, result.class))
    : citeHealth(basis, basis.mixtureEvidence.cite);
  const because: Because = {
    rule:
      evidence.kind === 'bridging' ? 'bridging from a similar tested mixture' : 'test on the mixture itself',
    cite,
    working: `${evidence.method}; ${evidence.source}${evidence.reason ? `; ${evidence.reason}` : ''}`,
    terms: [],
  };
  const calculated = {
    outcome: result.outcome === 'classified' ? result.hazard.code : result.outcome,
    because: result.because,
  };
  const readings: readonly ReadingId[] = caseByCase ? ['case-by-case'] : [];
  const kept = { class: result.class, ...(result.route ? { route: result.route } : {}), because, readings };
  if (!evidence.hazard) return { ...kept, outcome: 'not-classified', calculated };
  const { hazardClass, category, statement, route, form, effect, organs } = evidence.hazard;
  const hazard = {
    ...plainHazard(hazardClass, category, statement ? [statement] : []),
    route,
    form,
    effect,
    organs,
    calculated,
  };
  return { ...kept, outcome: 'classified', hazard };
}

const paragraphOf = (basis: Context['basis'], hazardClass: string): string =>
  hazardClass === 'Flam. Liq.'
    ? basis.flammableLiquids.cite
    : (basis.physicalClasses.find(entry => entry.class === hazardClass)?.cite ?? '');
