/** A place in a statement that the law leaves to be chosen or filled. */
export interface StatementField {
  readonly options: readonly { readonly key: string; readonly text: string }[];
  readonly choose: 'one' | 'any';
  readonly between?: string;
  readonly last?: string;
  /** What stands before the last text instead, by that text: in Spanish `e` before `internacional`. */
  readonly lastBefore?: Readonly<Record<string, string>>;
  /** Follows a field that is not empty. */
  readonly after?: string;
  /** Option keys taken where nobody chooses. */
  readonly default: readonly string[];
  /** No default: without words from the maker the statement is incomplete. */
  readonly required?: boolean;
  /** How words of the maker's own are set in, with `{words}`. */
  readonly named?: string | undefined;
}

/** A hazard, supplemental or precautionary statement as the law prescribes it. */
export interface StatementText {
  /** With `{field}` where something is chosen or filled. */
  readonly text: string;
  readonly fields?: Readonly<Record<string, StatementField>>;
  readonly group?: string;
  /** Codes that a combined statement is made of. */
  readonly parts?: readonly string[];
  /** BCP 47, where the text is not in the language of the document. */
  readonly language?: string;
}

export interface StatementFile {
  readonly instrument: string;
  readonly hazard: Readonly<Record<string, StatementText>>;
  readonly supplemental?: Readonly<Record<string, StatementText>>;
  readonly precautionary: Readonly<Record<string, StatementText>>;
}
