import type { ReadingWords } from '../../words.ts';

/** Skin and eye, A.2 and A.3; CLP and UN 3.2 and 3.3. */
export const skinAndEye = {
  'unsubcategorised-corrosive': {
    question: 'Does one corrosive ingredient without sub-category set the mixture to Category 1?',
    options: {
      'category-1': 'yes, where it is relevant, whatever the sums of 1A, 1B and 1C',
    },
  },
  'show-sub-category': {
    question: 'Is the sub-category 1A, 1B or 1C shown?',
    options: {
      show: 'shown where it follows',
      hide: 'Category 1 without sub-category',
    },
  },
  'extreme-ph': {
    question: 'Are ingredient classifications "other information" beside an extreme pH?',
    options: {
      decides: 'no: pH 2 or less, or 11.5 or more, gives Category 1 unless a test is given',
    },
  },
  'reserve-alone': {
    question: 'Does evidence on acid or alkaline reserve alone set an extreme pH aside?',
    options: {
      'category-1': 'no: Category 1 stands until other data confirm; a warning asks for them',
      'set-aside': 'yes, for the part that it speaks of, skin or eye; a warning asks for confirmation',
    },
  },
  'ph-sub-category': {
    question: 'Which sub-category has a mixture that an extreme pH makes corrosive?',
    options: {
      'from-the-sum':
        'that of the sum of its corrosive ingredients where the sum reaches its limit, else none',
    },
  },
  'moderate-ph': {
    question: 'Does a moderate pH override a sum?',
    options: {
      'never-lowers': 'no, it never lowers a class',
    },
  },
  'ph-missing': {
    question: 'What does a strong acid or base give where the pH of the mixture is not known?',
    options: {
      'category-1':
        'Category 1 from 1 %, as the tables say of acids and bases of extreme pH; a warning asks for the pH. A specific limit that counts decides in its place',
      'by-sum': 'what the sum of its concentration and others gives',
    },
  },
  'not-additive': {
    question: 'Which ingredients are judged outside the sums?',
    options: {
      'as-marked':
        'those the record marks as not additive; judged alone, at 1 % and 3 %, and left out of the sums',
    },
  },
  'not-additive-category': {
    question: 'Which sub-category does a corrosive ingredient judged alone give?',
    options: {
      none: 'none: Category 1',
    },
  },
  'not-additive-limit': {
    question: 'Does a specific limit replace the 1 % and 3 % of an ingredient judged alone?',
    options: {
      replaces: 'yes; below a limit of its own for corrosion or eye damage it still irritates from 1 %',
    },
  },
  'corrosive-implies-eye': {
    question: 'Is a mixture that is corrosive to skin also classified for serious eye damage?',
    options: {
      yes: 'yes, Category 1',
    },
  },
  'eye-damage-statement': {
    question:
      'Is "Causes serious eye damage" (H318) printed beside "Causes severe skin burns and eye damage" (H314)?',
    options: {
      conveyed: 'no: H314 says that eyes are damaged as well',
      show: 'yes: both are printed; the US rule names no statement that may go',
    },
  },
  'eye-2b': {
    question: 'When is a mixture Category 2B?',
    options: {
      'all-2b':
        'when every relevant ingredient that is classified for the eye is 2B; an unsplit Category 2 counts as 2A',
    },
  },
  'limit-ratio': {
    question: 'How do specific limits enter a sum?',
    options: {
      ratio: 'each concentration is divided by its own limit, and the sum of ratios is compared with 1',
    },
  },
  'limit-sub-category': {
    question: 'Which limit enters the ratio for a sub-category?',
    options: {
      'that-or-worse': 'the lowest specific limit of that or a more severe sub-category',
    },
  },
  'eye-from-irritant-range': {
    question: 'From what concentration is eye damage taken where only a range for Eye Irrit. 2 is listed?',
    options: {
      'upper-end': 'from the upper end of that range',
    },
  },
  'limit-upper-end': {
    question: 'Does the upper end of a specific range count?',
    options: {
      'stot-se-3-only': 'for STOT SE 3 only; elsewhere the more severe category takes over',
    },
  },
} as const satisfies Readonly<Record<string, ReadingWords>>;
