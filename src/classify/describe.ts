import type { Constituent } from '../formula/constituent.ts';
import type { Hazard } from '../notation/hazard.ts';
import { type AteKey, ateUnits } from '../notation/parse-ate.ts';
import { printHazard } from '../notation/print-hazard.ts';
import { printLimit } from '../notation/print-limit.ts';
import type { ClassifiedConstituent } from './classification.ts';
import type { IngredientData } from './ingredient.ts';
import type { Resolved } from './resolve.ts';

const ateKeys = Object.keys(ateUnits) as readonly AteKey[];

const printed = new WeakMap<readonly Hazard[], readonly string[]>();

// Entries are read once and shared, so their hazards are printed once.
function printAll(hazards: readonly Hazard[]): readonly string[] {
  const known = printed.get(hazards);
  if (known) return known;
  const made = hazards.map(printHazard);
  printed.set(hazards, made);
  return made;
}

const valued = new WeakMap<IngredientData, readonly string[]>();

/** Estimates, M-factors and specific limits of a constituent, in words. */
function valuesOf(data: IngredientData): readonly string[] {
  const known = valued.get(data);
  if (known) return known;
  const { ate, mFactors, limits } = data;
  const made: string[] = [];
  for (const key of ateKeys) {
    const estimate = ate[key];
    if (estimate) made.push(`ATE ${key} ${estimate.value} ${ateUnits[key]}`);
  }
  for (const kind of mFactors.given) made.push(`M ${kind} ${mFactors[kind]}`);
  for (const limit of limits) made.push(`${printLimit(limit)} %`);
  valued.set(data, made);
  return made;
}

function withMarks(values: readonly string[], { additive, relevant }: Constituent['given']) {
  if (additive && !relevant) return values;
  return [
    ...values,
    ...(additive ? [] : ['not additive for skin and eye']),
    ...(relevant ? ['relevant below its cut-off'] : []),
  ];
}

/** A constituent as it was classified. */
export function describeConstituent(
  { name, cas, low, high, water, given }: Constituent,
  { data }: Resolved,
): ClassifiedConstituent {
  const described = {
    name,
    cas,
    percent: high.value,
    hazards: printAll(data.hazards),
    source: data.source,
    unknown: [...data.unknown],
    values: withMarks(valuesOf(data), given),
    water,
  };
  return low.value === high.value ? described : { ...described, percentRange: [low.value, high.value] };
}
