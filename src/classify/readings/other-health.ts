import type { ReadingEntry } from './entry.ts';

/** Sensitization to aspiration, A.4 to A.10; CLP and UN 3.4 to 3.10. */
export const otherHealth = {
  'sensitizer-category': { cite: 'Table A.4.5; CLP Table 3.4.5', options: ['category-1'] },
  'carcinogen-2-label': { cite: 'Note to Table A.6.1', options: ['show', 'sheet-only'] },
  'reproductive-effects': { cite: 'CLP 3.7.3, Annex VI 1.1.2.1.2', options: ['apart'] },
  'stot-se-3-sum': { cite: 'A.8.3.4.5; CLP 3.8.3.4.5', options: ['twenty-percent'] },
  'stot-se-3-beside-1-2': { cite: 'A.8.2.2.1(e); CLP 3.8.2.2.1(e)', options: ['both'] },
  'stot-worst-category': {
    cite: 'A.8.3.4.1, A.9.3.4.1, C.2.2.1; CLP 3.8.3.4.1, 3.9.3.4.1',
    options: ['both', 'worst-alone'],
  },
  'stot-1-below-ten': { cite: 'Tables A.8.2, A.9.3', options: ['table'] },
  'aspiration-viscosity': { cite: 'A.10.3.3.2.1; CLP 3.10.3.3.1.2', options: ['insufficient-data'] },
  'aspiration-layers': { cite: 'A.10.3.3.2.2; CLP 3.10.3.3.1.3', options: ['whole'] },
  'aspiration-aerosol': { cite: 'A.10.1.5.3; CLP 3.10.1.6.3', options: ['like-liquids'] },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
