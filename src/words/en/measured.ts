import type { Measurement } from '../../classify/facts/reason-base.ts';

/** A measured property as it stands in a working, with its method and source where the record gives them. */
export function withSource(
  text: string,
  { method, source, cup }: Pick<Measurement, 'cup'> & { method?: string | null; source?: string | null },
): string {
  const rests = [cup && `${cup} cup`, method, source].filter(Boolean);
  return rests.length > 0 ? `${text} (${rests.join('; ')})` : text;
}
