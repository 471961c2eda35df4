import { openProduct, type Product } from '../draft/open-product.ts';
import type { Basis } from '../reference/thresholds.ts';
import type { Io } from './io.ts';
import { report } from './report.ts';

/** Opens a record, printing what is wrong with it; null where it cannot be used. */
export function open(path: string, io: Io, basis?: Basis): Product | null {
  const opened = openProduct(path, io.files, basis);
  report(opened.diagnostics, io);
  return opened.ok ? opened.value : null;
}
