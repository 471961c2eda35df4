import type { Measurement } from '../../classify/facts/reason-base.ts';
import type { Style } from '../../quantity/print.ts';

/**
 * A measured value as it was judged; where the record gives a side of a limit alone, that with the worse end of it.
 * @param show a value with its unit
 */
export function judgedAt(
  property: string,
  { value, bound }: Measurement,
  { signs }: Pick<Style, 'signs'>,
  show: (value: number) => string,
): string {
  if (!bound) return `${property} ${show(value.value)}`;
  return `${property} ${signs[bound.sign]} ${show(bound.limit.value)}, tomado por su extremo más desfavorable, ${show(value.value)}`;
}

const cups = { closed: 'vaso cerrado', open: 'vaso abierto' } as const;

/** A measured property as it stands in a working, with its method and source where the record gives them. */
export function withSource(
  text: string,
  { method, source, cup }: Pick<Measurement, 'cup'> & { method?: string | null; source?: string | null },
): string {
  const rests = [cup && cups[cup], method, source].filter(Boolean);
  return rests.length > 0 ? `${text} (${rests.join('; ')})` : text;
}
