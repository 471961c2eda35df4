import type Fraction from 'fraction.js';
import { decimalText } from '../quantity/number.ts';
import type { BatchSize, FormulaLine, PhysicalForm } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { lineError, lineName } from './_findings.ts';
import { isWater, waterDensity } from './water.ts';

/** What percentages are of: weight, or volume where the form is gas. */
export type Basis = 'weight' | 'volume';

export const basisOf = (form: PhysicalForm): Basis => (form === 'gas' ? 'volume' : 'weight');

/** Grams of a weighed or metered line, millilitres where the basis is volume; a finding where neither can be had. */
export function lineAmount(line: FormulaLine, basis: Basis): Fraction | Diagnostic {
  const { amount } = line;
  if (amount.kind === 'mass') {
    if (basis === 'weight') return amount.grams.exact;
    return lineError(
      line,
      'weight-in-gas',
      `\`${amount.written}\` of ${lineName(line)} is a weight, but the percentages of a gas are by volume`,
      'give a volume or a percentage',
    );
  }
  if (amount.kind !== 'volume') throw new TypeError('not a weighed or metered line');
  if (basis === 'volume') return amount.millilitres.exact;
  const density =
    line.density ?? (line.kind === 'substance' && isWater(line.name, line.cas) ? waterDensity : null);
  if (density) return amount.millilitres.exact.mul(density.exact);
  return lineError(
    line,
    'density-missing',
    `\`${amount.written}\` of ${lineName(line)} is a volume, and its density is not given`,
    line.kind === 'substance'
      ? 'add `density: … g/mL` to the line, or give the amount as a weight'
      : `add \`density: … g/mL\` to the line or to ${line.material.file}, or give the amount as a weight`,
  );
}

/** Grams of a batch, millilitres where the basis is volume; null where a density or a volume would be needed. */
export function batchAmount(batch: BatchSize, density: Fraction | null, basis: Basis): Fraction | null {
  if (basis === 'volume') return batch.kind === 'volume' ? batch.millilitres.exact : null;
  if (batch.kind === 'mass') return batch.grams.exact;
  return density ? batch.millilitres.exact.mul(density) : null;
}

/** A percentage for a message: `4 %`. */
export const percentText = (percent: Fraction): string => `${decimalText(percent)} %`;
