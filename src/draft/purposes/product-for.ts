import { type Outcome, succeed } from '../../report/diagnostic.ts';
import { type ClassifiedProduct, classifyProduct } from '../classified-product.ts';
import { openReference } from '../open-reference.ts';
import type { Purpose } from './purpose.ts';

/** A product as the basis of a purpose classifies it, on the same day of the law. */
export async function productFor(
  product: ClassifiedProduct,
  { basis }: Purpose,
): Promise<Outcome<ClassifiedProduct>> {
  const { id, asOf } = product.reference.basis;
  if (id === basis) return succeed(product);
  const reference = await openReference(basis, asOf);
  return reference.ok ? succeed(classifyProduct(product, reference.value), reference.diagnostics) : reference;
}
