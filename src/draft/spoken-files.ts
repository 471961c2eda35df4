import { type Language, languages } from '../notation/languages.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { type Diagnostic, firstError } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import type { Words } from '../words/words.ts';
import { wordsOf } from '../words/words-of.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import type { ReviewedSheet } from './draft-sheet.ts';
import { marketSheets, type SheetFile, sheetFiles } from './market-sheets.ts';
import { dueLabels, labelStem } from './purposes/due-labels.ts';
import { purposeOf } from './purposes/purposes.ts';
import type { PacketLabel } from './review/labels.ts';
import { tryDraftLabel } from './try-draft-label.ts';

/** Languages in which the record wants documents. */
export const documentLanguages = ({ soldTo }: ProductRecord): readonly Language[] =>
  languages.filter(language => soldTo?.languages?.includes(language));

/** Labels and sheets of a packet in another language than English. */
export interface SpokenFiles {
  readonly files: readonly SheetFile[];
  readonly labels: readonly PacketLabel[];
  /** The sheets that could be made, by the name of their PDF. */
  readonly sheets: readonly { readonly name: string; readonly sheet: ReviewedSheet }[];
  readonly missing: readonly { readonly name: string; readonly reason: string }[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Labels and sheets of a product in a language, beside the English ones; a label that has none in it is left out, since
 * the English one is its whole.
 * @param words of the reviewer
 */
export async function spokenFiles(
  product: ClassifiedProduct,
  date: string,
  fonts: FontLibrary,
  words: Words,
  language: Exclude<Language, 'en'>,
): Promise<SpokenFiles> {
  const files: SheetFile[] = [];
  const labels: PacketLabel[] = [];
  const made: { name: string; sheet: ReviewedSheet }[] = [];
  const missing: { name: string; reason: string }[] = [];
  const diagnostics: Diagnostic[] = [];
  const due = dueLabels(product);
  for (const pack of product.record.packs)
    for (const purpose of due.made) {
      if (purposeOf(purpose).languages === 'alone') continue;
      const draft = await tryDraftLabel(product, { pack, purpose, date, language }, fonts, words);
      diagnostics.push(...draft.diagnostics);
      const name = `${labelStem(pack.id, purpose, due, { language })}.pdf`;
      labels.push({ name, draft });
      if (draft.bytes)
        files.push({
          name,
          what: `${words.purposeName(purpose)}, ${pack.contents.written}, ${language}`,
          kind: 'distribution',
          bytes: draft.bytes,
        });
      else missing.push({ name, reason: firstError(draft.diagnostics) });
    }
  const sheets = await marketSheets(product, date, fonts, await wordsOf(language));
  for (const { basis, name, sheet } of sheets) {
    diagnostics.push(...sheet.diagnostics);
    const file = name.replace(/\.pdf$/u, `-${language}.pdf`);
    if (!sheet.ok) {
      missing.push({ name: file, reason: firstError(sheet.diagnostics) });
      continue;
    }
    files.push(...sheetFiles(sheet.value, basis, language));
    made.push({ name: file, sheet: sheet.value });
  }
  return { files, labels, sheets: made, missing, diagnostics };
}
