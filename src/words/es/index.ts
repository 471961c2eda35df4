import { en } from '../en/index.ts';
import type { Words } from '../words.ts';
import { because } from './because.ts';
import { cites } from './cites.ts';
import { source } from './constituents.ts';
import { dilution, draftNotices, label } from './label.ts';
import { reactive } from './reactions.ts';
import { sheet } from './sheet.ts';

/**
 * Spanish of labels and data sheets, with the decimal comma. What the terminal, the work sheet and the pages of the
 * reviewer say stays in English: those who read them are not those who read the documents.
 */
export const es: Words = {
  ...en,
  language: 'es',
  decimalMark: ',',
  cites,
  because,
  source,
  warning: (warning, tell) =>
    warning.id === 'reactive-constituents' ? reactive(warning, tell) : en.warning(warning, tell),
  sheet,
  label,
  draftNotices,
  dilution,
};
