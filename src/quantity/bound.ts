import type { Exact } from './exact.ts';

/** On which side of a limit a value lies that was not measured exactly. */
export type BoundSign = '<' | '<=' | '>' | '>=';

/** A value known only to lie on one side of a limit, as a supplier's sheet prints `> 93 C`. */
export interface Bound {
  readonly sign: BoundSign;
  /** In the unit of the value. */
  readonly limit: Exact;
}

/** Takes the sign off a text such as `> 93 C`; null where none leads. */
export function splitBound(text: string): { readonly sign: BoundSign; readonly rest: string } | null {
  const match = /^\s*(<=|>=|=<|=>|[<>≤≥⩽⩾])\s*(?=\S)/.exec(text);
  if (!match) return null;
  const sign = /[<≤⩽]/.test(match[1]!) ? '<' : '>';
  const inclusive = match[1]!.includes('=') || /[≤≥⩽⩾]/.test(match[1]!);
  return { sign: `${sign}${inclusive ? '=' : ''}` as BoundSign, rest: text.slice(match[0].length) };
}
