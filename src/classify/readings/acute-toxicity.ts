import type { ReadingEntry } from './entry.ts';

/** Acute toxicity, A.1; CLP and UN 3.1. */
export const acuteToxicity = {
  'ate-above-category-4': { cite: 'A.1.3.6.1(a)', options: ['two-and-a-half-times'] },
  'same-category': { cite: 'A.1.3.3(c); CLP 3.1.3.3(c)', options: ['every-ingredient'] },
  'ate-at-point-estimate': {
    cite: 'A.1.3.3(c) and (d), Table A.1.2; CLP 3.1.3.3(c) and (d), Table 3.1.2',
    options: ['listed'],
  },
  'ate-before-category': { cite: 'Table A.1.1, Note (b); CLP Table 3.1.1', options: ['estimate'] },
  'unknown-correction': { cite: 'A.1.3.6.2.4; CLP 3.1.3.6.2.3', options: ['relevant-only'] },
  'unknown-statement': { cite: 'A.1.3.6.2.3, Note, C.3.3; CLP 3.1.3.6.2.2', options: ['by-route'] },
  'no-entry-for-route': {
    cite: 'A.1.3.6.1(b), A.1.3.6.2.3; CLP 3.1.3.6.1',
    options: ['not-toxic', 'unknown'],
  },
  'inhalation-form': {
    cite: 'Tables A.1.1, A.1.2; CLP Tables 3.1.1, 3.1.2',
    options: ['by-state', 'mist', 'vapour'],
  },
  'inhalation-forms-apart': { cite: 'A.1.3.6.1; CLP 3.1.3.6.1', options: ['apart'] },
  'vapour-near-gas-phase': { cite: 'Table A.1.1, Note (d); CLP Table 3.1.1', options: ['mg-per-litre'] },
  'minimum-category': { cite: 'CLP Annex VI 1.2.1', options: ['as-listed'] },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
