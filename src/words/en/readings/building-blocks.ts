import type { ReadingWords } from '../../words.ts';

/** Categories that an authority may leave out (UN GHS 1.1.3.1.5.4, from memory). */
export const buildingBlocks = {
  'building-block-acute-5': {
    question: 'Does the authority use Acute Tox. 5?',
    options: {
      on: 'Acute Tox. 5 is used',
      off: 'Acute Tox. 5 is left out',
    },
  },
  'building-block-skin-3': {
    question: 'Does the authority use Skin Irrit. 3?',
    options: {
      on: 'Skin Irrit. 3 is used',
      off: 'Skin Irrit. 3 is left out',
    },
  },
  'building-block-eye-2b': {
    question: 'Does the authority use Eye Irrit. 2B?',
    options: {
      on: 'Eye Irrit. 2B is used',
      off: 'Eye Irrit. 2B is left out',
    },
  },
  'building-block-asp-2': {
    question: 'Does the authority use Asp. Tox. 2?',
    options: {
      on: 'Asp. Tox. 2 is used',
      off: 'Asp. Tox. 2 is left out',
    },
  },
  'building-block-aquatic-acute-2-3': {
    question: 'Does the authority use Aquatic Acute 2 and 3?',
    options: {
      on: 'Aquatic Acute 2 and 3 is used',
      off: 'Aquatic Acute 2 and 3 is left out',
    },
  },
  'building-block-flam-liq-4': {
    question: 'Does the authority use Flam. Liq. 4?',
    options: {
      on: 'Flam. Liq. 4 is used',
      off: 'Flam. Liq. 4 is left out',
    },
  },
} as const satisfies Readonly<Record<string, ReadingWords>>;
