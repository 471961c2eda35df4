import type { TransportData } from '../reference/transport/transport-data.ts';
import { aerosol } from './aerosol.ts';
import {
  type Alternative,
  type LimitedQuantity,
  type Outcome,
  sameOutcome,
  type TransportAnswer,
} from './answer.ts';
import { aqueousAlcohol, choices, otherModesAlone } from './choices.ts';
import { corrosive } from './corrosive.ts';
import { type Fact, fact } from './fact.ts';
import type { Case, Hazard, Missing } from './finding.ts';
import { flammable } from './flammable.ts';
import { hazardLabels } from './hazard-labels.ts';
import { hazardousSubstances } from './hazardous-substance.ts';
import type { TransportConstituent, TransportInput } from './input.ts';
import { limitedQuantity } from './limited-quantity.ts';
import { marinePollutants } from './marine-pollutant.ts';
import { modesOf } from './modes.ts';
import { namedMaterial, straddling } from './named-entry.ts';
import { otherClasses } from './other-classes.ts';
import { notRegulated, undecided } from './outcome.ts';
import type { Setting } from './setting.ts';
import { settle } from './settle.ts';
import { toxic } from './toxic.ts';

/**
 * How a pack is carried under 49 CFR 171 to 173: regulated, not regulated, or undecided where data are missing that
 * decide whether it is regulated or in which packing group; with the answer for each case. Never not regulated while
 * a class is open.
 */
export function transport(input: TransportInput, data: TransportData): TransportAnswer {
  const split = straddling(input, data);
  return split ? atBothEnds(split, input, data) : atOneConcentration(input, data);
}

/** A range that entries of the table divide: the answer at both ends, undecided where they differ. */
function atBothEnds(
  constituent: TransportConstituent,
  input: TransportInput,
  data: TransportData,
): TransportAnswer {
  const at = (percent: TransportConstituent['low']): TransportAnswer => {
    const fixed = { ...constituent, low: percent, high: percent };
    const constituents = input.constituents.map(other => (other === constituent ? fixed : other));
    return transport({ ...input, constituents }, data);
  };
  const low = at(constituent.low);
  const high = at(constituent.high);
  if (sameOutcome(low, high)) return high;
  const values = { name: constituent.name, low: constituent.low.value, high: constituent.high.value };
  const missing: Missing = {
    ...fact('concentration', '49 CFR 172.101(c)(6)', values),
    class: high.class ?? low.class ?? '',
    decides: 'group',
    cases: [],
  };
  const when = (percent: TransportConstituent['low']) => [
    fact('concentration-of', missing.cite, { name: constituent.name, percent: percent.value }),
  ];
  return {
    ...high,
    ...undecided(...high.because),
    limitedQuantity: null,
    hazardLabels: null,
    missing: [missing, ...high.missing],
    alternatives: [
      { ...low, when: when(constituent.low) },
      { ...high, when: when(constituent.high) },
    ],
  };
}

function atOneConcentration(input: TransportInput, data: TransportData): TransportAnswer {
  const findings = [flammable, corrosive, toxic, otherClasses].map(examine => examine(input, data));
  const setting: Setting = {
    input,
    data,
    named: namedMaterial(input, data),
    marine: marinePollutants(input, data),
    substances: hazardousSubstances(input, data),
  };
  const because = [
    ...findings.flatMap(finding => finding.because),
    ...setting.marine.because,
    ...setting.substances.because,
  ];
  if (input.form === 'aerosol') return finish(aerosol(input, data), because, [], [], setting);
  const hazards = findings.flatMap(finding => finding.hazards);
  const missing = findings.flatMap(finding => finding.missing);
  const except = aqueousAlcohol(input, hazards, data);
  if (except && !missing.some(({ decides }) => decides === 'class'))
    return finish(notRegulated(except), because, [], [], setting);
  return decide(hazards, missing, because, setting);
}

function decide(
  hazards: readonly Hazard[],
  missing: readonly Missing[],
  because: readonly Fact[],
  setting: Setting,
): TransportAnswer {
  const open = missing.filter(({ decides }) => decides === 'group');
  const provisional = [...hazards, ...open.flatMap(provisionalHazard)];
  const base = settle(provisional, setting);
  // An entry with one packing group settles it, and one that names its concentration the class too.
  const settled = new Set<Missing>(missing.filter(item => isSettled(item, base, setting)));
  const left = missing.filter(item => !settled.has(item));
  const outcome = answerOf(base, left, provisional);
  const cases = left.flatMap(item =>
    item.cases.map(each => {
      const found = caseOutcome(item, each, hazards, setting);
      const others = left.filter(other => other !== item && other.decides === 'class');
      const shut = found.answer !== 'not-regulated' || others.length === 0;
      return { when: whenOf(item, each), outcome: shut ? found : stillOpen(found, others) };
    }),
  );
  // With nothing but open classes, none of them is a case too.
  if (
    outcome.answer === 'undecided' &&
    hazards.every(hazard => hazard.class === 'Comb liq') &&
    left.every(({ decides }) => decides === 'class')
  )
    cases.unshift({ when: fact('none-of-them', '49 CFR 172.101(c)(12)(iv)'), outcome: base });
  const chosen = choices(base, hazards, setting);
  return finish(outcome, because, left, [...cases, ...chosen], setting);
}

/** Not regulated only where no other class is open. */
const stillOpen = (outcome: Outcome, others: readonly Missing[]): Outcome => ({
  ...outcome,
  answer: 'undecided',
  because: [
    fact('others-open', '49 CFR 172.101(c)(12)(iv)', {
      classes: [...new Set(others.map(({ class: name }) => name))],
    }),
  ],
});

/** A class that is sure, its packing group not known: the table may still give one. */
const provisionalHazard = ({ class: name, cases }: Missing): Hazard[] =>
  cases.some(({ hazard }) => hazard !== 'approval') ? [{ class: name, group: null, tested: false }] : [];

function isSettled(item: Missing, { entry }: Outcome, { named }: Setting): boolean {
  if (!entry || !named?.entries.includes(entry) || item.class !== entry.hazardClass) return false;
  const ofClass = named.entries.filter(other => other.hazardClass === entry.hazardClass);
  if (item.decides !== 'class' && ofClass.length === 1) return true;
  return named.listed && ofClass.length === 1;
}

/** A packing group that is open leaves the answer undecided; so does an open class where nothing else is regulated. */
function answerOf(base: Outcome, left: readonly Missing[], hazards: readonly Hazard[]): Outcome {
  if (left.some(({ decides }) => decides === 'group'))
    return { ...base, answer: 'undecided', entry: null, name: null, packingGroup: null, technical: [] };
  const open = left.some(({ decides }) => decides === 'class');
  if (open && base.answer === 'not-regulated')
    return { ...base, answer: 'undecided', because: [], class: hazards.length > 0 ? base.class : null };
  return base;
}

const whenOf = (item: Missing, each: Case): Fact =>
  fact(each.id, item.cite, { ...item.values, ...each.values, class: item.class });

function caseOutcome(item: Missing, each: Case, hazards: readonly Hazard[], setting: Setting): Outcome {
  const others = hazards.filter(hazard => hazard.class !== item.class && hazard.class !== 'Comb liq');
  if (each.hazard === 'approval')
    return {
      answer: 'undecided',
      entry: null,
      name: null,
      technical: [],
      class: item.class,
      subsidiary: [],
      packingGroup: null,
      because: [fact('by-approval', item.cite, { class: item.class })],
    };
  return settle(each.hazard === 'none' ? others : [...others, each.hazard], setting);
}

function finish(
  outcome: Outcome,
  because: readonly Fact[],
  missing: readonly Missing[],
  cases: readonly { readonly when: Fact; readonly outcome: Outcome }[],
  setting: Setting,
): TransportAnswer {
  const elsewhere =
    outcome.answer === 'regulated' && !missing.some(({ decides }) => decides === 'class')
      ? otherModesAlone(outcome, setting)
      : null;
  if (elsewhere)
    return finish(
      notRegulated(...outcome.because, elsewhere),
      because,
      missing,
      [{ when: elsewhere, outcome }, ...cases],
      setting,
    );
  const quantity = quantityOf(outcome, setting);
  return {
    ...outcome,
    because: [...because, ...outcome.because, ...quantity.because, ...modesOf(outcome, setting)],
    marinePollutant: setting.marine.names.length > 0,
    reportable: setting.substances.names,
    limitedQuantity: quantity.limits,
    hazardLabels: hazardLabels(outcome, quantity.limits, setting.input, setting.data),
    missing,
    alternatives: merged(outcome, cases, setting),
  };
}

function quantityOf(
  { entry }: Outcome,
  { input, data }: Setting,
): { readonly limits: LimitedQuantity | null; readonly because: readonly Fact[] } {
  return entry ? limitedQuantity(entry, input, data) : { limits: null, because: [] };
}

/** Cases that come to one description stand together; those that change nothing are left out. */
function merged(
  outcome: Outcome,
  cases: readonly { readonly when: Fact; readonly outcome: Outcome }[],
  setting: Setting,
): readonly Alternative[] {
  const found: { outcome: Outcome; when: Fact[] }[] = [];
  for (const { when, outcome: each } of cases) {
    if (outcome.answer !== 'undecided' && sameOutcome(each, outcome)) continue;
    const same = found.find(other => sameOutcome(other.outcome, each));
    if (same) same.when.push(when);
    else found.push({ outcome: each, when: [when] });
  }
  return found.map(({ outcome: each, when }) => {
    const quantity = quantityOf(each, setting);
    return {
      ...each,
      when,
      limitedQuantity: quantity.limits,
      hazardLabels: hazardLabels(each, quantity.limits, setting.input, setting.data),
      because: [...each.because, ...quantity.because],
    };
  });
}
