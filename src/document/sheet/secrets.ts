import type { Constituent } from '../../formula/constituent.ts';
import { typographicWith } from '../../quantity/print.ts';
import { inTerms } from '../../words/in-terms.ts';
import type { Telling } from '../../words/words.ts';
import { spokenName } from '../spoken-name.ts';
import { fill } from './fill.ts';
import { sheetForm } from './form.ts';
import type { SheetInput } from './input.ts';

/** What a copy that leaves the shop calls the constituents, and what it keeps back (29 CFR 1910.1200(i)(1); CLP, Article 24). */
export interface Secrets {
  /** Name as the sheet tells it, by the place of the constituent. */
  name(constituent: number): string;
  /** CAS number as the sheet tells it; null where there is none or where it is withheld. */
  cas(constituent: number): string | null;
  /** Constituents whose identity is claimed. */
  readonly identity: ReadonlySet<number>;
  /** Constituents whose concentration is claimed. */
  readonly percent: ReadonlySet<number>;
}

const claimed = (constituents: readonly Constituent[], part: 'identity' | 'percent'): ReadonlySet<number> =>
  new Set(constituents.flatMap(({ tradeSecret }, at) => (tradeSecret?.[part] ? [at] : [])));

/** The claims of the formula. */
export function secretsOf({
  formula,
  classification,
  words,
  record,
}: Pick<SheetInput, 'formula' | 'classification' | 'words' | 'record'>): Secrets {
  const { constituents } = classification;
  const identity = claimed(formula.constituents, 'identity');
  const percent = claimed(formula.constituents, 'percent');
  const numbers = new Map([...identity].map((constituent, at) => [constituent, at + 1]));
  const name = (at: number): string => {
    const number = numbers.get(at);
    if (number === undefined)
      return inTerms(words.sheet.terms.names, spokenName(record.spokenNames, constituents[at]!));
    const { shownAs, alternativeName } = formula.constituents[at]!.tradeSecret!;
    const { secrets } = sheetForm(classification.basis.id);
    const allowed = secrets === 'alternative-name' ? alternativeName?.name : undefined;
    return allowed ?? shownAs ?? fill(words.sheet.composition.secretName, { number });
  };
  const cas = (at: number): string | null => (identity.has(at) ? null : constituents[at]!.cas);
  return { name, cas, identity, percent };
}

/** How reasons and warnings are told on the sheet: no amount where any is withheld, for one follows from the others. */
export function tellingOf(
  input: Pick<SheetInput, 'formula' | 'classification' | 'words' | 'record'>,
): Telling {
  const { name, percent } = secretsOf(input);
  return { names: name, style: typographicWith(input.words.decimalMark), amounts: percent.size === 0 };
}
