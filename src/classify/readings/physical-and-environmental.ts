import type { ReadingEntry } from './entry.ts';

/** Physical hazards, App. B; CLP and UN parts 2 and 4. */
export const physicalAndEnvironmental = {
  'boiling-point-missing': { cite: 'Table B.6.1; CLP Table 2.6.1', options: ['category-2'] },
  'open-cup': {
    cite: 'B.6.3; CLP and UN 2.6.4.4',
    options: ['severe-side', 'as-closed'],
  },
  'physical-screening': {
    cite: 'App. B, B.1.3.4, B.8.3.3, B.9.3, B.12.3, B.13.3, B.17.3.1, each for its class; CLP and UN part 2',
    options: ['by-ingredients'],
  },
  'm-factor-missing': { cite: 'CLP 4.1.3.5.5.5', options: ['one'] },
  'unknown-aquatic': { cite: 'CLP 4.1.3.6.1', options: ['all'] },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
