import type { SpecificLimit } from './limit.ts';

/** A specific limit as Annex VI writes it: `Skin Corr. 1B: 2 <= C < 5`, in percent. */
export function printLimit(limit: SpecificLimit): string {
  const { code, low, lowInclusive, high, highInclusive } = limit;
  if (!high) return `${code}: C ${lowInclusive ? '>=' : '>'} ${low?.value ?? 0}`;
  const from = low ? `${low.value} ${lowInclusive ? '<=' : '<'} ` : '';
  return `${code}: ${from}C ${highInclusive ? '<=' : '<'} ${high.value}`;
}
