import { always, type ClassRule } from '../class-rule.ts';
import { byIngredient, cutOffOf } from './by-ingredient.ts';

const CLASS = 'Muta.';

/** Germ cell mutagenicity: A.5.3.1.2 with Table A.5.1; CLP 3.5.3.1.1 with Table 3.5.2; UN 3.5.3.3. */
export const mutagenicity: ClassRule = {
  listed: CLASS,
  isOf: always,
  judge: context => [byIngredient(context, CLASS, context.basis.byIngredient[CLASS]!).result],
  limitedBy: [CLASS],
  cutOff: ({ byIngredient: tables }, category) => cutOffOf(tables[CLASS], category),
};
