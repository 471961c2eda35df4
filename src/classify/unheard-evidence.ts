import { listedClass } from '../notation/listed-class.ts';
import type { Evidence } from '../record/product-record.ts';
import type { ClassResult, Context } from './context.ts';
import { lacksEffect, notUsed, speaksOf } from './evidence.ts';
import type { Warning } from './facts/warning.ts';
import type { EvidenceFault } from './facts/warning-evidence.ts';

/**
 * Warnings on evidence that speaks of no class of the basis or lacks its route, and on entries after the first for one
 * class: none of it is used, and none of it may be lost in silence.
 */
export function unheardEvidence(
  { evidence, basis }: { readonly evidence: readonly Evidence[]; readonly basis: Context['basis'] },
  results: readonly ClassResult[],
): Warning[] {
  const heard = new Map<ClassResult, Evidence>();
  return evidence.flatMap((entry): Warning[] => {
    if (entry.kind === 'reserve') return [];
    const result = results.find(speaksOf(entry));
    const earlier = result && heard.get(result);
    if (result && !earlier) {
      heard.set(result, entry);
      return [];
    }
    // Told as a conflict, with both.
    if (earlier && earlier.hazard?.code !== entry.hazard?.code) return [];
    const listed = listedClass(entry.hazardClass);
    const why: EvidenceFault = result
      ? { kind: 'earlier-entry' }
      : results.some(({ class: name, route }) => name === listed && route)
        ? { kind: 'no-route' }
        : lacksEffect(entry)
          ? { kind: 'no-effect' }
          : { kind: 'no-such-class', basis: basis.title };
    return [notUsed(entry, why, [])];
  });
}
