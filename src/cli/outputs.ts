import { inputsOf } from '../draft/inputs-of.ts';
import type { Product } from '../draft/open-product.ts';
import { nodeEnvironment } from '../environment/node.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { examine, madeFor } from '../store/examine.ts';
import { finding } from './deliver.ts';

/**
 * What stands against the files in an output folder: whether they belong together, and to the record as it is now,
 * under the law of the date for which they were made. Empty where nothing does.
 */
export function examineOutputs(product: Product, folder: string): readonly Diagnostic[] {
  const { files } = nodeEnvironment;
  const now = inputsOf(product, madeFor(files, folder) ?? '');
  return examine(files, folder, now, product.record).map(fact => finding(fact, folder, 'error'));
}
