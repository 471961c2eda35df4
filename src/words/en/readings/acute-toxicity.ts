import type { ReadingWords } from '../../words.ts';

/** Acute toxicity, A.1; CLP and UN 3.1. */
export const acuteToxicity = {
  'ate-above-category-4': {
    question: 'What dose by inhalation is equivalent to an LD50 of 2000 to 5000 mg/kg?',
    options: {
      'two-and-a-half-times': '2.5 times the upper limit of Category 4',
    },
  },
  'same-category': {
    question: 'When do ingredients of one category decide without the formula?',
    options: {
      'every-ingredient':
        'only when every ingredient of the mixture has an estimate for the route and all lie in one category',
    },
  },
  'ate-at-point-estimate': {
    question: 'In which category does an estimate lie that equals the point estimate of the category listed?',
    options: {
      listed:
        'in the one listed, from which it was converted, though it lies on the bound of a more severe one',
    },
  },
  'ate-before-category': {
    question: 'Which counts where an estimate does not lie in the category listed?',
    options: {
      estimate: 'the estimate, with the category that it lies in',
    },
  },
  'unknown-correction': {
    question: 'Which unknown ingredients make up the 10 %?',
    options: {
      'relevant-only':
        'those present at 1 % or more, and those that the record marks as relevant; exactly 10 % is not corrected',
    },
  },
  'unknown-statement': {
    question: 'For what is it told that a part of the mixture is of unknown acute toxicity?',
    options: {
      'by-route':
        'for each route, of ingredients present at 1 % or more (by inhalation the larger share among the forms), whatever the class; not for a route tested on the mixture',
    },
  },
  'no-entry-for-route': {
    question: 'Is an ingredient with data, but none for a route, unknown by that route?',
    options: {
      'not-toxic': 'it is presumed not toxic by that route unless the record names it unknown',
      unknown: 'it is unknown by that route; an ingredient that is known and not classified at all is not',
    },
  },
  'inhalation-form': {
    question: 'In which form is an inhalation category judged that names none?',
    options: {
      'by-state': 'gases as gas, solids and aerosols as dust or mist, other liquids as vapour',
      mist: 'dust or mist',
      vapour: 'vapour',
    },
  },
  'inhalation-forms-apart': {
    question: 'Are gas, vapour and dust or mist added up?',
    options: {
      apart: 'each form has a sum of its own; the most severe form gives the category of the route',
    },
  },
  'vapour-near-gas-phase': {
    question: 'Are vapours near the gas phase judged in ppmV?',
    options: {
      'mg-per-litre': 'no, every vapour is judged in mg/L',
    },
  },
  'minimum-category': {
    question: 'What is a minimum classification (*) converted from?',
    options: {
      'as-listed': 'the listed category',
    },
  },
} as const satisfies Readonly<Record<string, ReadingWords>>;
