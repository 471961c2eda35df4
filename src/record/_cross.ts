import * as z from './_zod.ts';

/** A group of keys as far as it could be read; values that were wrong may be of any type. */
export type Partly = Readonly<Record<string, unknown>>;
type Complain = (path: readonly (string | number)[], message: string, hint?: string) => void;

/**
 * A rule across the keys of one group. It runs also where single values were wrong, so that all problems of a
 * file are found at once.
 */
export function across<T extends z.ZodMiniType>(
  schema: T,
  rule: (value: Partly, complain: Complain) => void,
): T {
  const check = z.superRefine(
    (value, context) => {
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return;
      rule(value as Partly, (path, message, hint) =>
        context.issues.push({ code: 'custom', message, path: [...path], input: value, params: { hint } }),
      );
    },
    { when: () => true } as z.core.$ZodSuperRefineParams,
  );
  return schema.check(check);
}
