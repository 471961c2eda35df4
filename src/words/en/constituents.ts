import type { ClassifiedConstituent } from '../../classify/classification.ts';
import type { DataSource } from '../../classify/ingredient.ts';
import { type AteKey, ateUnits } from '../../notation/parse-ate.ts';
import { printLimit } from '../../notation/print-limit.ts';

const ateKeys = Object.keys(ateUnits) as readonly AteKey[];

/** Where the data of a constituent come from. */
export function source(from: DataSource): string {
  switch (from.kind) {
    case 'record':
      return from.named === null ? 'record' : `record: ${from.named}`;
    case 'harmonised':
      return `CLP Annex VI ${from.index}, ${from.act}${from.added ? ' with values from the record' : ''}`;
    case 'water':
      return 'water';
    case 'none':
      return from.named ?? 'no data';
  }
}

/** Estimates, M-factors, specific limits and marks of a constituent. */
export function values({ data, additive, relevant }: ClassifiedConstituent): readonly string[] {
  const { ate, mFactors, limits } = data;
  const told: string[] = [];
  for (const key of ateKeys) {
    const estimate = ate[key];
    if (estimate) told.push(`ATE ${key} ${estimate.value} ${ateUnits[key]}`);
  }
  for (const kind of mFactors.given) told.push(`M ${kind} ${mFactors[kind]}`);
  for (const limit of limits) told.push(`${printLimit(limit)} %`);
  if (!additive) told.push('not additive for skin and eye');
  if (relevant) told.push('relevant below its cut-off');
  return told;
}
