import type { ReadingEntry } from './entry.ts';

/** Categories that an authority may leave out (UN GHS 1.1.3.1.5.4, from memory). */
export const buildingBlocks = {
  'building-block-acute-5': { cite: 'UN GHS 1.1.3.1.5.4 (from memory)', options: ['on', 'off'] },
  'building-block-skin-3': { cite: 'UN GHS 1.1.3.1.5.4 (from memory)', options: ['on', 'off'] },
  'building-block-eye-2b': { cite: 'UN GHS 1.1.3.1.5.4 (from memory)', options: ['on', 'off'] },
  'building-block-asp-2': { cite: 'UN GHS 1.1.3.1.5.4 (from memory)', options: ['on', 'off'] },
  'building-block-aquatic-acute-2-3': { cite: 'UN GHS 1.1.3.1.5.4 (from memory)', options: ['on', 'off'] },
  'building-block-flam-liq-4': { cite: 'UN GHS 1.1.3.1.5.4 (from memory)', options: ['on', 'off'] },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
