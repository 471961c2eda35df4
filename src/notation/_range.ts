import { Exact, hundred } from '../quantity/exact.ts';
import { type Parsed, parsed, unreadable } from './parsed.ts';

/** A range of concentration in percent; null where it is open. */
export interface ConcentrationRange {
  readonly low: Exact | null;
  readonly lowInclusive: boolean;
  readonly high: Exact | null;
  readonly highInclusive: boolean;
}

type Bound = { readonly side: 'low' | 'high'; readonly value: Exact; readonly inclusive: boolean };

const example = 'write C >= 5 % or 2 % <= C < 5 %';
const number = '(\\d+(?:\\.\\d+)?|\\.\\d+)\\s*%?';
const comparison = '(>=|<=|≥|≤|>|<)';
const before = new RegExp(`^${number}\\s*${comparison}\\s*(?=C)`);
const after = new RegExp(`^C\\s*${comparison}\\s*${number}$`);

/** Reads `C >= 5 %`, `2 % ≤ C < 5 %`, `C < 10`: above 0 to 100 percent, the lower bound below the upper. */
export function parseRange(text: string): Parsed<ConcentrationRange> {
  const trimmed = text.trim();
  if (/\d,\d/.test(trimmed)) return unreadable(`decimal comma in "${trimmed}"`, 'write a decimal point');
  const bounds: Bound[] = [];
  const left = before.exec(trimmed);
  if (left) bounds.push(bound(left[1]!, mirror(left[2]!)));
  const rest = left ? trimmed.slice(left[0].length) : trimmed;
  const right = after.exec(rest);
  if (right) bounds.push(bound(right[2]!, right[1]!));
  if (bounds.length === 0 || (!right && rest !== 'C'))
    return unreadable(`"${trimmed}" is no range of concentration`, example);
  if (bounds.length === 2 && bounds[0]!.side === bounds[1]!.side)
    return unreadable(`two ${bounds[0]!.side === 'low' ? 'lower' : 'upper'} bounds in "${trimmed}"`, example);
  const low = bounds.find(({ side }) => side === 'low');
  const high = bounds.find(({ side }) => side === 'high');
  for (const { value } of bounds)
    if (value.value <= 0 || value.value > hundred.value)
      return unreadable(`${value.value} in "${trimmed}" is not above 0 and up to 100 percent`, example);
  if (low && high && low.value.value >= high.value.value)
    return unreadable(`the lower bound is not below the upper in "${trimmed}"`, example);
  return parsed({
    low: low?.value ?? null,
    lowInclusive: low?.inclusive ?? false,
    high: high?.value ?? null,
    highInclusive: high?.inclusive ?? false,
  });
}

/** A range as `parseRange` reads it: `2 % ≤ C < 5 %`. */
export function printRange({ low, lowInclusive, high, highInclusive }: ConcentrationRange): string {
  const upper = high ? ` ${highInclusive ? '≤' : '<'} ${printNumber(high)} %` : '';
  if (!low) return `C${upper}`;
  return high
    ? `${printNumber(low)} % ${lowInclusive ? '≤' : '<'} C${upper}`
    : `C ${lowInclusive ? '≥' : '>'} ${printNumber(low)} %`;
}

/** A decimal without exponent or trailing zeros. */
export const printNumber = ({ value }: Exact): string => {
  const plain = String(value);
  return plain.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : plain;
};

const bound = (written: string, sign: string): Bound => ({
  side: /[>≥]/.test(sign) ? 'low' : 'high',
  value: Exact.decimal(written),
  inclusive: sign.length === 2 || sign === '≥' || sign === '≤',
});

const mirror = (sign: string): string =>
  ({ '<': '>', '<=': '>=', '≤': '≥', '>': '<', '>=': '<=', '≥': '≤' })[sign]!;
