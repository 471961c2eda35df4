import type { sheet } from './en/sheet.ts';

type Widened<T> = T extends string
  ? string
  : T extends (...parameters: never[]) => unknown
    ? T
    : { readonly [Key in keyof T]: Widened<T[Key]> };

/** Sentences of our own for the data sheet; `{name}` is a field. English sets the shape that a language fills. */
export type SheetWords = Widened<typeof sheet>;
