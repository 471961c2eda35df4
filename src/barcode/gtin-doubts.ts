import type { PrefixNote } from './gs1-prefix.ts';
import { examineNumber } from './gtin.ts';

/** Why a number with a right check digit may be the wrong one for what it stands on. */
export type GtinDoubt =
  /** Its first digits are kept for another use: restricted circulation, books, coupons, examples. */
  | { readonly kind: 'prefix'; readonly prefix: PrefixNote }
  /** The number of a grouping on a single pack. */
  | { readonly kind: 'grouping-on-pack'; readonly contained: string }
  /** An item of variable measure. */
  | { readonly kind: 'variable-measure' }
  /** The number of a case that holds another item than the pack. */
  | { readonly kind: 'other-content'; readonly contained: string; readonly pack: string };

const fourteen = (gtin: string): string => gtin.padStart(14, '0');

/**
 * Doubts about the GTIN of a pack or of a case (GS1 General Specifications 1.4, 2.1, 7.9).
 * @param on what carries the number.
 * @param pack GTIN of the pack in the case; null where it has none.
 */
export function gtinDoubts(
  gtin: string,
  on: 'pack' | 'case',
  pack: string | null = null,
): readonly GtinDoubt[] {
  const reading = examineNumber(gtin).readings.find(each => each.valid && each.kind.startsWith('GTIN'));
  if (!reading) return [];
  const doubts: GtinDoubt[] = reading.prefixes.map(prefix => ({ kind: 'prefix', prefix }));
  if (reading.indicator === 9) doubts.push({ kind: 'variable-measure' });
  const { contained } = reading;
  if (contained && on === 'pack') doubts.push({ kind: 'grouping-on-pack', contained });
  if (contained && on === 'case' && pack && fourteen(contained) !== fourteen(pack))
    doubts.push({ kind: 'other-content', contained, pack });
  return doubts;
}
