import type { ReadingEntry } from './entry.ts';

/** Sensitization to aspiration, A.4 to A.10; CLP and UN 3.4 to 3.10. */
export const otherHealth = {
  'sensitizer-category': {
    cite: 'Table A.4.5; CLP Table 3.4.5',
    question: 'Is a mixture 1A or 1B?',
    options: {
      'category-1': 'Category 1; the sub-categories of the triggering ingredients are named beside it',
    },
  },
  'carcinogen-2-label': {
    cite: 'Note to Table A.6.1',
    question: 'Is Carc. 2 below 1 % shown on the label?',
    options: {
      show: 'classified from 0.1 % and shown; below 1 % the label warning is optional',
      'sheet-only':
        'classified from 0.1 %; the label warning is left off while every such ingredient is below 1 %',
    },
  },
  'reproductive-effects': {
    cite: 'CLP 3.7.3, Annex VI 1.1.2.1.2',
    question: 'Are fertility and development judged apart?',
    options: {
      apart: 'each effect has a limit of its own; letters of the ingredient carry over',
    },
  },
  'stot-se-3-sum': {
    cite: 'A.8.3.4.5; CLP 3.8.3.4.5',
    question: 'At what sum is STOT SE 3 given?',
    options: {
      'twenty-percent': 'exactly 20 %, each effect by itself',
    },
  },
  'stot-se-3-beside-1-2': {
    cite: 'A.8.2.2.1(e); CLP 3.8.2.2.1(e)',
    question: 'Is STOT SE 3 left off beside STOT SE 1 or 2?',
    options: {
      both: 'no, both are given; a reviewer may find that the organs are the same',
    },
  },
  'stot-worst-category': {
    cite: 'A.8.3.4.1, A.9.3.4.1; CLP 3.8.3.4.1, 3.9.3.4.1',
    question: 'Is Category 2 for one organ told beside Category 1 for another?',
    options: {
      'worst-alone': 'no, Category 1 alone is given; a warning names the other ingredient and its organ',
    },
  },
  'stot-1-below-ten': {
    cite: 'Tables A.8.2, A.9.3',
    question: 'What does a STOT 1 ingredient from 1 to below 10 % give?',
    options: {
      table: 'Category 1, as the table says',
    },
  },
  'aspiration-viscosity': {
    cite: 'A.10.3.3.2.1; CLP 3.10.3.3.1.2',
    question: 'What if viscosity is unknown?',
    options: {
      'insufficient-data': 'not classified, reported as insufficient data',
    },
  },
  'aspiration-layers': {
    cite: 'A.10.3.3.2.2; CLP 3.10.3.3.1.3',
    question: 'Is a mixture that separates into layers judged by layer?',
    options: {
      whole:
        'no, the mixture is judged as one liquid; where it separates a layer may decide for the whole, which is left to the reviewer',
    },
  },
  'aspiration-aerosol': {
    cite: 'A.10.1.5.3; CLP 3.10.1.6.3',
    question: 'Can an aerosol form a pool of liquid in the mouth?',
    options: {
      'like-liquids': 'held to be possible: an aerosol is judged as a liquid of its viscosity',
    },
  },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
