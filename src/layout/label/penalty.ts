import type { Die } from '../die/die.ts';
import type { Fitted } from './fit.ts';

/** Mean width of a character in times the size, of running English text in a condensed face. */
const MEAN_CHARACTER = 0.42;
const COMFORTABLE = { least: 30, most: 75 };

/** Columns narrower than this, in characters, are taken only where the text would be too small in wider ones. */
const NARROW = 26;

/**
 * Whether columns are wide enough to be read with ease. It depends on the width of the die and the size of text alone,
 * so that more height never takes a plain arrangement away.
 */
export const isPlain = ({ measures, composition }: Fitted): boolean =>
  composition.measure === 0 || composition.measure / (MEAN_CHARACTER * measures.em) >= NARROW;

/**
 * How far an arrangement is from what reads well: lines of some 30 to 75 characters, columns that end together, bars
 * at full size, bands on upright labels and panels on wide ones. The weights are judgement, no source.
 */
export function penalty({ plan, measures, display, composition }: Fitted, die: Die): number {
  const characters = composition.measure / (MEAN_CHARACTER * measures.em);
  const short = Math.max(0, COMFORTABLE.least - characters) * 0.02;
  const long = Math.max(0, characters - COMFORTABLE.most) * 0.008;
  const uneven = (1 - composition.balance) * 0.35;
  const bars = (1 - display.bars) * 1.2;
  const wide = die.width / die.height;
  const shape = plan.kind === 'bands' ? Math.max(0, wide - 1.5) * 0.25 : Math.max(0, 1.3 - wide) * 0.5;
  const empty = (composition.slack / die.height) * 0.3;
  return short + long + uneven + bars + shape + empty;
}
