import type { ClassResult } from '../context.ts';
import { bySource } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import type { Resolved } from '../resolve.ts';
import { isMoreSevere } from '../worst.ts';

/**
 * Where hazards or values of the record replace those of a harmonised entry and say less: what is lost, and the classes that the data
 * of the entry, its specific limits applied, would make more severe. One warning a constituent.
 * @param within results with the data of one constituent replaced by those of its entry.
 */
export function recordAgainstEntry(
  resolved: readonly Resolved[],
  results: readonly ClassResult[],
  within: (replaced: readonly Resolved[]) => readonly ClassResult[],
): Warning[] {
  if (resolved.every(({ replaced }) => replaced === null)) return [];
  return resolved.flatMap(({ replaced }, constituent) => {
    if (!replaced) return [];
    const { index, act, lost, by, source } = replaced;
    const others = within(
      resolved.map((each, i) => (i === constituent ? { ...each, data: replaced.data } : each)),
    );
    const worse = others.flatMap(other => {
      const result = results.find(each => each.class === other.class && each.route === other.route);
      if (!result || other.outcome !== 'classified' || !isMoreSevere(other, result)) return [];
      const now = result.outcome === 'classified' ? result.hazard.code : result.outcome;
      return [{ class: other.class, route: other.route ?? null, now, within: other.hazard.code }];
    });
    const cites = [bySource('CLP Annex VI Table 3')];
    return [{ id: 'record-replaces-entry', constituent, source, index, act, by, lost, worse, cites }];
  });
}
