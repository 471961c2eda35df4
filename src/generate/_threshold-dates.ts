import type * as z from 'zod/mini';

const DATE = /^\d{4}-\d\d-\d\d$/;

interface File {
  readonly texts: Readonly<Record<string, unknown>>;
  readonly figures: object;
}

/**
 * A figure changes with a text: each of its dates is that of a text held, so that a reason names the text that has the
 * figure. That of the first text is held to be there from its date, unless the figure came later.
 */
export function checkDates<T extends File>({ value, issues }: z.core.ParsePayload<T>): void {
  const known = Object.keys(value.texts);
  const visit = (node: unknown, path: string[]): void => {
    if (typeof node !== 'object' || node === null) return;
    for (const [name, inner] of Object.entries(node)) {
      if (!DATE.test(name)) visit(inner, [...path, name]);
      else if (!known.includes(name))
        issues.push({
          code: 'custom',
          path: [...path, name],
          input: inner,
          message: 'no text held is of this date',
        });
    }
  };
  visit(value.figures, ['figures']);
}
