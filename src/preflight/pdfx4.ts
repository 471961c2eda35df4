import { PDFDict, type PDFDocument, PDFName, type PDFObject, PDFRawStream } from 'pdf-lib';
import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asName, asNumber, asText, decoded, entries, entry, members, type PageObject } from './_objects.ts';

const CITE = 'ISO 15930-7';
const fault = (code: string, message: string): Diagnostic => finding(code, message, CITE);

const NEEDED_XMP = ['xmp:MetadataDate', 'xmpMM:DocumentID', 'xmpMM:VersionID', 'xmpMM:RenditionClass'];

/** The name that the XMP of a file gives to its standard, without its version. */
export const claimsPdfX = (xmp: string): boolean => xmp.includes('GTS_PDFXVersion');

/** One output intent with the profile of a CMYK press. */
const checkOutputIntent = (document: PDFDocument): Diagnostic[] => {
  const intents = members(entry(document.catalog, 'OutputIntents')).filter(
    intent => asName(entry(intent, 'S')) === 'GTS_PDFX',
  );
  const stream = entry(intents[0], 'DestOutputProfile');
  const profile = decoded(stream) ?? new Uint8Array();
  const signature = (at: number) => String.fromCharCode(...profile.slice(at, at + 4));
  const size = profile.length < 4 ? 0 : new DataView(profile.buffer, profile.byteOffset).getUint32(0);
  const good =
    intents.length === 1 &&
    asText(entry(intents[0], 'OutputConditionIdentifier')) &&
    asText(entry(intents[0], 'Info')) &&
    asNumber(entry(stream, 'N')) === 4 &&
    size > 0 &&
    size <= profile.length &&
    signature(12) === 'prtr' &&
    signature(16) === 'CMYK';
  return good ? [] : [fault('output-intent', 'the file claims PDF/X without the CMYK profile of one press')];
};

const dictOf = (object: PDFObject): PDFDict | undefined =>
  object instanceof PDFDict ? object : object instanceof PDFRawStream ? object.dict : undefined;

const FORBIDDEN: readonly (readonly [key: string, code: string, message: string])[] = [
  ['JS', 'active-content', 'the file holds a script'],
  ['Annots', 'annotation', 'a page has annotations'],
  ['OPI', 'opi', 'the file holds OPI comments'],
  ['Alternates', 'alternate-image', 'a picture has alternates'],
  ['TR', 'transfer-curve', 'a graphics state has a transfer curve'],
  ['HTP', 'halftone-phase', 'a graphics state has a halftone phase'],
  ['EF', 'attached-file', 'the file carries another'],
];
const FORBIDDEN_NAMES = FORBIDDEN.map(([key, ...fault]) => [PDFName.of(key), ...fault] as const);

/** Keys that PDF/X-4 forbids, and inks of one name that are not one object. */
const checkObjects = (document: PDFDocument): Diagnostic[] => {
  const found: Diagnostic[] = [];
  const inks = new Map<string, Set<PDFObject>>();
  for (const [, object] of document.context.enumerateIndirectObjects()) {
    const dict = dictOf(object);
    for (const [key, code, message] of FORBIDDEN_NAMES) if (dict?.has(key)) found.push(fault(code, message));
    if (asName(entry(dict, 'Subtype')) === 'PS') found.push(fault('postscript', 'the file holds PostScript'));
    const [family, ink] = members(object).map(asName);
    if (family === 'Separation' && ink !== undefined) inks.set(ink, (inks.get(ink) ?? new Set()).add(object));
  }
  for (const [ink, objects] of inks)
    if (objects.size > 1) found.push(fault('ink-twice', `the ink "${ink}" is defined ${objects.size} times`));
  return found;
};

/** Whether a page has transparency in its own graphics states. */
const isTransparent = ({ resources }: PageObject): boolean =>
  entries(entry(resources, 'ExtGState')).some(
    ([, state]) =>
      [entry(state, 'ca'), entry(state, 'CA')].some(value => (asNumber(value) ?? 1) < 1) ||
      (entry(state, 'SMask') !== undefined && asName(entry(state, 'SMask')) !== 'None'),
  ) || entries(entry(resources, 'XObject')).some(([, object]) => entry(object, 'SMask') !== undefined);

const checkGroups = (pages: readonly PageObject[]): Diagnostic[] =>
  pages
    .filter(page => isTransparent(page) && asName(entry(entry(page.dict, 'Group'), 'CS')) !== 'DeviceCMYK')
    .map(() => fault('transparency-group', 'a page has transparency without a group of DeviceCMYK'));

/** Checks what a file that claims PDF/X-4 has to keep beyond what every label keeps. */
export const checkPdfx4 = (
  document: PDFDocument,
  bytes: Uint8Array,
  xmp: string,
  pages: readonly PageObject[],
): Diagnostic[] => {
  if (!claimsPdfX(xmp)) return [];
  const found = [...checkOutputIntent(document), ...checkObjects(document), ...checkGroups(pages)];
  if (!xmp.includes('<pdfxid:GTS_PDFXVersion>PDF/X-4</pdfxid:GTS_PDFXVersion>'))
    found.push(fault('pdfx-version', 'the claim of PDF/X is not one of PDF/X-4'));
  if (String.fromCharCode(...bytes.subarray(0, 8)) !== '%PDF-1.6')
    found.push(fault('header-version', 'a PDF/X-4 file begins with %PDF-1.6'));
  for (const name of NEEDED_XMP)
    if (!new RegExp(`<${name}>[^<]+</${name}>`, 'u').test(xmp))
      found.push(fault('xmp-incomplete', `the XMP metadata lack ${name}`));
  if (document.context.trailerInfo.Encrypt) found.push(fault('encrypted', 'the file is encrypted'));
  return found;
};
