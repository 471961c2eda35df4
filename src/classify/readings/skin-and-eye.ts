import type { ReadingEntry } from './entry.ts';

/** Skin and eye, A.2 and A.3; CLP and UN 3.2 and 3.3. */
export const skinAndEye = {
  'unsubcategorised-corrosive': { cite: 'Note to Table A.2.3; CLP Table 3.2.3', options: ['category-1'] },
  'show-sub-category': { cite: 'A.2.2(a), A.2.2.2.1.2, Note to Table A.2.3', options: ['show', 'hide'] },
  'extreme-ph': { cite: 'A.2.3.1.3, A.3.3.1.2; CLP 3.2.3.1.2, 3.3.3.1.2', options: ['decides'] },
  'reserve-alone': {
    cite: 'A.2.3.1.3, A.3.3.1.2; CLP 3.2.3.1.2, 3.3.3.1.2',
    options: ['category-1', 'set-aside'],
  },
  'ph-sub-category': { cite: 'A.2.3.1.3, Note to Table A.2.3; CLP 3.2.3.1.2', options: ['from-the-sum'] },
  'moderate-ph': { cite: 'A.2.3.3.4; CLP 3.2.3.3.4', options: ['never-lowers'] },
  'ph-missing': {
    cite: 'A.2.3.3.4, Table A.2.4, A.3.3.3.4, Table A.3.4; CLP 3.2.3.3.4, 3.3.3.3.4',
    options: ['category-1', 'by-sum'],
  },
  'not-additive': { cite: 'A.2.3.3.4, A.3.3.3.4; CLP 3.2.3.3.4, 3.3.3.3.4', options: ['as-marked'] },
  'not-additive-category': { cite: 'A.2.3.3.4, Table A.2.4; CLP Table 3.2.4', options: ['none'] },
  'not-additive-limit': { cite: 'A.2.3.3.6; CLP Article 10, Tables 3.2.4, 3.3.4', options: ['replaces'] },
  'corrosive-implies-eye': { cite: 'A.3.2.2.2, Figure A.3.1, Note d; CLP 3.3.2.2.2', options: ['yes'] },
  'eye-damage-statement': {
    cite: 'C.2.2.1; CLP Article 27; UN GHS 1.4.10.5.3.3(d)',
    options: ['conveyed', 'show'],
  },
  'eye-2b': { cite: 'Table A.3.3, Note b', options: ['all-2b'] },
  'limit-ratio': { cite: 'CLP 1.1.2.2.2, Guidance on CLP 1.6.3', options: ['ratio'] },
  'limit-sub-category': { cite: 'CLP Table 3.2.3', options: ['that-or-worse'] },
  'eye-from-irritant-range': {
    cite: 'CLP Annex VI, entries with Eye Irrit. 2 ranges only',
    options: ['upper-end'],
  },
  'limit-upper-end': { cite: 'CLP Article 10, Annex VI', options: ['stot-se-3-only'] },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
