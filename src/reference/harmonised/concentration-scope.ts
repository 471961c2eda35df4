import type { HarmonisedEntry } from './entry.ts';

/**
 * How well an entry suits a substance that makes up so many percent of a mixture, where Table 3 has several
 * entries for one CAS number: 0 where its name limits it to other concentrations, 2 where it is the entry for
 * solutions (Note B of Annex VI 1.1.3.1), 1 otherwise.
 * @param percent 0 to 100.
 */
export function suitability(entry: HarmonisedEntry, percent: number): 0 | 1 | 2 {
  const scope = scopeOf(entry);
  if (scope && !meets(percent, scope.sign, scope.limit)) return 0;
  return percent < 100 && entry.notes.includes('B') ? 2 : 1;
}

/** The concentrations to which the name of an entry limits it: `nitric acid …% [C > 70 %]`; limit in percent. */
export function scopeOf({ name }: HarmonisedEntry): { readonly sign: string; readonly limit: number } | null {
  const scope = /\[(?:C )?([<>≤≥]) ?(\d+(?:[.,]\d+)?) %(?: in aqueous solution)?\]/.exec(name);
  return scope && { sign: scope[1]!, limit: Number(scope[2]!.replace(',', '.')) };
}

function meets(percent: number, sign: string, limit: number): boolean {
  if (sign === '<') return percent < limit;
  if (sign === '≤') return percent <= limit;
  return sign === '>' ? percent > limit : percent >= limit;
}
