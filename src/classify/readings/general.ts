import type { ReadingEntry } from './entry.ts';

/** What every class rests on. */
export const general = {
  'us-specific-limits': {
    cite: '29 CFR 1910.1200 App. A, A.0.4.3.2, A.0.4.3.3',
    question:
      'Is a harmonised specific concentration limit information that a hazard is evident below the cut-off?',
    options: {
      ignore:
        'specific concentration limits of EU law are not used; a warning says where one would be more severe',
      use: 'specific concentration limits of EU law are used in place of the cut-offs',
    },
  },
  'range-end': {
    cite: '29 CFR 1910.1200 App. D, Table D.1, 3 (ranges are allowed; the end is not said); REACH Annex II 3.2.1 (from memory)',
    question: 'Which end of a concentration range is classified?',
    options: {
      'worst-end': 'for each hazard the end of the range that gives the more severe result',
    },
  },
  'below-cut-off': {
    cite: 'A.1.3.3(a), A.2.3.3.1, A.3.3.3.1, A.8.3.4.6, A.10.3.3.1; CLP 3.1.3.3(a), 3.2.3.3.1, 3.3.3.3.1, 3.8.3.4.6, 3.10.3.3.1.1, 4.1.3.1',
    question: 'Do ingredients below the cut-off for relevant ingredients count?',
    options: {
      'record-says':
        'only where the record marks the ingredient as relevant, and Acute Tox. 1 and 2 under us-hcs and un-ghs',
    },
  },
  'case-by-case': {
    cite: 'A.0.4.2, A.5.3.2, A.6.3.2, A.7.3.2; CLP Article 6(3)',
    question: 'May a test on the mixture replace the cut-offs for CMR?',
    options: {
      'with-reason': 'only where the record gives a reason; under eu-clp only upwards',
    },
  },
  'two-cut-offs': {
    cite: 'UN GHS Tables 3.4.5, 3.6.1, 3.7.1, 3.8.2, 3.9.3',
    question: 'Which of two cut-offs of a table is taken?',
    options: {
      higher: 'the higher one, at which a label is due',
    },
  },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
