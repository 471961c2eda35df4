import type { ClassResult, Context } from '../context.ts';
import { byIngredient } from './by-ingredient.ts';

/** Germ cell mutagenicity: A.5.3.1.2 with Table A.5.1; CLP 3.5.3.1.1 with Table 3.5.2; UN 3.5.3.3. */
export function mutagenicity(context: Context): ClassResult[] {
  const statements = { '1A': 'H340', '1B': 'H340', '2': 'H341' };
  return [byIngredient(context, 'Muta.', context.basis.byIngredient['Muta.']!, statements).result];
}
