/** Severity of a finding: an error stops the run, a warning is for the reviewer, a note explains. */
export type Severity = 'error' | 'warning' | 'note';

/** A place in an input file; line and column count from 1. */
export interface Position {
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
}

/** One finding about the input, the law or an output, before it is worded for a terminal or for JSON. */
export interface Diagnostic {
  /** Stable identifier in kebab case, for example `unknown-key`. */
  readonly code: string;
  readonly severity: Severity;
  /** What is wrong, with the offending text. */
  readonly message: string;
  /** What would be right. */
  readonly hint?: string;
  readonly at?: Position;
  /** Path inside the record, for example `formula[2].percent`. */
  readonly path?: string;
  /** The source line that `at` points to. */
  readonly excerpt?: string;
  /** Paragraph of law or clause of a standard. */
  readonly cite?: string;
}

/** A value or the findings that prevent it; findings may also accompany a value. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T; readonly diagnostics: readonly Diagnostic[] }
  | { readonly ok: false; readonly diagnostics: readonly Diagnostic[] };

/** A result with its findings, if any. */
export const succeed = <T>(value: T, diagnostics: readonly Diagnostic[] = []): Outcome<T> => ({
  ok: true,
  value,
  diagnostics,
});

/** No result: at least one of the findings is an error. */
export const fail = (...diagnostics: readonly Diagnostic[]): Outcome<never> => ({ ok: false, diagnostics });

/** Whether any finding is an error. */
export const hasErrors = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some(({ severity }) => severity === 'error');

/** The message of the first error; empty where there is none. */
export const firstError = (diagnostics: readonly Diagnostic[]): string =>
  diagnostics.find(each => hasErrors([each]))?.message ?? '';
