import type { ClassResult } from '../context.ts';
import { figureOf } from '../facts/figure.ts';
import type { Warning } from '../facts/warning.ts';

/** A figure within this share of its limit is called close (common practice, no source). */
const CLOSE = 0.05;

/** Results whose figure lies within 5 % of the limit that decides. */
export function nearLimit(results: readonly ClassResult[]): Warning[] {
  const warnings: Warning[] = [];
  for (const { class: name, route = null, because } of results) {
    const figure = figureOf(because);
    if (!figure?.limit || Math.abs(figure.total - figure.limit) > CLOSE * Math.abs(figure.limit)) continue;
    const { total, limit, unit } = figure;
    warnings.push({
      id: 'near-limit',
      class: name,
      route,
      figure: { total, limit, unit },
      cites: because.cites,
    });
  }
  return warnings;
}
