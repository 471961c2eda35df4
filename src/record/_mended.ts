import type * as z from './_zod.ts';

/** Keys without which amounts would be reckoned wrongly, so that what follows from them would be no finding. */
const reckonedWith = new Set(['percent', 'amount', 'density', 'batch', 'use', 'form', 'reacts']);

/**
 * A record without the values that are wrong in it, so that the stages behind can say at once what they find in the
 * rest; null where an amount or a line is among them.
 */
export function mended<T>(
  schema: z.ZodMiniType<T>,
  value: unknown,
  issues: readonly z.core.$ZodIssue[],
): T | null {
  const rest: unknown = structuredClone(value);
  for (const issue of issues) {
    const paths =
      issue.code === 'unrecognized_keys' ? issue.keys.map(key => [...issue.path, key]) : [issue.path];
    for (const path of paths) if (!without(rest, path)) return null;
  }
  const checked = schema.safeParse(rest);
  return checked.success ? checked.data : null;
}

/** Takes away the nearest key above a value. */
function without(rest: unknown, path: readonly PropertyKey[]): boolean {
  const depth = path.findLastIndex(key => typeof key === 'string');
  const key = path[depth];
  if (key === undefined || key === 'formula' || reckonedWith.has(String(key))) return false;
  let holder = rest as Record<PropertyKey, unknown>;
  for (const step of path.slice(0, depth)) {
    const next = holder[step];
    // Taken away with a value around it.
    if (typeof next !== 'object' || next === null) return true;
    holder = next as Record<PropertyKey, unknown>;
  }
  delete holder[key];
  return true;
}
