import type { ReadingEntry } from './entry.ts';

/** Supplemental statements of CLP Annex II. */
export const supplemental = {
  'euh-entry-limit': { cite: 'CLP Annex II 1.2.1 to 1.2.3', options: ['lowest-listed', 'ask'] },
  'euh-asked-by-entry': { cite: 'CLP Annex II 1.1.1, 1.1.3, 1.1.4', options: ['ask'] },
  'euh066-share': { cite: 'CLP Annex II 1.2.4', options: ['one-fifth', 'ask'] },
  'euh071-entry': { cite: 'CLP Annex II 1.2.6', options: ['one-percent'] },
  'euh202-share': { cite: 'CLP Annex II 2.2', options: ['one-percent'] },
  'elicitation-specific-limit': { cite: 'CLP Table 3.4.6 Note 1, Annex II 2.10', options: ['one-tenth'] },
  'euh208-other-kind': { cite: 'CLP Annex II 2.8', options: ['either-kind'] },
  'euh210-scope': { cite: 'CLP Annex II 2.10', options: ['all-classes'] },
  'titanium-dioxide': {
    cite: 'CLP Annex II 2.12; judgments T-279/20, C-71/23 P',
    options: ['annulled', 'apply'],
  },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
