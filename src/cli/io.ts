import type { RecordEnv } from '../record/files.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

/** Where a command reads and writes; the process in real use, memory in tests. */
export interface Io {
  /** All of standard input. */
  stdin(): Promise<string>;
  /** Standard input line by line. */
  lines(): AsyncIterable<string>;
  /** Writes to standard output; a promise where its reader is behind, to be awaited by whoever writes much. */
  out(text: string): void | Promise<void>;
  err(text: string): void;
  /** Findings that were said on standard error, for the JSON document of a failure. */
  found?(diagnostics: readonly Diagnostic[]): void;
  /** Today, YYYY-MM-DD. */
  readonly today: string;
  /** Files that records are read from. */
  readonly files: RecordEnv;
}

/** Exit status of the contract. */
export const exit = { done: 0, notMet: 1, badInput: 2, defect: 70 } as const;
