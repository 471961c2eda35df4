import type Fraction from 'fraction.js';
import { tellAll } from '../words/telling.ts';
import type { Telling, Words } from '../words/words.ts';
import { answerOf, changeText } from './answer.ts';
import { batchLines } from './batch-text.ts';
import type { Change } from './changes.ts';
import type { Headroom, Step } from './headroom.ts';
import { percentText, readableText } from './percent-text.ts';
import type { State } from './state.ts';

/** The answer, the table of steps and the reason for every breakpoint, for a terminal. */
export function headroomText(headroom: Headroom, words: Words): string {
  const { of, basis, others, steps, breakpoints, notes, domain, current } = headroom;
  const ranges = steps.map(step => rangeText(step, domain));
  const width = Math.max(...ranges.map(({ length }) => length));
  const lines = [
    answerOf(headroom),
    '',
    `${of.name}${of.cas ? ` (${of.cas})` : ''}, ${basis.title}; ${others === 'water' ? 'water makes up the balance' : 'all others in proportion'}`,
    ...steps.map(
      (step, i) =>
        `${holds(step, current[1]) ? '>' : ' '} ${ranges[i]!.padEnd(width)}  ${stateText(step.state)}`,
    ),
  ];
  lines.push(...batchLines(headroom, words));
  if (breakpoints.length > 0) lines.push('', 'Why, going up');
  for (const { at, side, changes, workedAt, constituents } of breakpoints) {
    const telling = tellAll({ constituents });
    lines.push(
      `  ${side === 'at' ? 'from' : 'above'} ${percentText(at)}${side === 'at' ? '' : `, worked at ${percentText(workedAt)}`}`,
    );
    for (const change of changes)
      lines.push(`    ${changeText(change)}${reasonText(change, telling, words)}`);
  }
  if (notes.length > 0) lines.push('', ...notes.map(note => `Note: ${note}`));
  return `${lines.join('\n')}\n`;
}

/** Whether a step holds a percent. */
export function holds({ from, to, fromInclusive, toInclusive }: Step, percent: Fraction): boolean {
  const [low, high] = [percent.compare(from), percent.compare(to)];
  return (low > 0 || (low === 0 && fromInclusive)) && (high < 0 || (high === 0 && toInclusive));
}

/** `from 1 % to below 3 %`, `below 1 %`, `above 5 %`, `exactly 0 %`. */
export function rangeText(
  { from, to, fromInclusive, toInclusive }: Step,
  domain: Headroom['domain'],
): string {
  if (from.equals(to)) return `exactly ${percentText(from)}`;
  const first = from.equals(domain[0]) && fromInclusive;
  const last = to.equals(domain[1]) && toInclusive;
  if (first && last) return `${readableText(from)} to ${percentText(to)}`;
  const upper = `${toInclusive ? 'to' : 'to below'} ${percentText(to)}`;
  if (first) return `${toInclusive ? 'up to' : 'below'} ${percentText(to)}`;
  return `${fromInclusive ? 'from' : 'above'} ${percentText(from)} ${upper}`;
}

/** `Danger: Skin Corr. 1B, Eye Dam. 1; GHS05`. */
export function stateText({ hazards, supplemental, label }: State): string {
  const listed = hazards.length > 0 ? hazards.join(', ') : 'not classified';
  const word = label?.signalWord ? `${label.signalWord}: ` : '';
  return [`${word}${listed}`, label?.pictograms.join(' '), supplemental.join(' ')].filter(Boolean).join('; ');
}

function reasonText(change: Change, telling: Telling, words: Words): string {
  if (!('because' in change) || !change.because) return '';
  const { working } = words.because(change.because, telling);
  return ` - ${working} [${words.cites(change.because.cites)}]`;
}
