import { show } from '../../quantity/sum.ts';
import type { Warning } from '../classification.ts';
import type { ClassResult } from '../context.ts';

/** A figure within this share of its limit is called close (common practice, no source). */
const CLOSE = 0.05;

/** Results whose figure lies within 5 % of the limit that decides. */
export const nearLimit = (results: readonly ClassResult[]): Warning[] =>
  results.flatMap(({ class: name, route, because }) => {
    const { total, limit, unit } = because;
    if (total === undefined || limit === undefined || limit === 0) return [];
    if (Math.abs(total - limit) > CLOSE * Math.abs(limit)) return [];
    return [
      {
        id: 'near-limit',
        text: `${name}${route ? ` (${route})` : ''}: ${show(total)} ${unit ?? ''} lies within 5 % of the limit ${show(limit)} ${unit ?? ''}; batch tolerance may change the class`,
        cite: because.cite,
      },
    ];
  });
