/** What was read from a piece of text, or why it could not be and what would be right. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly message: string; readonly hint?: string; readonly code?: string };

export const reads = <T>(value: T): Reading<T> => ({ ok: true, value });
/** @param code of the finding, where it is not `bad-value`. */
export const misreads = (message: string, hint?: string, code?: string): Reading<never> => ({
  ok: false,
  message,
  hint,
  code,
});
