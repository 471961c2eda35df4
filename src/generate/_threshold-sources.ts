import type * as z from 'zod/mini';

// Chapters of classes that follow from tests, and our own reading, which says so in its paragraph.
const without = new Set(['physicalClasses', 'physicalScreening']);

/** Every block that names a paragraph says, or a block around it, whether the paragraph was read. */
export function checkSources<T extends object>({ value, issues }: z.core.ParsePayload<T>): void {
  for (const [key, section] of Object.entries(value)) {
    if (without.has(key)) continue;
    for (const path of withoutSource(section, [key]))
      issues.push({ code: 'custom', path, input: section, message: 'no source here or around' });
  }
}

function withoutSource(block: unknown, path: string[]): string[][] {
  if (typeof block !== 'object' || block === null || 'source' in block) return [];
  if ('cite' in block) return [path];
  return Object.entries(block).flatMap(([key, inner]) => withoutSource(inner, [...path, key]));
}
