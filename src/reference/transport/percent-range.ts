/** One end of a range. */
export interface RangeEnd {
  readonly percent: number;
  /** Whether the end itself belongs to the range. */
  readonly included: boolean;
}

/** A range of concentration as an entry of the table states it; null where it is open to that side. */
export interface PercentRange {
  readonly from: RangeEnd | null;
  readonly to: RangeEnd | null;
}

const number = String.raw`(\d*\.?\d+)\s*(?:percent|per cent|%)`;
const lower = new RegExp(
  String.raw`(not less than|at least|(?<!not )more than)\s+${number}|${number}\s+or more`,
  'gi',
);
const upper = new RegExp(String.raw`(not more than|not exceeding|(?<!not )less than)\s+${number}`, 'gi');

/** Whether a description speaks of a percentage at all. */
export const speaksOfPercent = (description: string): boolean =>
  /\d\s*(?:percent|per cent|%)/i.test(description);

/**
 * The range that a description of 49 CFR 172.101 states, such as `not less than 20 percent but not more than 40
 * percent`; null where it states none or more than one.
 */
export function statedRange(description: string): PercentRange | null {
  const lows = [...description.matchAll(lower)];
  const highs = [...description.matchAll(upper)];
  if (lows.length + highs.length === 0 || lows.length > 1 || highs.length > 1) return null;
  const [low] = lows;
  const [high] = highs;
  return {
    from: low ? { percent: Number(low[2] ?? low[3]), included: !/^more/i.test(low[1] ?? '') } : null,
    to: high ? { percent: Number(high[2]), included: !/^less/i.test(high[1]!) } : null,
  };
}

/** `> 10 < 50`, `>= 20 <= 40`; empty for no range. */
export const printRange = (range: PercentRange | null): string =>
  [
    range?.from ? `${range.from.included ? '>=' : '>'} ${range.from.percent}` : '',
    range?.to ? `${range.to.included ? '<=' : '<'} ${range.to.percent}` : '',
  ]
    .filter(part => part !== '')
    .join(' ');

/** The inverse of `printRange`. */
export function readRange(text: string): PercentRange | null {
  if (text === '') return null;
  const from = />(=?) (\S+)/.exec(text);
  const to = /<(=?) (\S+)/.exec(text);
  return {
    from: from ? { percent: Number(from[2]), included: from[1] === '=' } : null,
    to: to ? { percent: Number(to[2]), included: to[1] === '=' } : null,
  };
}
