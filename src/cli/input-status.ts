import type { Diagnostic } from '../report/diagnostic.ts';
import { exit } from './io.ts';

/**
 * Exit status for a record that cannot be used: 1 where nothing is wrong with it but check digits, which the contract
 * counts among requirements that are not met, 2 otherwise.
 */
export const inputStatus = (diagnostics: readonly Diagnostic[]): number => {
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  return errors.length > 0 && errors.every(({ code }) => code === 'check-digit')
    ? exit.notMet
    : exit.badInput;
};
