import type { AllocatedGroup } from '../reference/label-data/allocation.ts';

/** A row of a reading as it was written down. */
export interface ReadingRow extends Readonly<Record<AllocatedGroup, readonly string[]>> {
  readonly hazard: string;
  readonly statement: string | readonly string[] | null;
  readonly signal: 'Danger' | 'Warning' | null;
  readonly symbol: string | readonly string[] | null;
  readonly conditions: Readonly<Record<string, string>>;
  readonly complete: Readonly<Record<string, readonly string[]>>;
  readonly sources: readonly { readonly source: string; readonly agrees: boolean; readonly where?: string }[];
  readonly confidence: string;
  readonly notes?: string;
}

export interface Decision {
  readonly hazards?: readonly string[];
  readonly code?: string;
  readonly field: 'prevention' | 'response' | 'storage' | 'disposal' | 'conditions' | 'fields';
  readonly take: 'first' | 'second';
  readonly why: string;
}

/** What decisions.json holds. */
export interface Decisions {
  readonly decidedOn: string;
  readonly instrument: string;
  readonly cite: string;
  readonly aliases: Readonly<Record<string, string>>;
  readonly classNames: Readonly<Record<string, string>>;
  readonly statementNames: Readonly<Record<string, string>>;
  readonly optionNames: Readonly<Record<string, string>>;
  readonly conditions: Readonly<Record<string, string>>;
  readonly phrases: Readonly<Record<string, readonly string[]>>;
  readonly decisions: readonly Decision[];
  readonly fields: readonly {
    readonly hazards: readonly string[];
    readonly code: string;
    readonly fields: Readonly<Record<string, readonly string[]>>;
    readonly why: string;
  }[];
}

interface Field {
  readonly options: readonly { readonly key: string }[];
  readonly choose: 'one' | 'any';
  readonly default?: readonly string[];
}

/** The part of statements.json that says which fields a statement has. */
export type StatementFields = Readonly<Record<string, { readonly fields?: Readonly<Record<string, Field>> }>>;

/** A reading's row in the common notation. */
export interface PlainRow {
  readonly hazard: string;
  readonly statements: readonly string[];
  readonly signalWord: 'Danger' | 'Warning' | null;
  readonly pictograms: readonly string[];
  readonly codes: Readonly<Record<AllocatedGroup, readonly string[]>>;
  /** Ids of conditions by code. */
  readonly when: Readonly<Record<string, readonly string[]>>;
  /** Options by code and field, where they are not the defaults of the statement. */
  readonly fields: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  readonly row: ReadingRow;
}

const list = (value: string | readonly string[] | null): string[] =>
  value === null ? [] : typeof value === 'string' ? value.split(',') : [...value];

/** Puts a reading's row in the common notation of decisions.json. */
export function plainRow(row: ReadingRow, decisions: Decisions, statements: StatementFields): PlainRow {
  const codes = {
    prevention: row.prevention,
    response: row.response,
    storage: row.storage,
    disposal: row.disposal,
  };
  const all = Object.values(codes).flat();
  const when: Record<string, readonly string[]> = {};
  for (const [code, phrase] of Object.entries(row.conditions)) {
    const ids = decisions.phrases[phrase];
    if (!ids) throw new Error(`decisions.json does not know the condition "${phrase}" of ${row.hazard}`);
    if (ids.length > 0) when[code] = ids;
  }
  const fields: Record<string, Record<string, readonly string[]>> = {};
  for (const [given, words] of Object.entries(row.complete)) {
    const code = all.find(each => each === given || each.split('+').includes(given)) ?? given;
    const keys = words.map(word => decisions.optionNames[word] ?? word);
    for (const [name, field] of Object.entries(statements[code]?.fields ?? {})) {
      const known = keys.filter(key => field.options.some(option => option.key === key));
      const same = JSON.stringify(known) === JSON.stringify(field.default ?? []);
      const chosen = field.choose === 'any' || known.length === 1;
      if (known.length > 0 && chosen && !same) fields[code] = { ...fields[code], [name]: known };
    }
  }
  return {
    hazard: renamed(row.hazard, decisions.classNames),
    statements: list(decisions.statementNames[String(row.statement)] ?? row.statement),
    signalWord: row.signal,
    pictograms: list(row.symbol),
    codes,
    when,
    fields,
    row,
  };
}

function renamed(hazard: string, names: Readonly<Record<string, string>>): string {
  for (const [from, to] of Object.entries(names))
    if (hazard === from || hazard.startsWith(`${from} `)) return to + hazard.slice(from.length);
  return hazard;
}
