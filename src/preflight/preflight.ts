import { ParseSpeeds, PDFDocument } from 'pdf-lib';
import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { pagesOf } from './_objects.ts';
import { checkBoxes } from './boxes.ts';
import { checkDieLine, checkLayers } from './die-line.ts';
import { checkDocument, xmpOf } from './document.ts';
import { checkFonts } from './fonts.ts';
import { checkInks } from './inks.ts';
import { checkOneInk } from './one-ink.ts';
import { marksOf, type PageMarks } from './page-marks.ts';
import { checkPdfa3 } from './pdfa3.ts';
import { checkPdfx4, claimsPdfX } from './pdfx4.ts';
import { checkArt } from './placed-art.ts';
import { checkPlacing, checkPrinterPlacing } from './placing.ts';
import type { PreflightProfile } from './profile.ts';
import { checkOutline, checkStructure } from './structure.ts';
import { checkTagging } from './tagging.ts';

/** Identical findings once each, in the order in which they were made. */
const distinct = (findings: readonly Diagnostic[]): Diagnostic[] => [
  ...new Map(findings.map(found => [`${found.code}\n${found.message}`, found])).values(),
];

const checkPress = (pages: readonly PageMarks[], profile: PreflightProfile): Diagnostic[] => {
  if (profile.kind === 'printer') {
    const { label } = profile;
    return pages.flatMap(marks => [
      ...checkOneInk(marks),
      ...(label ? checkPrinterPlacing(marks, label) : []),
    ]);
  }
  if (profile.kind !== 'label') return [];
  const { dieInk } = profile;
  return pages.flatMap(marks => [
    ...checkBoxes(marks.page),
    ...checkInks(marks, profile),
    ...checkPlacing(marks, profile),
    ...checkArt(marks, profile),
    ...(dieInk === undefined ? [] : checkDieLine(marks, dieInk)),
  ]);
};

/**
 * Reads a finished PDF from its bytes alone and lists what is wrong with it; empty where nothing was found. It never
 * says that a file conforms to a standard: it checks what its rules name, no more.
 */
export const preflight = async (bytes: Uint8Array, profile: PreflightProfile): Promise<Diagnostic[]> => {
  let document: PDFDocument;
  let pages: PageMarks[];
  try {
    document = await PDFDocument.load(bytes, {
      updateMetadata: false,
      throwOnInvalidObject: true,
      parseSpeed: ParseSpeeds.Fastest,
    });
    pages = pagesOf(document).map(marksOf);
  } catch (error) {
    return [finding('unreadable', `the file cannot be read: ${(error as Error).message}`, 'ISO 32000-1 7.5')];
  }
  if (pages.length === 0) return [finding('no-pages', 'the file has no pages', 'ISO 32000-1 7.7.3')];
  const xmp = xmpOf(document);
  return distinct([
    ...checkDocument(document, bytes, profile),
    ...checkPdfx4(
      document,
      bytes,
      xmp,
      pages.map(({ page }) => page),
    ),
    ...checkPdfa3(document, bytes, xmp, pages),
    ...(profile.kind === 'label' && profile.pdfx4 && !claimsPdfX(xmp)
      ? [finding('no-pdfx', 'the file does not claim PDF/X-4', 'ISO 15930-7')]
      : []),
    ...checkFonts(pages),
    ...checkPress(pages, profile),
    ...checkLayers(document),
    ...pages.flatMap(checkTagging),
    ...checkStructure(document, pages),
    ...(profile.kind === 'sheet' ? checkOutline(document) : []),
  ]);
};
