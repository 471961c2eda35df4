import { usual } from '../../reference/basis.ts';
import type { Purpose } from './purpose.ts';

/** The label of a container shipped to a workplace (29 CFR 1910.1200(f)(1)). */
export const usWorkplace: Purpose = {
  id: 'us-workplace',
  basis: usual,
  languages: 'english',
  prepare: ({ elements }) => ({ elements, findings: [] }),
};
