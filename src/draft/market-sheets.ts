import { marketBases, sheetForm } from '../document/sheet/form.ts';
import type { CopyKind } from '../provenance/copy-mark.ts';
import type { BasisId } from '../reference/basis.ts';
import { type Diagnostic, hasErrors, type Outcome } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import type { Words } from '../words/words.ts';
import { type ClassifiedProduct, classifyProduct } from './classified-product.ts';
import { type DraftSheet, type ReviewedSheet, reviewedSheet } from './draft-sheet.ts';
import { evidenceFindings } from './evidence-findings.ts';
import { openReference } from './open-reference.ts';

/** A file of a data sheet. */
export interface SheetFile {
  readonly name: string;
  readonly what: string;
  readonly kind: CopyKind;
  readonly bytes: Uint8Array | string;
}

/** The three forms of a data sheet under the names that they have in an output folder. */
export function sheetFiles(
  { pdf, html, json }: DraftSheet,
  basis: BasisId,
  language = 'en',
): readonly SheetFile[] {
  const { file, title } = sheetForm(basis);
  // The sheet in English has the plain name.
  const plain = language === 'en';
  const stem = plain ? file : `${file}-${language}`;
  const what = plain ? title : `${title}, ${language}`;
  return [
    { name: `${stem}.pdf`, what: `${what}, 16 sections`, kind: 'distribution', bytes: pdf },
    { name: `${stem}.html`, what: `${what} as a web page`, kind: 'distribution', bytes: html },
    { name: `${stem}.json`, what: `${what} as data`, kind: 'distribution', bytes: json },
  ];
}

/** A data sheet that a market asks for. */
export interface MarketSheet {
  readonly basis: BasisId;
  /** Name of the file that it would have. */
  readonly name: string;
  readonly sheet: Outcome<ReviewedSheet>;
}

/**
 * The data sheets that the markets of a record ask for: of the United States where they are not named or named, of the
 * European Union where it is.
 * @param product classified under 29 CFR 1910.1200
 */
export async function marketSheets(
  product: ClassifiedProduct,
  date: string,
  fonts: FontLibrary,
  words: Words,
): Promise<readonly MarketSheet[]> {
  const markets = product.record.soldTo?.markets ?? ['us'];
  const sheets: MarketSheet[] = [];
  for (const basis of marketBases(markets)) {
    const { file, paper } = sheetForm(basis);
    const under =
      basis === product.reference.basis.id
        ? { ok: true as const, value: product, diagnostics: [] }
        : await classifiedUnder(product, basis, date);
    const sheet = under.ok ? await reviewedSheet(under.value, { date, paper }, fonts, words) : under;
    sheets.push({ basis, name: `${file}.pdf`, sheet });
  }
  return sheets;
}

/** The product of a record under another basis; an error where evidence of the record is not allowed there. */
async function classifiedUnder(
  { record, formula, sources }: ClassifiedProduct,
  basis: BasisId,
  date: string,
): Promise<Outcome<ClassifiedProduct>> {
  const reference = await openReference(basis, date);
  if (!reference.ok) return reference;
  const diagnostics: readonly Diagnostic[] = evidenceFindings(record, reference.value.basis);
  if (hasErrors(diagnostics)) return { ok: false, diagnostics };
  return { ok: true, value: classifyProduct({ record, formula, sources }, reference.value), diagnostics };
}
