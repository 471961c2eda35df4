/** What is told of a document in another language than that of the reviewer. */
export interface SpokenWords {
  /** Texts of the record that stay as they are written, by key, and names of constituents. */
  untranslated(keys: readonly string[], names: readonly string[], language: string): string;
  /** Where the record gives them. */
  translationsHint(language: string): string;
  /** Statements without a text in the language. */
  inEnglish(codes: readonly string[], language: string): string;
  fromMemory(codes: readonly string[], language: string): string;
  /** Statements read in one copy alone. */
  oneCopy(codes: readonly string[], language: string): string;
  /** A sheet that its law asks for in English. */
  readonly sheetInEnglish: string;
  /** A label of the United States to which the language is added. */
  labelInEnglish(language: string): string;
  /** There is no room for the addition. */
  noRoom(language: string): string;
  /** The purpose has no label in the language. */
  noLabel(language: string, purpose: string): string;
}
