import { show } from '../../quantity/sum.ts';
import type { Warning } from '../classification.ts';
import type { ClassResult } from '../context.ts';

/** A figure within this share of its limit is called close (common practice, no source). */
const CLOSE = 0.05;

/** Results whose figure lies within 5 % of the limit that decides. */
export function nearLimit(results: readonly ClassResult[]): Warning[] {
  const warnings: Warning[] = [];
  for (const { class: name, route, because } of results) {
    const { total, limit, unit = '', cite } = because;
    if (total === undefined || !limit || Math.abs(total - limit) > CLOSE * Math.abs(limit)) continue;
    const text = `${name}${route ? ` (${route})` : ''}: ${show(total)} ${unit} lies within 5 % of the limit ${show(limit)} ${unit}; batch tolerance may change the class`;
    warnings.push({ id: 'near-limit', text, cite });
  }
  return warnings;
}
