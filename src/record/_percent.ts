import { splitBound } from '../quantity/bound.ts';
import { Exact } from '../quantity/exact.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { converted, either, leaf, list } from './_leaf.ts';
import * as z from './_zod.ts';

/** Low and high percent, equal where no range is given, and whether the range is open at an end. */
export interface PercentInput {
  readonly low: Exact;
  readonly high: Exact;
  readonly lowOpen: boolean;
  readonly highOpen: boolean;
}

const zero = Exact.decimal(0);

function readOne(text: string): Reading<Exact> {
  const number = readNumber(text.trim().replace(/\s*(?:%|% ?w\/w|wt\.? ?%|% \(w\/w\))$/i, ''));
  if (!number.ok) return number;
  const { value } = number.value;
  return value < 0 || value > 100 ? misreads(`\`${text.trim()}\` is not between 0 and 100 %`) : number;
}

/** Reads a percentage or a range as suppliers print them: `1.5`, `5-10`, `5 - 10 %`, `>= 5 - < 10`, `< 1`, `<= 5`. */
export function readPercent(text: string): Reading<PercentInput> {
  const ends =
    /^(.*?[\d%)])\s*(?:[-–—]|\bto\b|\bup to\b|,(?=\s*[<≤]))\s*((?:[<≤⩽=]\s*){0,2}[\d.,]+\s*.*)$/i.exec(
      text.trim(),
    );
  if (!ends) return readSingle(text);
  const [from, to] = [splitBound(ends[1]!), splitBound(ends[2]!)];
  if (from?.sign.startsWith('<') || to?.sign.startsWith('>'))
    return misreads(`\`${text}\` has its ends the wrong way round`, 'write the lower end first: >= 5 - < 10');
  const low = readOne(from?.rest ?? ends[1]!);
  const high = readOne(to?.rest ?? ends[2]!);
  if (!low.ok) return low;
  if (!high.ok) return high;
  if (low.value.exact.gt(high.value.exact))
    return misreads('the range begins with its higher end', 'write the lower number first');
  return reads({
    low: low.value,
    high: high.value,
    lowOpen: from?.sign === '>',
    highOpen: to?.sign === '<',
  });
}

function readSingle(text: string): Reading<PercentInput> {
  const bound = splitBound(text);
  const number = readOne(bound?.rest ?? text);
  if (!number.ok) {
    if (!bound && /^\s*(?:ca\.?|approx\.?|about|~|≈)\s*\S/i.test(text))
      return misreads(
        `\`${text}\` is not exact`,
        'write the range that it means, lower end first: [low, high]',
      );
    return number;
  }
  if (!bound) return reads({ low: number.value, high: number.value, lowOpen: false, highOpen: false });
  if (bound.sign.startsWith('>'))
    return misreads(
      `\`${text.trim()}\` has no upper end`,
      "ask for the upper end, and write both: [low, high]; the supplier's sheet may leave at most 100",
    );
  return reads({ low: zero, high: number.value, lowOpen: false, highOpen: bound.sign === '<' });
}

const what = 'a number, or a range [low, high]';
const end = leaf(readOne, what, '1.5', 'Percent by weight (by volume for a gas)');

const range = list(end, '[1, 2]', 'A range: low and high percent').check(
  z.superRefine(([low, high, ...more], { issues }) => {
    const complain = (message: string, hint?: string) =>
      issues.push({ code: 'custom', message, input: low, params: { hint } });
    if (low === undefined || high === undefined || more.length > 0)
      complain('a range has two numbers', 'write for example [1, 2]');
    else if (low.exact.gt(high.exact))
      complain('the range begins with its higher end', 'write the lower number first');
  }),
);

/** A percentage of a line, or a range of it. */
export const percent: z.ZodMiniType<PercentInput> = either(
  [
    leaf(readPercent, what, '1.5', 'Percent by weight (by volume for a gas): 1.5, 5-10, >= 5 - < 10, < 1'),
    converted(range, ([low, high]) => ({ low: low!, high: high!, lowOpen: false, highOpen: false })),
  ],
  what,
  '1.5',
  'Percent by weight (by volume for a gas): a number, or a range as [low, high] or as suppliers print it',
);
