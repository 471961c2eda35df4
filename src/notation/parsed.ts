/** What reading a notation gives: the value, or what is wrong and what would be right. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly message: string; readonly hint: string };

export const parsed = <T>(value: T): Parsed<T> => ({ ok: true, value });

export const unreadable = (message: string, hint: string): Parsed<never> => ({ ok: false, message, hint });
