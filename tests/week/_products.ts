import type { Product } from './_week.ts';

const soldToWork = 'sold-to: {users: [workplace], markets: [us]}';

/** A hypochlorite wash: bleach and caustic by the gallon, a surfactant whose identity its supplier keeps back. */
export const houseWash: Product = {
  file: 'house-wash.yaml',
  code: 'GB-128',
  errors: ['unknown-key', 'bad-value', 'density-missing'],
  first: {
    'house-wash.yaml': [
      ['flash point: none', 'flash-point: none'],
      ['maker: maker.yaml', `maker: maker.yaml\n${soldToWork}`],
    ],
    'drums/hw-60.yaml': [
      ['    cas: trade secret\n', ''],
      ['source: supplier SDS rev 7', 'density: 8.5 lb/gal\nsource: supplier SDS rev 7'],
    ],
  },
  second: {
    'house-wash.yaml': [
      ['Kills mold, safe on plants', 'Brightens siding'],
      ['flash-point: none', 'flash-point: none, pH: 12.9'],
      ['batch: 275 gal', 'statements: {keep: [not-to-mix]}\nbatch: 275 gal'],
    ],
  },
};

/** A glycol ether and sodium metasilicate: a hydrate by its own number, and a surfactant "proprietary". */
export const degreaser: Product = {
  file: 'degreaser.yaml',
  code: 'BD-5',
  errors: ['wrong-type', 'bad-value'],
  first: {
    'degreaser.yaml': [
      ['sold-to: workplace', soldToWork],
      [
        'name: Sodium metasilicate\n    cas: 10213-79-3\n    percent: 4.5',
        'name: disodium metasilicate\n    cas: 6834-92-0\n    percent: 2.59',
      ],
    ],
    'drums/nb-9.yaml': [['    cas: proprietary\n', '']],
  },
  second: { 'degreaser.yaml': [['flash-point: none', 'flash-point: none, pH: 12.8']] },
};

/** Isopropanol and ammonia in a sprayer for shops and households. */
export const glassCleaner: Product = {
  file: 'glass.yaml',
  code: 'SG-32',
  errors: ['wrong-type', 'bad-value'],
  first: {
    'glass.yaml': [
      ['sold-to: [workplace, consumers]', 'sold-to: {users: [workplace, consumers], markets: [us]}'],
      ['(Category 3), central nervous system', '(Category 3), narcotic effects'],
    ],
  },
  second: {
    'glass.yaml': [
      ['Streak-free, non-toxic', 'Streak-free'],
      ['diameter: 88 mm', 'diameter: 88 mm, label-panel-height: 160 mm'],
      ['width: 100 mm, height: 90 mm', 'width: 150 mm, height: 150 mm'],
      ['copy:', 'statements: {words: {P370+P378: [dry chemical, CO2, alcohol-resistant foam]}}\ncopy:'],
    ],
  },
};

/** Phosphoric and sulfamic acid: a solution by the number of the acid, and H314 without its category. */
export const wheelCleaner: Product = {
  file: 'wheel.yaml',
  code: 'HW-1',
  errors: ['wrong-type', 'bad-value'],
  first: {
    'wheel.yaml': [
      ['sold-to: [workplace]', soldToWork],
      ['name: phosphoric acid 75 %', 'name: phosphoric acid'],
      ['percent: 12', 'percent: 9'],
      ['[H290, H314]', '[H290, Skin Corr. 1B]'],
    ],
  },
  second: { 'wheel.yaml': [['density: 1.1 g/mL', 'density: 1.1 g/mL, pH: 1.2, flash-point: none']] },
};

/** Anionic and amphoteric surfactants: words in place of a list, lines that come to too much or too little. */
export const neutralDetergent: Product = {
  file: 'neutral.yaml',
  code: 'ND-1',
  errors: ['wrong-type', 'wrong-type'],
  first: {
    'neutral.yaml': [
      ['sold-to: [workplace]', soldToWork],
      ['name: SLES 70 %', 'name: sodium laureth sulfate'],
      ['percent: 8 %', 'percent: 5.6'],
      ['hazards: not hazardous', 'hazards: []\n    source: supplier SDS'],
      ['percent: 80', 'amount: balance'],
    ],
  },
  second: {},
};

export const week: readonly Product[] = [houseWash, degreaser, glassCleaner, wheelCleaner, neutralDetergent];
