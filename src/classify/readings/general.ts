import type { ReadingEntry } from './entry.ts';

/** What every class rests on. */
export const general = {
  'us-specific-limits': { cite: '29 CFR 1910.1200 App. A, A.0.4.3.2, A.0.4.3.3', options: ['ignore', 'use'] },
  'range-end': {
    cite: '29 CFR 1910.1200 App. D, Table D.1, 3 (ranges are allowed; the end is not said); REACH Annex II 3.2.1 (from memory)',
    options: ['worst-end'],
  },
  'below-cut-off': {
    cite: 'A.1.3.3(a), A.2.3.3.1, A.3.3.3.1, A.8.3.4.6, A.10.3.3.1; CLP 3.1.3.3(a), 3.2.3.3.1, 3.3.3.3.1, 3.8.3.4.6, 3.10.3.3.1.1, 4.1.3.1',
    options: ['record-says'],
  },
  'case-by-case': { cite: 'A.0.4.2, A.5.3.2, A.6.3.2, A.7.3.2; CLP Article 6(3)', options: ['with-reason'] },
  'two-cut-offs': { cite: 'UN GHS Tables 3.4.5, 3.6.1, 3.7.1, 3.8.2, 3.9.3', options: ['higher'] },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
