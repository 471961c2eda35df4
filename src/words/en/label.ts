import type { LabelWords } from '../label-words.ts';

/** Fixed words of a label. */
export const label: LabelWords = {
  draft: 'DRAFT for qualified review',
  subject: { draft: 'Draft label for qualified review', final: 'Label' },
  title: (name, pack) => `${name}, label for ${pack}`,
  groups: { prevention: 'Prevention', response: 'Response', storage: 'Storage', disposal: 'Disposal' },
  directions: 'Directions',
  contains: 'Contains:',
  telephone: 'Telephone:',
  emergency: 'Emergency:',
  productCode: 'Product code',
  lot: 'Lot and date',
  barCode: 'Bar code of GTIN',
  translation: 'English',
};
