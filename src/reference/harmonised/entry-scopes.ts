import data from '../../../hazard-data/substances/entry-scopes.json' with { type: 'json' };
import type { PhysicalForm } from '../../record/product-record.ts';
import type { HarmonisedEntry } from './entry.ts';

/** What an entry is looked up for: a substance in a mixture. */
export interface SoughtEntry {
  readonly name: string;
  readonly cas: string | null;
  /** Percent of the mixture, 0 to 100. */
  readonly percent: number;
  /** Form of the mixture. */
  readonly form: PhysicalForm;
}

type State = 'gas' | 'solution' | 'massive' | 'solid' | 'liquid';

const { note: _, ...states } = data.states;
const stateOf = new Map<string, State>(
  Object.entries(states).flatMap(([state, list]) => list.map(index => [index, state as State] as const)),
);

/**
 * Index numbers of the entries for solutions of a substance that have no CAS number, or another one, in Table 3
 * (Note B of CLP Annex VI 1.1.3.1).
 */
export const solutionsOf = (cas: string): readonly string[] =>
  data.solutions.filter(solution => solution.cas === cas).map(({ index }) => index);

/**
 * How well an entry suits a substance in a mixture, where Table 3 has several entries for one CAS number: 0 where its
 * name limits it to other concentrations or to another form, 2 where it is that of the form or of solutions
 * (Note B of Annex VI 1.1.3.1), 1 otherwise.
 */
export function suitability(
  entry: HarmonisedEntry,
  { percent, form }: Pick<SoughtEntry, 'percent' | 'form'>,
): 0 | 1 | 2 {
  const scope = scopeOf(entry);
  if (scope && !meets(percent, scope.sign, scope.limit)) return 0;
  const state = stateOf.get(entry.index);
  switch (state) {
    case 'gas':
      return form === 'gas' || percent === 100 ? 1 : 0;
    case 'solution':
      return form !== 'gas' && percent < 100 ? 2 : 0;
    case 'massive':
      return form === 'solid' ? 1 : 0;
    case 'solid':
    case 'liquid':
      return form === state ? 2 : 0;
  }
  return percent < 100 && entry.notes.includes('B') ? 2 : 1;
}

interface Scope {
  readonly sign: string;
  /** Percent. */
  readonly limit: number;
}

/** The concentrations to which an entry is limited, by its name (`nitric acid …% [C > 70 %]`) or by that of its group. */
export function scopeOf({ index, name }: HarmonisedEntry): Scope | null {
  const known = data.concentrations.find(each => each.index === index);
  if (known) return { sign: known.operator, limit: known.percent };
  const scope = /\[(?:C )?([<>≤≥]) ?(\d+(?:[.,]\d+)?) %(?: in aqueous solution)?\]/.exec(name);
  return scope && { sign: scope[1]!, limit: Number(scope[2]!.replace(',', '.')) };
}

function meets(percent: number, sign: string, limit: number): boolean {
  if (sign === '<') return percent < limit;
  if (sign === '≤' || sign === '<=') return percent <= limit;
  return sign === '>' ? percent > limit : percent >= limit;
}
