import type { Formula } from '../formula/constituent.ts';
import { quietScale, type Scale } from '../quantity/scale.ts';
import type { Choice, ProductRecord } from '../record/product-record.ts';
import type { AcuteKey, Basis } from '../reference/thresholds.ts';
import { blocksUsed, withBuildingBlocks } from './building-blocks.ts';
import { type Corner, classesOf, classesWithLimits } from './classes-of.ts';
import type { Classification, ClassifiedHazard, OtherClass, Reading } from './classification.ts';
import type { ClassResult, Context } from './context.ts';
import { worstOf } from './corners.ts';
import { describeConstituent } from './describe.ts';
import { unheardEvidence } from './evidence.ts';
import { ofHealth } from './facts/provision.ts';
import type { Warning } from './facts/warning.ts';
import type { Mixture } from './ingredient.ts';
import { defaultOf, type ReadingId, readings } from './readings.ts';
import { type HarmonisedLookup, type Resolved, resolve } from './resolve.ts';
import {
  mergeSupplemental,
  type Supplemental,
  supplementalStatements,
} from './supplemental/supplemental-statements.ts';
import { unknownAquatic, unknownShare } from './unknown-shares.ts';
import { nearLimit } from './warnings/near-limit.ts';
import { reactiveConstituents } from './warnings/reactive-constituents.ts';
import { respiratoryTract } from './warnings/respiratory-tract.ts';
import { limitsWouldMatter } from './warnings/specific-limits.ts';

/** What a classification needs of the record. */
export type ClassifiedRecord = Pick<ProductRecord, 'form' | 'properties' | 'evidence' | 'choices'>;

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
  const resolved = formula.constituents.map((constituent, i) => resolve(constituent, i, lookup));
  const contexts = contextsOf(record, formula, resolved, basis, scale);
  const { take, applyLimits } = contexts[0]!;
  const corners = contexts.map(classesOf);
  const results = worstOf(corners.map(corner => corner.results));
  const supplemental =
    basis.id === 'eu-clp'
      ? mergeSupplemental(contexts.map(context => supplementalStatements(context, results)))
      : noStatements;

  const used = new Set<ReadingId>();
  const warnings: Warning[] = [];
  for (const each of resolved) warnings.push(...each.warnings);
  warnings.push(
    ...reactiveConstituents(
      contexts.length === 1 ? contexts[0]!.mixture : atUpperEnds(record, formula, resolved),
      scale,
    ),
  );
  const hazards: ClassifiedHazard[] = [];
  const otherClasses: OtherClass[] = [];
  for (const result of results) {
    for (const id of result.readings ?? []) used.add(id);
    if (result.warnings) warnings.push(...result.warnings);
    if (result.outcome === 'classified') hazards.push(hazardOf(result));
    else otherClasses.push(otherClassOf(result));
  }
  for (const statement of supplemental.statements) for (const id of statement.readings) used.add(id);
  for (const question of supplemental.questions) for (const id of question.readings) used.add(id);
  warnings.push(
    ...supplemental.questions.map(({ warning }) => warning),
    ...unheardEvidence({ evidence: record.evidence, basis }, results),
    ...respiratoryTract(basis, hazards),
    ...nearLimit(results),
  );
  if (contexts.length > 1) used.add('range-end');
  if (isBesideSevere(hazards)) used.add('stot-se-3-beside-1-2');
  const aquaticUnknown = basis.aquatic ? unknownAquatic(contexts) : null;
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
    const within = worstOf(
      contexts.map(context => classesWithLimits({ ...context, applyLimits: true }, limited)),
    );
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
      oral: lowestAte(corners, 'oral'),
      dermal: lowestAte(corners, 'dermal'),
      gas: lowestAte(corners, 'gas'),
      vapour: lowestAte(corners, 'vapour'),
      mist: lowestAte(corners, 'mist'),
    },
    unknownAcuteToxicity: {
      oral: unknownShare(record, corners, 'oral', ['oral']),
      dermal: unknownShare(record, corners, 'dermal', ['dermal']),
      inhalation: unknownShare(record, corners, 'inhalation', ['gas', 'vapour', 'mist']),
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

/** Hazard classes for which any ingredient has a specific limit. */
function limitedClasses(resolved: readonly Resolved[]): ReadonlySet<string> {
  const limited = new Set<string>();
  for (const { data } of resolved) for (const { hazardClass } of data.limits) limited.add(hazardClass);
  return limited;
}

/** What the rules work from, one for each corner of the ranges. */
export const mixturesOf = (
  record: ClassifiedRecord,
  formula: Formula,
  basis: Basis,
  lookup: HarmonisedLookup,
): readonly Context[] =>
  contextsOf(
    record,
    formula,
    formula.constituents.map((constituent, i) => resolve(constituent, i, lookup)),
    basis,
    quietScale,
  );

function contextsOf(
  record: ClassifiedRecord,
  formula: Formula,
  resolved: readonly Resolved[],
  basis: Basis,
  scale: Scale,
): readonly Context[] {
  const take = choiceOf(record.choices);
  const applyLimits = basis.specificLimits.apply || take('us-specific-limits') === 'use';
  const chosen = withBuildingBlocks(basis, take);
  return formula.corners.map(percents => ({
    mixture: mixtureAt(record, formula, resolved, percents),
    basis: chosen,
    scale,
    applyLimits,
    take,
  }));
}

function mixtureAt(
  { form, properties, evidence }: ClassifiedRecord,
  { constituents }: Formula,
  resolved: readonly Resolved[],
  percents: Formula['corners'][number],
): Mixture {
  const ingredients = constituents.map(({ name, cas, water, given }, i) => ({
    index: i,
    name,
    cas,
    water,
    additive: given.additive,
    relevant: given.relevant,
    data: resolved[i]!.data,
    percent: percents[i]!,
  }));
  return { form, properties, evidence, ingredients };
}

const atUpperEnds = (record: ClassifiedRecord, formula: Formula, resolved: readonly Resolved[]): Mixture =>
  mixtureAt(
    record,
    formula,
    resolved,
    formula.constituents.map(({ high }) => high),
  );

const choiceOf =
  (choices: readonly Choice[]) =>
  (id: ReadingId): string =>
    (choices.length > 0 && choices.find(({ reading }) => reading === id)?.take) || defaultOf(id);

const readingOf = (id: ReadingId, take: (id: ReadingId) => string): Reading => ({
  id,
  taken: take(id),
  cite: readings[id].cite,
});

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
  triggers: hazard.triggers,
  statements: hazard.statements,
  because,
  calculated: hazard.calculated,
});

const otherClassOf = (result: Exclude<ClassResult, { outcome: 'classified' }>): OtherClass => ({
  class: result.class,
  route: result.route,
  outcome: result.outcome,
  because: result.because,
  calculated: result.calculated,
});

function lowestAte(corners: readonly Corner[], key: AcuteKey): number | null {
  let lowest: number | null = null;
  for (const { sums } of corners) {
    const { ateMix } = sums.get(key)!;
    if (ateMix !== null && (lowest === null || ateMix < lowest)) lowest = ateMix;
  }
  return lowest;
}
