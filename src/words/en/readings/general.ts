import type { ReadingWords } from '../../words.ts';

/** What every class rests on. */
export const general = {
  'us-specific-limits': {
    question:
      'Is a harmonised specific concentration limit information that a hazard is evident below the cut-off?',
    options: {
      ignore:
        'specific concentration limits of EU law are not used; a warning says where one would be more severe',
      use: 'specific concentration limits of EU law are used in place of the cut-offs',
    },
  },
  'range-end': {
    question: 'Which end of a concentration range is classified?',
    options: {
      'worst-end': 'for each hazard the end of the range that gives the more severe result',
    },
  },
  'below-cut-off': {
    question: 'Do ingredients below the cut-off for relevant ingredients count?',
    options: {
      'record-says':
        'only where the record marks the ingredient as relevant, and Acute Tox. 1 and 2 under us-hcs and un-ghs',
    },
  },
  'case-by-case': {
    question: 'May a test on the mixture replace the cut-offs for CMR?',
    options: {
      'with-reason': 'only where the record gives a reason; under eu-clp only upwards',
    },
  },
  'two-cut-offs': {
    question: 'Which of two cut-offs of a table is taken?',
    options: {
      higher: 'the higher one, at which a label is due',
    },
  },
} as const satisfies Readonly<Record<string, ReadingWords>>;
