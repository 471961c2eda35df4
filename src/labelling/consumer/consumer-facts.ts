import type { Classification } from '../../classify/classification.ts';
import { consumerData } from '../../reference/consumer/hazard-data.ts';
import type { ConsumerSignal } from '../../reference/consumer/rules.ts';
import { byClass } from './by-class.ts';
import { byComposition, type SpecialFinding } from './by-composition.ts';
import { byDose } from './by-dose.ts';
import { byFlashPoint } from './by-flash-point.ts';
import type { ConsumerFacts, ConsumerHazard, ConsumerProduct, OpenHazard } from './facts.ts';

/** Most severe first; POISON stands in the place of any signal word (16 CFR 1500.129). */
const SIGNALS: readonly ConsumerSignal[] = ['POISON', 'DANGER', 'WARNING', 'CAUTION'];

/**
 * What the Federal Hazardous Substances Act asks of the label of a product (15 U.S.C. 1261(p)(1), repeated in 16 CFR
 * 1500.3(b)(14)(i); 1500.127 for several hazards). What rests on the classification is a proposal.
 * @param classification under 29 CFR 1910.1200
 */
export function consumerFacts(classification: Classification, product: ConsumerProduct): ConsumerFacts {
  const classes = byClass(classification);
  const flash = byFlashPoint(classification, product);
  const composition = byComposition(classification, product);
  const hazards = [
    ...byDose(classification, product),
    ...flash.hazards,
    ...classes.hazards,
    ...composition.hazards,
  ];
  const highlyToxic = hazards.find(({ kind }) => kind === 'highly-toxic');
  const poisonous = composition.met.find(({ rule }) => rule.poison);
  return {
    hazards,
    ...signalOf(hazards, composition.met, product.signal ?? null),
    poison: poisonous?.rule.cite ?? (highlyToxic ? '16 CFR 1500.121(b)(5)(i)' : null),
    statements: statementsOf(hazards),
    also: alsoOf(hazards, composition.met),
    named: namedOf(hazards, composition.met),
    uncovered: [...classes.uncovered, ...flash.uncovered, ...composition.uncovered],
    open: [...flash.open, ...undecided(classification), ...composition.open],
  };
}

/** The word that a rule sets, or the proposal where the law leaves it open, in whose place a choice goes. */
function signalOf(
  hazards: readonly ConsumerHazard[],
  met: readonly SpecialFinding[],
  chosen: ConsumerProduct['signal'],
): Pick<ConsumerFacts, 'signal' | 'refusedSignal'> {
  const { signal } = consumerData;
  for (const word of SIGNALS) {
    const special = met.find(({ rule }) => rule.signal === word);
    const isProposed = word !== 'POISON' && hazards.some(({ kind }) => signal[word].includes(kind));
    if (!special && !isProposed) continue;
    const cite = special?.rule.cite ?? signal.cite;
    const set: ConsumerFacts['signal'] = { word, cite };
    // On hazards other than those of DANGER the law has either word; a rule on a composition names one.
    const isOpen = !special && (word === 'WARNING' || word === 'CAUTION');
    const named = met.find(({ rule }) => rule.signal === 'WARNING' || rule.signal === 'CAUTION');
    if (!chosen || chosen === word) return { signal: set, refusedSignal: null };
    if (!isOpen || named)
      return {
        signal: set,
        refusedSignal: { cite: named?.rule.cite ?? cite, set: named?.rule.signal ?? word },
      };
    return { signal: { word: chosen, cite, proposed: word }, refusedSignal: null };
  }
  return { signal: null, refusedSignal: chosen ? { cite: signal.cite, set: null } : null };
}

/** One statement for each hazard, several in one where one says them all (16 CFR 1500.127). */
function statementsOf(hazards: readonly ConsumerHazard[]): readonly string[] {
  const found = new Set(hazards.map(({ statement }) => statement));
  for (const { of, to } of consumerData.merge) {
    if (!of.every(id => found.has(id))) continue;
    for (const id of of) found.delete(id);
    found.add(to);
  }
  for (const id of [...found]) for (const said of consumerData.within[id] ?? []) found.delete(said);
  return consumerData.statements.map(({ id }) => id).filter(id => found.has(id));
}

const alsoOf = (hazards: readonly ConsumerHazard[], met: readonly SpecialFinding[]): readonly string[] => [
  ...new Set([
    ...met.flatMap(({ rule }) => rule.also ?? []),
    ...(hazards.some(({ statement }) => statement === 'pressure') ? ['pressure'] : []),
  ]),
];

/** Components that contribute substantially to the hazard; none where it is flammability or pressure alone. */
function namedOf(hazards: readonly ConsumerHazard[], met: readonly SpecialFinding[]): readonly number[] {
  if (hazards.every(({ kind }) => consumerData.nameless.includes(kind)) && met.length === 0) return [];
  const all = [...hazards, ...met].flatMap(({ constituents }) => constituents);
  return [...new Set(all)].sort((a, b) => a - b);
}

/** Classes that the classification leaves open: a hazard of this law may hide in them. */
const undecided = ({ otherClasses }: Classification): readonly OpenHazard[] => {
  const open = otherClasses
    .filter(each => each.outcome === 'insufficient-data' && each.class !== 'Flam. Liq.')
    .filter(each => !consumerData.uncovered.some(({ classes }) => classes.includes(each.class)));
  if (open.length === 0) return [];
  return [
    {
      what: 'class',
      of: open.map(({ class: name, route }) => (route ? `${name} (${route})` : name)),
      constituents: [
        ...new Set(open.flatMap(({ because }) => ('lacking' in because ? (because.lacking ?? []) : []))),
      ],
      cite: '16 CFR 1500.3(b)(4)(i)(A)',
    },
  ];
};
