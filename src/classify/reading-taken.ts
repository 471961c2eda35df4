import type { Reading } from './classification.ts';
import { defaultOf, type ReadingId, readingEntries } from './readings.ts';

const byDefault = new Map(
  readingEntries.map(([id, { cite }]): [ReadingId, Reading] => [id, { id, taken: defaultOf(id), cite }]),
);

/** A reading with what is taken for it. */
export function readingOf(id: ReadingId, take: (id: ReadingId) => string): Reading {
  const reading = byDefault.get(id)!;
  const taken = take(id);
  return taken === reading.taken ? reading : { ...reading, taken };
}
