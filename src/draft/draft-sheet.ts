import type { SheetInput } from '../document/sheet.ts';
import { sheetDocument, sheetHtml, sheetJson } from '../document/sheet.ts';
import { loadTemplate } from '../document/template.ts';
import type { Attachment } from '../layout/frame.ts';
import { layoutSheet, type PaperName } from '../layout/sheet/layout-sheet.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import { completeRecord } from '../record/complete.ts';
import { openExposure } from '../reference/exposure/open-exposure.ts';
import { packagePath, readPackageFile } from '../reference/package-files.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { MissingGlyphError } from '../text/missing-glyph.ts';
import { VERSION } from '../version.ts';
import type { Words } from '../words/words.ts';
import { classificationJson } from './classification-json.ts';
import { type ClassifiedProduct, sheetElements } from './classified-product.ts';
import { statementFindings } from './statement-findings.ts';

export interface SheetOptions {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly paper: PaperName;
}

/** A data sheet in its three forms. */
export interface DraftSheet {
  readonly pdf: Uint8Array;
  readonly html: string;
  readonly json: string;
}

/**
 * Drafts the safety data sheet (29 CFR 1910.1200(g), App. D) as tagged PDF, web page and JSON.
 * @returns errors where a required fact is missing or the fonts lack a character.
 */
export async function draftSheet(
  product: ClassifiedProduct,
  { date, paper }: SheetOptions,
  fonts: FontLibrary,
  words: Words,
): Promise<Outcome<DraftSheet>> {
  const { record, formula, classification, reference } = product;
  const elements = sheetElements(product);
  const complete = completeRecord(record);
  if (!complete.ok) return complete;
  const input: SheetInput = {
    record: complete.value,
    formula,
    classification,
    elements,
    words,
    exposure: openExposure(
      readPackageFile('hazard-data', 'exposure', 'osha-pel.tsv'),
      readPackageFile('hazard-data', 'exposure', 'carcinogen-lists.tsv'),
    ),
    thresholds: reference.basis,
    date: `${date}T00:00:00Z`,
    revision: record.revision,
    draft: true,
  };
  const template = await loadTemplate(packagePath('templates'), `sheets/${reference.basis.id}.hbs`);
  const model = sheetDocument(input, template);
  let pdf: Uint8Array;
  let found: Diagnostic[];
  try {
    const document = layoutSheet(model, fonts, { paper, attachments: attachments(product, words) });
    pdf = await writePdf(document, fonts, { kind: 'sheet', version: VERSION });
    found = await preflight(pdf, { kind: 'sheet' });
  } catch (error) {
    if (!(error instanceof MissingGlyphError)) throw error;
    return fail({
      code: 'missing-glyph',
      severity: 'error',
      message: error.message,
      hint: 'replace it in the record: the embedded face has Latin, Greek and Cyrillic letters',
      at: { file: record.file },
    });
  }
  if (hasErrors(found))
    throw new Error(`preflight of the sheet: ${found.map(({ message }) => message).join('; ')}`);
  return succeed({ pdf, html: sheetHtml(model), json: `${JSON.stringify(sheetJson(input), null, 2)}\n` }, [
    ...statementFindings(record, elements, words, 'warning'),
    ...found,
  ]);
}

/** The record and the classification as data beside the page (ISO 32000-1 7.11.4). */
function attachments({ record, classification, elements }: ClassifiedProduct, words: Words): Attachment[] {
  const json = (value: unknown) => new TextEncoder().encode(`${JSON.stringify(value, null, 2)}\n`);
  return [
    {
      name: 'record.json',
      mediaType: 'application/json',
      description: 'Product record from which this sheet was drafted',
      relationship: 'Source',
      bytes: json(record.raw),
    },
    {
      name: 'classification.json',
      mediaType: 'application/json',
      description: 'Classification with reasons',
      relationship: 'Data',
      bytes: json(classificationJson(record, classification, elements, words)),
    },
  ];
}
