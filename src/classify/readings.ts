import { acuteToxicity } from './readings/acute-toxicity.ts';
import { buildingBlocks } from './readings/building-blocks.ts';
import type { ReadingEntry } from './readings/entry.ts';
import { general } from './readings/general.ts';
import { otherHealth } from './readings/other-health.ts';
import { physicalAndEnvironmental } from './readings/physical-and-environmental.ts';
import { skinAndEye } from './readings/skin-and-eye.ts';
import { supplemental } from './readings/supplemental.ts';

/** Every reading that the rules depend on. The options after the first can be chosen in the record with a reason. */
export const readings = {
  ...general,
  ...acuteToxicity,
  ...skinAndEye,
  ...otherHealth,
  ...physicalAndEnvironmental,
  ...supplemental,
  ...buildingBlocks,
} satisfies Readonly<Record<string, ReadingEntry>>;

export type ReadingId = keyof typeof readings;

/** Every reading with its id, in the order of the law. */
export const readingEntries = Object.entries(readings) as readonly (readonly [ReadingId, ReadingEntry])[];

const defaults = new Map(readingEntries.map(([id, { options }]) => [id, options[0]]));

/** What is taken when the record makes no choice: the first option. */
export const defaultOf = (id: ReadingId): string => defaults.get(id)!;
