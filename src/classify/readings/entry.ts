/** A place where the law leaves a choice, and what is taken. */
export interface ReadingEntry {
  /** Paragraphs, US first. */
  readonly cite: string;
  readonly question: string;
  /** What can be taken; the first is the default. */
  readonly options: Readonly<Record<string, string>>;
}
