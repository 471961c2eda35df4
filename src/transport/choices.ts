import { Exact } from '../quantity/exact.ts';
import { compare } from '../quantity/sum.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import type { Outcome } from './answer.ts';
import { anyClass, contributes } from './contributors.ts';
import { type Fact, fact } from './fact.ts';
import type { Hazard } from './finding.ts';
import { genericOutcome, rowOf } from './generic-entry.ts';
import type { TransportInput } from './input.ts';
import { notRegulated } from './outcome.ts';
import type { Setting } from './setting.ts';
import { classNine, isNonBulk } from './without-class.ts';

/** An exception or another name that the shipper may choose, or that another mode of transport asks for. */
export interface Choice {
  readonly when: Fact;
  readonly outcome: Outcome;
}

/**
 * What the law leaves to the shipper: reclassing as a combustible liquid, domestic names for cleaning compounds,
 * corrosion of aluminum alone, a liquid that does not sustain combustion, a marine pollutant on a vessel.
 */
export function choices(outcome: Outcome, hazards: readonly Hazard[], setting: Setting): readonly Choice[] {
  const { input, data, marine } = setting;
  const found =
    outcome.answer === 'not-regulated' ? [] : [...reclass(hazards, setting), ...aluminum(hazards, setting)];
  if (outcome.answer === 'regulated')
    found.push(...domesticNames(outcome, hazards, setting), ...exceptedQuantity(outcome, setting));
  if (outcome.answer === 'not-regulated' && marine.names.length > 0)
    found.push({
      when: fact('by-vessel', data.criteria.marinePollutant.nonBulk.cite, { names: marine.names }),
      outcome: classNine(input.form === 'solid' ? 'solid' : 'liquid', marine.names, setting),
    });
  return found;
}

const onlyClass = (hazards: readonly Hazard[], name: string): boolean =>
  hazards.length > 0 && hazards.every(hazard => hazard.class === name);

function reclass(hazards: readonly Hazard[], { input, data, marine, substances }: Setting): Choice[] {
  const { combustibleLiquid, sustainedCombustion } = data.criteria;
  const { flashPoint } = input;
  if (!onlyClass(hazards, '3') || flashPoint?.kind !== 'temperature') return [];
  const found: Choice[] = [];
  const { celsius } = flashPoint;
  if (
    compare(celsius, combustibleLiquid.reclass.flashPointAtLeast) >= 0 &&
    substances.names.length + substances.unknown.length === 0 &&
    isNonBulk(input, data) === true
  )
    found.push({
      when: fact('reclassed-combustible', combustibleLiquid.reclass.cite, {
        flashPoint: celsius.value,
        limit: combustibleLiquid.reclass.flashPointAtLeast,
      }),
      outcome: notRegulated(
        ...marine.names.slice(0, 1).map(() =>
          fact('marine-pollutant-non-bulk', data.criteria.marinePollutant.nonBulk.cite, {
            names: marine.names,
          }),
        ),
        fact('combustible-non-bulk', combustibleLiquid.nonBulk.cite, {
          litres: data.criteria.nonBulk.litresAtMost,
          kilograms: data.criteria.nonBulk.kilogramsAtMost,
        }),
      ),
    });
  if (compare(celsius, sustainedCombustion.flashPointAbove) > 0)
    found.push({
      when: fact('does-not-sustain-combustion', sustainedCombustion.cite, {
        flashPoint: celsius.value,
        limit: sustainedCombustion.flashPointAbove,
      }),
      outcome: notRegulated(fact('no-sustained-combustion', sustainedCombustion.cite)),
    });
  return found;
}

/** 49 CFR 173.154(d)(1); which metal was attacked stands in the report of the test, not in the record. */
function aluminum(hazards: readonly Hazard[], { data, marine, substances }: Setting): Choice[] {
  const { aluminumAlone } = data.criteria.corrosive;
  if (!onlyClass(hazards, '8') || hazards.some(({ by }) => by !== 'metals')) return [];
  if (marine.names.length + substances.names.length + substances.unknown.length > 0) return [];
  return [
    {
      when: fact('aluminum-alone', aluminumAlone.cite),
      outcome: notRegulated(fact('aluminum-exception', aluminumAlone.cite)),
    },
  ];
}

/**
 * An entry marked A or W alone is subject by aircraft or vessel only, unless it is a hazardous substance (49 CFR
 * 172.101(b)(2), (b)(6)); null for other entries.
 */
export function otherModesAlone({ entry }: Outcome, { substances }: Setting): Fact | null {
  const modes = (entry?.symbols ?? []).filter(symbol => symbol === 'A' || symbol === 'W');
  if (!entry || modes.length === 0 || substances.names.length + substances.unknown.length > 0) return null;
  return fact('other-modes-alone', '49 CFR 172.101(b)(2), (b)(6)', { un: entry.id, modes });
}

/** Excepted quantities (49 CFR 173.4a): small inner packagings of what passenger aircraft may carry. */
function exceptedQuantity(
  { entry, packingGroup, class: name, subsidiary }: Outcome,
  { input, data }: Setting,
): Choice[] {
  const rules = data.criteria.exceptedQuantities;
  const amount = input.pack?.millilitres ?? input.pack?.grams ?? null;
  if (amount === null || !entry || packingGroup === null || name === null) return [];
  if (entry.aircraft.passenger === 'Forbidden' || !rules.classes[packingGroup].includes(name)) return [];
  const poison = packingGroup !== 'III' && [name, ...subsidiary].includes('6.1');
  const inner = poison ? rules.inner.toxicAmount : rules.inner.amount;
  const outer = amount * (input.pack?.count ?? 1);
  if (amount > inner || outer > rules.outer[packingGroup]) return [];
  const values = { amount, inner, outer: rules.outer[packingGroup], unit: rules.inner.unit };
  return [
    {
      when: fact('excepted-quantity', rules.cite, values),
      outcome: notRegulated(fact('excepted-quantity-exception', rules.cite, values)),
    },
  ];
}

function domesticNames(outcome: Outcome, hazards: readonly Hazard[], { input, data }: Setting): Choice[] {
  const form = input.form === 'solid' ? 'solid' : 'liquid';
  return data.generic.domestic.flatMap(({ class: name, form: forForm, un, name: shipping }) => {
    if (name !== outcome.class || forForm !== form || outcome.subsidiary.length > 0) return [];
    const entry = rowOf(un, outcome.packingGroup, data, shipping);
    if (!entry || entry.id === outcome.entry?.id) return [];
    return [
      {
        when: fact('domestic-cleaning-compound', '49 CFR 172.101(b)(3), (c)(10)(i)(F)', { un }),
        outcome: genericOutcome(entry, hazards, [], input, data),
      },
    ];
  });
}

/**
 * Aqueous solutions of alcohol (49 CFR 173.150(e)(2)): not subject where alcohol is at most 24 percent by volume,
 * water at least half, and nothing else in it is a hazardous material. Null where the exception does not hold.
 */
export function aqueousAlcohol(
  input: TransportInput,
  hazards: readonly Hazard[],
  data: TransportData,
): Fact | null {
  const rules = data.criteria.aqueousAlcohol;
  if (!onlyClass(hazards, '3') || input.density === null) return null;
  const isAlcohol = (cas: string | null) => cas !== null && data.substance(cas)?.group === 'alcohol';
  let alcohol = 0;
  let water = 0;
  for (const constituent of input.constituents) {
    if (constituent.water) water += constituent.low.value;
    else if (isAlcohol(constituent.cas)) alcohol += constituent.high.value;
    else if (contributes(constituent, ...anyClass)) return null;
  }
  const byVolume = (alcohol * input.density.value) / rules.alcoholDensityAtLeast;
  const above = (value: number, limit: number) => compare(Exact.decimal(value), limit) > 0;
  if (alcohol === 0 || above(byVolume, rules.alcoholAtMostPercentByVolume)) return null;
  if (!above(water, rules.waterAtLeastPercent) && water !== rules.waterAtLeastPercent) return null;
  return fact('aqueous-alcohol', `${rules.cite}(2)`, {
    percentByVolume: byVolume,
    limit: rules.alcoholAtMostPercentByVolume,
    water,
    waterLimit: rules.waterAtLeastPercent,
  });
}
