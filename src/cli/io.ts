import type { RecordEnv } from '../record/files.ts';

/** Where a command reads and writes; the process in real use, memory in tests. */
export interface Io {
  /** All of standard input. */
  stdin(): Promise<string>;
  /** Standard input line by line. */
  lines(): AsyncIterable<string>;
  out(text: string): void;
  err(text: string): void;
  /** Today, YYYY-MM-DD. */
  readonly today: string;
  /** Files that records may be read from, where a call allows more than their own folders. */
  readonly files?: RecordEnv;
}

/** Exit status of the contract. */
export const exit = { done: 0, notMet: 1, badInput: 2, defect: 70 } as const;
