import type { Composition, Formula } from '../formula/constituent.ts';
import { quietScale, type Scale } from '../quantity/scale.ts';
import type { AcuteKey, Basis } from '../reference/thresholds.ts';
import { blocksUsed } from './building-blocks.ts';
import { aquaticObjectives } from './classes/aquatic.ts';
import { classesOf } from './classes-of.ts';
import type { Classification, ClassifiedHazard, OtherClass } from './classification.ts';
import type { ClassResult, Context, RouteEstimate } from './context.ts';
import { type ClassifiedRecord, contextsOf } from './contexts.ts';
import { describeConstituent } from './describe.ts';
import { ofHealth } from './facts/provision.ts';
import type { Warning } from './facts/warning.ts';
import { mildEnds, type Spread, worstEnds } from './ranges/spread.ts';
import { groupedIn } from './reactivity.ts';
import { readingOf } from './reading-taken.ts';
import type { ReadingId } from './readings.ts';
import { type HarmonisedLookup, type Resolved, resolve } from './resolve.ts';
import {
  mergeSupplemental,
  type Supplemental,
  supplementalStatements,
} from './supplemental/supplemental-statements.ts';
import { unheardEvidence } from './unheard-evidence.ts';
import { unknownAquatic, unknownShare } from './unknown-shares.ts';
import { categoriesOutside } from './warnings/categories-outside.ts';
import { doubtfulMeasurements } from './warnings/doubtful-measurements.ts';
import { inhalationForm } from './warnings/inhalation-form.ts';
import { nearLimit } from './warnings/near-limit.ts';
import { phMissing } from './warnings/ph-missing.ts';
import { reactiveAlone } from './warnings/reactive-alone.ts';
import { reactiveConstituents } from './warnings/reactive-constituents.ts';
import { recordAgainstEntry } from './warnings/record-against-entry.ts';
import { respiratoryTract } from './warnings/respiratory-tract.ts';
import { limitsWouldMatter } from './warnings/specific-limits.ts';
import { staleMeasurements } from './warnings/stale-measurements.ts';
import { undecidedWithCause } from './warnings/undecided-with-cause.ts';
import { isMoreSevere, mildestOf, worstOf } from './worst.ts';

/**
 * Classifies a mixture under one basis, every class with its reason (29 CFR 1910.1200(d), App. A and B; CLP Title II
 * and Annex I; UN GHS parts 2 to 4). Pure: the same input gives the same result.
 * @param scale where comparisons are made; one that listens hears of each.
 */
export function classify(
  record: ClassifiedRecord,
  formula: Formula,
  basis: Basis,
  lookup: HarmonisedLookup,
  scale: Scale = quietScale,
): Classification {
  const resolved = formula.constituents.map((constituent, i) => resolve(constituent, i, lookup, record.form));
  const contextAt = contextsOf(record, formula, resolved, basis, scale);
  const highs = formula.constituents.map(({ high }) => high);
  const spread = worstEnds(formula, contextAt, highs);
  const { take, applyLimits } = spread.each[0]!;
  const { results: worst, estimates } = classesOf(spread, worstOf);
  const results = spread.apart ? besideMild(worst, mildEnds(formula, contextAt)) : worst;
  const supplemental = basis.supplementalStatements
    ? mergeSupplemental(spread.each.map(context => supplementalStatements(context, results)))
    : noStatements;

  const used = new Set<ReadingId>();
  const warnings: Warning[] = [];
  for (const each of resolved) warnings.push(...each.warnings);
  const highest = formula.chosen ? contextAt(highs) : spread.each[0]!;
  const grouped = groupedIn(highest.mixture.ingredients);
  warnings.push(
    ...recordAgainstEntry(resolved, results, replaced => {
      const at = contextsOf(record, formula, replaced, basis, quietScale);
      const limitedAt = (percents: Composition) => ({ ...at(percents), applyLimits: true });
      return classesOf(worstEnds(formula, limitedAt), worstOf).results;
    }),
    ...phMissing(highest),
    ...doubtfulMeasurements(highest),
    ...staleMeasurements(record, () =>
      highest.mixture.ingredients.map((ingredient, i) => {
        const { low, high } = formula.constituents[i]!;
        return { ...ingredient, low, high };
      }),
    ),
    ...inhalationForm(highest),
    ...categoriesOutside(basis, highest.mixture.ingredients),
    ...reactiveConstituents(highest.mixture, scale, grouped),
    ...reactiveAlone(highest.mixture, scale, grouped),
  );
  const hazards: ClassifiedHazard[] = [];
  const otherClasses: OtherClass[] = [];
  for (const result of results) {
    for (const id of result.readings ?? []) used.add(id);
    if (result.warnings) warnings.push(...result.warnings);
    if (result.outcome === 'classified') {
      hazards.push(hazardOf(result));
      if (result.beside) hazards.push(result.beside);
    } else otherClasses.push(otherClassOf(result));
  }
  for (const statement of supplemental.statements) for (const id of statement.readings) used.add(id);
  for (const question of supplemental.questions) for (const id of question.readings) used.add(id);
  warnings.push(
    ...supplemental.questions.map(({ warning }) => warning),
    ...unheardEvidence({ evidence: record.evidence, basis }, results),
    ...respiratoryTract(basis, hazards),
    ...undecidedWithCause(results, highest.mixture.ingredients),
    ...nearLimit(results, highest),
  );
  if (formula.ranged) used.add('range-end');
  if (isBesideSevere(hazards)) used.add('stot-se-3-beside-1-2');
  const aquaticUnknown = basis.aquatic ? unknownAquatic(spread.at(aquaticObjectives)) : null;
  if (aquaticUnknown) used.add('unknown-aquatic');
  for (const id of blocksUsed(
    basis,
    hazards.map(({ code }) => code),
    take,
  ))
    used.add(id);
  if (!basis.specificLimits.apply && resolved.some(({ data }) => data.limits.length > 0))
    used.add('us-specific-limits');
  const limited = applyLimits ? none : limitedClasses(resolved);
  if (limited.size > 0) {
    const within = classesOf(withLimits(spread, formula, contextAt), worstOf, limited).results;
    warnings.push(...limitsWouldMatter(results, within, ofHealth(basis, basis.specificLimits.cite)));
  }
  return {
    basis: { id: basis.id, title: basis.title, asOf: basis.asOf },
    constituents: formula.constituents.map((constituent, i) =>
      describeConstituent(constituent, resolved[i]!),
    ),
    hazards,
    otherClasses,
    ateMix: {
      oral: lowestAte(estimates, 'oral'),
      dermal: lowestAte(estimates, 'dermal'),
      gas: lowestAte(estimates, 'gas'),
      vapour: lowestAte(estimates, 'vapour'),
      mist: lowestAte(estimates, 'mist'),
    },
    unknownAcuteToxicity: {
      oral: unknownShare(record, estimates, 'oral', ['oral']),
      dermal: unknownShare(record, estimates, 'dermal', ['dermal']),
      inhalation: unknownShare(record, estimates, 'inhalation', ['gas', 'vapour', 'mist']),
    },
    unknownAquatic: aquaticUnknown,
    supplemental: supplemental.statements,
    readings: [...used].map(id => readingOf(id, take)),
    warnings,
  };
}

const none: ReadonlySet<string> = new Set();
const noStatements: Supplemental = { statements: [], questions: [] };

const isBesideSevere = (hazards: readonly ClassifiedHazard[]): boolean => {
  const categories = hazards
    .filter(({ hazardClass }) => hazardClass === 'STOT SE')
    .map(each => each.category);
  return categories.includes('3') && categories.some(category => category !== '3');
};

/** The compositions that are worst where specific limits count. */
function withLimits(spread: Spread, formula: Formula, contextAt: (percents: Composition) => Context): Spread {
  const limited = (context: Context): Context => ({ ...context, applyLimits: true });
  if (spread.apart) return worstEnds(formula, percents => limited(contextAt(percents)));
  const each = spread.each.map(limited);
  return { each, apart: false, at: () => each };
}

/** Hazard classes for which any ingredient has a specific limit. */
function limitedClasses(resolved: readonly Resolved[]): ReadonlySet<string> {
  const limited = new Set<string>();
  for (const { data } of resolved) for (const { hazardClass } of data.limits) limited.add(hazardClass);
  return limited;
}

/** What the ranges give at their milder ends stands beside a hazard where it differs. */
function besideMild(worst: readonly ClassResult[], ends: Spread): readonly ClassResult[] {
  const mild = classesOf(ends, mildestOf).results;
  return worst.map((result, i) => {
    const other = mild[i]!;
    if (result.outcome !== 'classified' || !isMoreSevere(result, other)) return result;
    const milder = other.outcome === 'classified' ? other.hazard.code : other.outcome;
    return { ...result, hazard: { ...result.hazard, milder } };
  });
}

// Every field is named: spreading is slow.
const hazardOf = ({
  hazard,
  because,
}: Extract<ClassResult, { outcome: 'classified' }>): ClassifiedHazard => ({
  code: hazard.code,
  hazardClass: hazard.hazardClass,
  category: hazard.category,
  route: hazard.route,
  form: hazard.form,
  effect: hazard.effect,
  organs: hazard.organs,
  ...(hazard.harms && { harms: hazard.harms }),
  triggers: hazard.triggers,
  statements: hazard.statements,
  because,
  calculated: hazard.calculated,
  milder: hazard.milder,
});

const otherClassOf = (result: Exclude<ClassResult, { outcome: 'classified' }>): OtherClass => ({
  class: result.class,
  route: result.route,
  outcome: result.outcome,
  because: result.because,
  calculated: result.calculated,
});

function lowestAte(estimates: readonly RouteEstimate[], route: AcuteKey): number | null {
  let lowest: number | null = null;
  for (const { key, ateMix } of estimates) {
    if (key === route && ateMix !== null && (lowest === null || ateMix < lowest)) lowest = ateMix;
  }
  return lowest;
}
