import type { Constituent, Formula } from '../formula/constituent.ts';
import { printHazard } from '../notation/print-hazard.ts';
import { reaches } from '../quantity/sum.ts';
import type { Choice, ProductRecord } from '../record/product-record.ts';
import type { AcuteKey, Basis } from '../reference/thresholds.ts';
import type { Classification, ClassifiedHazard, OtherClass, Reading, Warning } from './classification.ts';
import { acuteToxicity, type AcuteSum } from './classes/acute-toxicity.ts';
import { aquatic } from './classes/aquatic.ts';
import { aspiration } from './classes/aspiration.ts';
import { carcinogenicity } from './classes/carcinogenicity.ts';
import { environmental } from './classes/environmental.ts';
import { eye } from './classes/eye.ts';
import { flammableLiquids } from './classes/flammable-liquids.ts';
import { mutagenicity } from './classes/mutagenicity.ts';
import { physical } from './classes/physical.ts';
import { reproductiveToxicity } from './classes/reproductive-toxicity.ts';
import { sensitization } from './classes/sensitization.ts';
import { skin } from './classes/skin.ts';
import { targetOrgans, transientEffects } from './classes/specific-target-organ.ts';
import { type ClassResult, type Context, citeHealth } from './context.ts';
import { worstOf } from './corners.ts';
import { applyEvidence } from './evidence.ts';
import type { Mixture } from './ingredient.ts';
import { defaultOf, type ReadingId, readings } from './readings.ts';
import { type HarmonisedLookup, type Resolved, resolve } from './resolve.ts';
import { nearLimit } from './warnings/near-limit.ts';
import { limitsWouldMatter } from './warnings/specific-limits.ts';

/** What a classification needs of the record. */
export type ClassifiedRecord = Pick<ProductRecord, 'form' | 'properties' | 'evidence' | 'choices'>;

/** The classes of one corner of the ranges, with the sums of acute toxicity. */
interface Corner {
  readonly results: readonly ClassResult[];
  readonly sums: ReadonlyMap<AcuteKey, AcuteSum>;
}

/**
 * Classifies a mixture under one basis, every class with its reason (29 CFR 1910.1200(d), App. A and B; CLP Title II
 * and Annex I; UN GHS parts 2 to 4). Pure: the same input gives the same result.
 */
export function classify(record: ClassifiedRecord, formula: Formula, basis: Basis, lookup: HarmonisedLookup): Classification {
  const resolved = formula.constituents.map(constituent => resolve(constituent, lookup));
  const take = choiceOf(record.choices);
  const applyLimits = basis.specificLimits.apply || take('us-specific-limits') === 'use';
  const corners = formula.corners.map(percents => {
    const mixture = mixtureAt(record, formula, resolved, percents);
    return corner({ mixture, basis, applyLimits, take });
  });
  const results = worstOf(corners.map(each => each.results));
  const warnings: Warning[] = resolved.flatMap(each => each.warnings);
  for (const result of results) warnings.push(...(result.warnings ?? []));
  warnings.push(...nearLimit(results));
  const used = new Set<ReadingId>(results.flatMap(result => result.readings ?? []));
  if (formula.corners.length > 1) used.add('range-end');
  if (!applyLimits && resolved.some(({ data }) => data.limits.length > 0)) {
    used.add('us-specific-limits');
    const within = formula.corners.map(
      percents => corner({ mixture: mixtureAt(record, formula, resolved, percents), basis, applyLimits: true, take }).results,
    );
    warnings.push(...limitsWouldMatter(results, worstOf(within), citeHealth(basis, basis.specificLimits.cite)));
  }
  const unknown = (route: 'oral' | 'dermal' | 'inhalation'): number => {
    if (testedOn(record, route)) return 0;
    const keys: readonly AcuteKey[] = route === 'inhalation' ? ['gas', 'vapour', 'mist'] : [route];
    return Math.max(...corners.flatMap(({ sums }) => keys.map(key => sums.get(key)!.unknown)));
  };
  return {
    basis: { id: basis.id, title: basis.title, asOf: basis.asOf },
    constituents: formula.constituents.map((constituent, i) => describe(constituent, resolved[i]!)),
    hazards: results.flatMap(hazardOf),
    otherClasses: results.flatMap(otherClassOf),
    ateMix: {
      oral: lowestAte(corners, 'oral'),
      dermal: lowestAte(corners, 'dermal'),
      gas: lowestAte(corners, 'gas'),
      vapour: lowestAte(corners, 'vapour'),
      mist: lowestAte(corners, 'mist'),
    },
    unknownAcuteToxicity: { oral: unknown('oral'), dermal: unknown('dermal'), inhalation: unknown('inhalation') },
    unknownAquatic: basis.aquatic ? unknownAquatic(formula, resolved) : null,
    readings: [...used].map(id => readingOf(id, take)),
    warnings,
  };
}

/** All classes of a mixture at fixed concentrations, in the order of the law. */
export function corner(context: Context): Corner {
  const acute = acuteToxicity(context);
  const ofSkin = skin(context);
  const corrosive = applyEvidence(context, ofSkin).some(
    result => result.outcome === 'classified' && result.hazard.hazardClass === 'Skin Corr.',
  );
  const calculated = [
    ...flammableLiquids(context),
    ...physical(context),
    ...acute.results,
    ...ofSkin,
    ...eye(context, corrosive),
    ...sensitization(context),
    ...mutagenicity(context),
    ...carcinogenicity(context),
    ...reproductiveToxicity(context),
    ...targetOrgans(context),
    ...transientEffects(context),
    ...aspiration(context),
    ...aquatic(context),
    ...environmental(context),
  ];
  return { results: applyEvidence(context, undecidedByMissingData(context, calculated)), sums: acute.sums };
}

function mixtureAt(
  { form, properties, evidence }: ClassifiedRecord,
  { constituents }: Formula,
  resolved: readonly Resolved[],
  percents: Formula['corners'][number],
): Mixture {
  const ingredients = constituents.map(({ name, cas, water, given }, i) => ({
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

/** A class that nothing gives is undecided while an ingredient without any data is present at its cut-off. */
function undecidedByMissingData({ mixture }: Context, results: readonly ClassResult[]): ClassResult[] {
  const blind = mixture.ingredients.filter(({ data }) => data.noData || data.unknown.has('aquatic'));
  if (blind.length === 0) return [...results];
  return results.map(result => {
    if (result.outcome !== 'not-classified' || result.floor === undefined) return result;
    const aquaticClass = result.class.startsWith('Aquatic');
    const missing = blind.filter(
      ({ data, percent }) => (data.noData || aquaticClass) && reaches(percent, result.floor!),
    );
    if (missing.length === 0) return result;
    const names = missing.map(({ name }) => name).join(', ');
    const working = `${result.because.working}; no data on ${names}`;
    return { ...result, outcome: 'insufficient-data', because: { ...result.because, working } };
  });
}

const choiceOf =
  (choices: readonly Choice[]) =>
  (id: ReadingId): string =>
    choices.find(({ reading }) => reading === id)?.take ?? defaultOf(id);

function readingOf(id: ReadingId, take: (id: ReadingId) => string): Reading {
  const { cite, options } = readings[id];
  const taken = take(id);
  return { id, taken: `${taken}: ${(options as Record<string, string>)[taken]}`, cite };
}

const testedOn = ({ evidence }: ClassifiedRecord, route: string): boolean =>
  evidence.some(({ hazardClass, kind, route: tested }) => hazardClass === 'Acute Tox.' && kind === 'test' && tested === route);

const hazardOf = (result: ClassResult): ClassifiedHazard[] =>
  result.outcome === 'classified' ? [{ ...result.hazard, because: result.because }] : [];

const otherClassOf = (result: ClassResult): OtherClass[] =>
  result.outcome === 'classified'
    ? []
    : [
        {
          class: result.class,
          ...(result.route ? { route: result.route } : {}),
          outcome: result.outcome,
          because: result.because,
          ...(result.calculated ? { calculated: result.calculated } : {}),
        },
      ];

function lowestAte(corners: readonly Corner[], key: AcuteKey): number | null {
  let lowest: number | null = null;
  for (const { sums } of corners) {
    const { ateMix } = sums.get(key)!;
    if (ateMix !== null && (lowest === null || ateMix < lowest)) lowest = ateMix;
  }
  return lowest;
}

/** Percent of the mixture with unknown hazards to the aquatic environment (CLP and UN 4.1.3.6.1), at the upper ends. */
const unknownAquatic = ({ constituents }: Formula, resolved: readonly Resolved[]): number =>
  constituents.reduce((sum, { high }, i) => (resolved[i]!.data.unknown.has('aquatic') ? sum + high.value : sum), 0);

const describe = ({ name, cas, low, high, water }: Constituent, { data }: Resolved) => ({
  name,
  cas,
  percent: high.value,
  ...(low.value === high.value ? {} : { percentRange: [low.value, high.value] as const }),
  hazards: data.hazards.map(printHazard),
  source: data.source,
  unknown: [...data.unknown],
  water,
});
