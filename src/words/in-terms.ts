/** A word of the law or of a table in the language of the terms; as the data hold it where the language has none. */
export const inTerms = (terms: Readonly<Record<string, string>>, english: string): string =>
  terms[english] ?? english;
