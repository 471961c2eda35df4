import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import type { Words } from '../words/words.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import type { LabelOptions } from './label-options.ts';
import { tryDraftLabel } from './try-draft-label.ts';

export type { LabelOptions } from './label-options.ts';

/**
 * Drafts the label of one pack as a print-ready PDF of one page, read back and checked.
 * @returns errors where a required fact or the words of a statement are missing, or the text does not fit at its
 * least size.
 */
export async function draftLabel(
  product: ClassifiedProduct,
  options: LabelOptions,
  fonts: FontLibrary,
  words: Words,
): Promise<Outcome<Uint8Array>> {
  const { bytes, diagnostics } = await tryDraftLabel(product, options, fonts, words);
  return bytes ? succeed(bytes, diagnostics) : fail(...diagnostics);
}
