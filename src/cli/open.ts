import { openProduct, type Product } from '../draft/open-product.ts';
import type { Basis } from '../reference/thresholds.ts';
import { renderText } from '../report/render.ts';
import { nodeFiles } from './files.ts';
import type { Io } from './io.ts';

/** Opens a record, printing what is wrong with it; null where it cannot be used. */
export function open(path: string, io: Io, basis?: Basis): Product | null {
  const opened = openProduct(path, io.files ?? nodeFiles, basis);
  if (opened.diagnostics.length > 0) io.err(renderText(opened.diagnostics));
  return opened.ok ? opened.value : null;
}
