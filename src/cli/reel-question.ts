import { readMeasure } from '../quantity/measure.ts';
import { usualEnds } from '../roll/bottle.ts';
import type { LeadingEdge, Wound } from '../roll/unwind.ts';
import type { ParsedArguments } from './arguments.ts';

export const edges: readonly LeadingEdge[] = ['top', 'bottom', 'left', 'right'];
export const sides: readonly Wound[] = ['out', 'in'];

/** What a call of `reel` asks, in millimetres. Refuses a value that cannot be read, or two that exclude each other. */
export function reelQuestion(parsed: ParsedArguments, refuse: (message: string) => never) {
  const number = (name: string, least: number, whole = false): number | null => {
    const text = parsed.text(name);
    if (text === null) return null;
    const value = Number(text.replace(/\s*%$/, ''));
    if (!Number.isFinite(value) || value < least || (whole && !Number.isInteger(value)))
      refuse(`--${name} ${text} is not a ${whole ? 'whole ' : ''}number from ${least}`);
    return value;
  };
  const length = (name: string): number | null => {
    const text = parsed.text(name);
    if (text === null) return null;
    const read = readMeasure(text, 'length');
    if (!read.ok || read.value.base.value <= 0)
      return refuse(`--${name} ${text} is not a length, such as 5 mm`);
    return read.value.base.value;
  };
  const [overlap, gap] = [length('overlap'), length('gap')];
  if (overlap !== null && gap !== null) refuse('--overlap and --gap exclude each other');
  return {
    labels: number('labels', 1, true),
    spoilagePercent: number('spoilage', 0),
    speed: number('speed', 0.01),
    grammage: number('grammage', 1),
    ends:
      gap !== null
        ? { kind: 'gap' as const, by: gap }
        : overlap !== null
          ? { kind: 'overlap' as const, by: overlap }
          : usualEnds('overlap'),
    leadingEdge: parsed.text('leading-edge') as LeadingEdge | null,
    wound: parsed.text('wound') as Wound | null,
  };
}
