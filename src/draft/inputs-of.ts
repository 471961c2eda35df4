import type { CopyKind, CopyMark } from '../provenance/copy-mark.ts';
import { fingerprintOf, type Inputs, type Sources } from '../provenance/inputs.ts';
import { edition } from '../reference/edition.ts';
import { VERSION } from '../version.ts';
import type { Product } from './open-product.ts';
import type { Reference } from './open-reference.ts';

/**
 * All from which the documents of a product are made, with their hashes.
 * @param asOf YYYY-MM-DD
 */
export function inputsOf({ sources }: { readonly sources: Sources }, asOf: string): Inputs {
  const { law, dates, templates } = edition();
  return {
    ...sources,
    law: { since: dates.findLast(date => date <= asOf) ?? '', sha256: law },
    program: { version: VERSION, templates },
  };
}

/** The mark of a document of a product. */
export const copyMark = (
  product: Pick<Product, 'sources'> & { readonly reference: Reference },
  kind: CopyKind,
): CopyMark => ({ kind, fingerprint: fingerprintOf(inputsOf(product, product.reference.basis.asOf)) });
