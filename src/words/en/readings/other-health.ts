import type { ReadingWords } from '../../words.ts';

/** Sensitization to aspiration, A.4 to A.10; CLP and UN 3.4 to 3.10. */
export const otherHealth = {
  'sensitizer-category': {
    question: 'Is a mixture 1A or 1B?',
    options: {
      'category-1': 'Category 1; the sub-categories of the triggering ingredients are named beside it',
    },
  },
  'carcinogen-2-label': {
    question: 'Is Carc. 2 below 1 % shown on the label?',
    options: {
      show: 'classified from 0.1 % and shown; below 1 % the label warning is optional',
      'sheet-only':
        'classified from 0.1 %; the label warning is left off while every such ingredient is below 1 %',
    },
  },
  'reproductive-effects': {
    question: 'Are fertility and development judged apart?',
    options: {
      apart: 'each effect has a limit of its own; letters of the ingredient carry over',
    },
  },
  'stot-se-3-sum': {
    question: 'At what sum is STOT SE 3 given?',
    options: {
      'twenty-percent': 'exactly 20 %, each effect by itself',
    },
  },
  'stot-se-3-beside-1-2': {
    question: 'Is STOT SE 3 left off beside STOT SE 1 or 2?',
    options: {
      both: 'no, both are given; a reviewer may find that the organs are the same',
    },
  },
  'stot-worst-category': {
    question: 'Is Category 2 for one organ told beside Category 1 for another?',
    options: {
      both: 'yes: both categories are given, each with its own organs',
      'worst-alone': 'no, Category 1 alone is given; a warning names the other ingredient and its organ',
    },
  },
  'stot-1-below-ten': {
    question: 'What does a STOT 1 ingredient from 1 to below 10 % give?',
    options: {
      table: 'Category 1, as the table says',
    },
  },
  'aspiration-viscosity': {
    question: 'What if viscosity is unknown?',
    options: {
      'insufficient-data': 'not classified, reported as insufficient data',
    },
  },
  'aspiration-layers': {
    question: 'Is a mixture that separates into layers judged by layer?',
    options: {
      whole:
        'no, the mixture is judged as one liquid; where it separates a layer may decide for the whole, which is left to the reviewer',
    },
  },
  'aspiration-aerosol': {
    question: 'Can an aerosol form a pool of liquid in the mouth?',
    options: {
      'like-liquids': 'held to be possible: an aerosol is judged as a liquid of its viscosity',
    },
  },
} as const satisfies Readonly<Record<string, ReadingWords>>;
