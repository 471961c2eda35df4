/** A place where the law leaves a choice, and what can be taken. What question and options mean is said in `words/`. */
export interface ReadingEntry {
  /** Paragraphs, US first. */
  readonly cite: string;
  /** What can be taken; the first is the default. */
  readonly options: readonly [string, ...string[]];
}
