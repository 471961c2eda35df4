import type { ForeignText } from '../document/foreign.ts';
import { sheetForm } from '../document/sheet/form.ts';
import type { SheetInput } from '../document/sheet.ts';
import {
  claimFindings,
  sheetDocument,
  sheetHtml,
  sheetJson,
  sheetQuestions,
  transportQuestions,
} from '../document/sheet.ts';
import { loadTemplate } from '../document/template.ts';
import { readTemplate } from '../environment/package-files.ts';
import type { Attachment } from '../layout/frame.ts';
import { layoutSheet, type PaperName } from '../layout/sheet/layout-sheet.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import { completeRecord } from '../record/complete.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { MissingGlyphError } from '../text/missing-glyph.ts';
import { VERSION } from '../version.ts';
import type { Words } from '../words/words.ts';
import { type ClassifiedProduct, sheetElements } from './classified-product.ts';
import { inLanguage } from './in-language.ts';
import { copyMark } from './inputs-of.ts';
import { openFindings } from './open-findings.ts';
import { sheetInput } from './sheet-input.ts';
import { statementFindings } from './statement-findings.ts';
import { useSolutions } from './use-solutions.ts';

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
  /** What a reviewer must look at, for the review copies. */
  readonly review: readonly string[];
}

/** The same with what it was made of, for the reviewer's page. */
export interface ReviewedSheet extends DraftSheet {
  readonly input: SheetInput;
}

/**
 * Drafts the safety data sheet (29 CFR 1910.1200(g), App. D; Regulation (EC) No 1907/2006, Annex II; GHS, Annex 4) as
 * tagged PDF, web page and JSON: a distribution copy,
 * which discloses in text, attachment and metadata what section 3 discloses.
 * @returns errors where a required fact is missing, a trade-secret claim cannot be kept, or the fonts lack a character.
 */
export const draftSheet = (
  product: ClassifiedProduct,
  options: SheetOptions,
  fonts: FontLibrary,
  words: Words,
): Promise<Outcome<DraftSheet>> => reviewedSheet(product, options, fonts, words);

/** The sheet as JSON alone, to be compared with one that stands somewhere; null where no sheet can be made. */
export async function sheetDataOf(
  product: ClassifiedProduct,
  date: string,
  words: Words,
): Promise<string | null> {
  const complete = completeRecord(product.record);
  if (!complete.ok) return null;
  const input = await sheetInput({ ...product, record: complete.value }, `${date}T00:00:00Z`, words);
  return hasErrors(claimFindings(input)) ? null : JSON.stringify(sheetJson(input));
}

/** As `draftSheet`, with what the sheet was made of. */
export async function reviewedSheet(
  given: ClassifiedProduct,
  { date, paper }: SheetOptions,
  fonts: FontLibrary,
  words: Words,
): Promise<Outcome<ReviewedSheet>> {
  const { product, foreign, findings: spoken } = await inLanguage(given, words);
  const { record, reference } = product;
  const elements = sheetElements(product);
  const complete = completeRecord(record);
  if (!complete.ok) return complete;
  const made = await sheetInput({ ...product, record: complete.value }, `${date}T00:00:00Z`, words);
  const input: SheetInput = { ...made, foreign: [...foreign, ...titlesOf(made)] };
  const claims = claimFindings(input);
  if (hasErrors(claims)) return fail(...claims);
  const template = await loadTemplate(readTemplate, 'sheets/sheet.hbs');
  const model = sheetDocument(input, template);
  const copy = copyMark(product, 'distribution');
  const json = `${JSON.stringify(sheetJson(input, copy), null, 2)}\n`;
  let pdf: Uint8Array;
  let found: Diagnostic[];
  try {
    const document = layoutSheet(model, fonts, { paper, attachments: [disclosed(json, words)] });
    pdf = await writePdf(document, fonts, { kind: 'sheet', version: VERSION, copy });
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
  return succeed({ pdf, html: sheetHtml(model, copy), json, review: questions(input), input }, [
    ...claims,
    ...spoken,
    ...translationFindings(product, words),
    ...statementFindings(record, elements, words, 'warning'),
    ...openFindings(product, words),
    ...useSolutions(product, reference).findings,
    ...found,
  ]);
}

/** Titles of the works that the sheet names stay in English. */
const titlesOf = ({ properties, words }: SheetInput): readonly ForeignText[] =>
  words.language === 'en'
    ? []
    : Object.values(properties.sources).map(({ title }) => ({ text: title, language: 'en' }));

/** That a sheet in another language than its law asks for stands beside the one that it asks for. */
function translationFindings({ record, reference }: ClassifiedProduct, words: Words): readonly Diagnostic[] {
  const asked = sheetForm(reference.basis.id).language;
  if (asked === null || asked === words.language) return [];
  return [
    {
      code: 'sheet-language',
      severity: 'note',
      message: words.spoken.sheetInEnglish,
      cite: '29 CFR 1910.1200(g)(2)',
      at: { file: record.file },
    },
  ];
}

/** What the sheet leaves open, in words: mandatory sections first. */
function questions(input: SheetInput): readonly string[] {
  const { review } = input.words;
  const { open, belowCutOff, symptomsOpen, unconfirmed } = sheetQuestions(input);
  const lines = [true, false].flatMap(mandatory => {
    const items = open.filter(item => item.mandatory === mandatory);
    return items.length > 0 ? [review.unsearched(items, mandatory)] : [];
  });
  return [
    ...lines,
    ...(belowCutOff.length > 0 ? [review.belowCutOff(belowCutOff)] : []),
    ...(symptomsOpen ? [review.symptomsOpen] : []),
    ...(unconfirmed.length > 0 ? [review.unconfirmed(unconfirmed)] : []),
    ...transportQuestions(input),
  ];
}

/** The sheet as data beside its pages (ISO 32000-1 7.11.4): the same texts and nothing else. */
const disclosed = (json: string, { sheet }: Words): Attachment => ({
  name: 'sds.json',
  mediaType: 'application/json',
  description: sheet.frame.attachment,
  relationship: 'Data',
  bytes: new TextEncoder().encode(json),
});
