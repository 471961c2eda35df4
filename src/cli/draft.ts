import { type ClassifiedProduct, classifyProduct } from '../draft/classified-product.ts';
import { openReference } from '../draft/open-reference.ts';
import type { BasisId } from '../reference/basis.ts';
import { leaveBehind } from './deliver.ts';
import type { Io } from './io.ts';
import { open } from './open.ts';
import { report } from './report.ts';

/**
 * Opens and classifies a record, printing what is wrong; null where it cannot be used. What was made from it before is
 * then marked as out of date.
 * @param out folder of the documents, where the call names one.
 */
export async function openClassified(
  path: string,
  basis: BasisId,
  asOf: string,
  io: Io,
  out: string | null,
): Promise<ClassifiedProduct | null> {
  const reference = await openReference(basis, asOf);
  if (!reference.ok) {
    report(reference.diagnostics, io);
    return null;
  }
  const product = open(path, io, reference.value.basis);
  if (product) return classifyProduct(product, reference.value);
  report(await leaveBehind(path, out, 'the record cannot be used'), io);
  return null;
}

/** Where files of a product go: `--out`, or `out/<code>`. */
export const outputFolder = (code: string, given: string | null): string => given ?? `out/${code}`;
