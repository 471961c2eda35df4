import type { ReadingWords } from '../../words.ts';

/** Physical hazards, App. B; CLP and UN parts 2 and 4. */
export const physicalAndEnvironmental = {
  'boiling-point-missing': {
    question: 'Flash point below 23 C and no boiling point?',
    options: {
      'category-2': 'Category 2, with a warning that Category 1 is not excluded',
    },
  },
  'open-cup': {
    question: 'How is a flash point of an open cup held against limits for closed cups?',
    options: {
      'severe-side': 'as if it were 10 C lower where that gives a more severe category, with a warning',
      'as-closed': 'as it is',
    },
  },
  'physical-screening': {
    question: 'Is a physical class that only a test decides open where the record has no test?',
    options: {
      'by-ingredients':
        'open where an ingredient is of the class, from 1 % of a neighbouring one, without data, or where the class does not follow from ingredients; else not classified',
    },
  },
  'm-factor-missing': {
    question: 'Which M-factor where none is set?',
    options: {
      one: '1',
    },
  },
  'unknown-aquatic': {
    question: 'Of which ingredients are the hazards to the aquatic environment told to be unknown?',
    options: {
      all: 'of all that the record or missing data make unknown, in any amount',
    },
  },
} as const satisfies Readonly<Record<string, ReadingWords>>;
