import { PDFDict, type PDFDocument, PDFName, type PDFObject, PDFRawStream } from 'pdf-lib';
import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asName, asNumber, asText, decoded, entry, members } from './_objects.ts';
import type { PageMarks } from './page-marks.ts';

const fault = (code: string, message: string, clause: string): Diagnostic =>
  finding(code, message, `ISO 19005-3 ${clause}`);

/** Whether the XMP of a file names a part of PDF/A. */
export const claimsPdfA = (xmp: string): boolean => xmp.includes('pdfaid:part');

/** Namespaces whose properties PDF/A knows by itself (XMP Specification, September 2005). */
const PREDEFINED = [
  'dc',
  'xmp',
  'xmpMM',
  'pdf',
  'pdfaid',
  'rdf',
  'x',
  'pdfaExtension',
  'pdfaSchema',
  'pdfaProperty',
];
const OF_PDF = ['pdf:Keywords', 'pdf:PDFVersion', 'pdf:Producer'];

const checkClaim = (xmp: string): Diagnostic[] => {
  const found: Diagnostic[] = [];
  if (!/<pdfaid:part>3<\/pdfaid:part>\s*<pdfaid:conformance>[ABU]<\/pdfaid:conformance>/u.test(xmp))
    found.push(fault('pdfa-version', 'the claim of PDF/A is not one of PDF/A-3 with its level', '6.6.4'));
  const described = new Set(
    [
      ...xmp.matchAll(/<pdfaSchema:prefix>(\w+)<\/pdfaSchema:prefix>([\s\S]*?)<\/pdfaSchema:property>/gu),
    ].flatMap(([, prefix, properties = '']) =>
      [...properties.matchAll(/<pdfaProperty:name>(\w+)</gu)].map(([, name]) => `${prefix}:${name}`),
    ),
  );
  const used = new Set(
    [...xmp.matchAll(/<(\w+):(\w+)[ >]/gu)].map(([, prefix, name]) => `${prefix}:${name}`),
  );
  for (const property of used) {
    const [prefix = ''] = property.split(':');
    const known = prefix === 'pdf' ? OF_PDF.includes(property) : PREDEFINED.includes(prefix);
    if (!known && !described.has(property))
      found.push(
        fault('xmp-undescribed', `the XMP metadata have ${property} without its description`, '6.6.2.3'),
      );
  }
  return found;
};

/** One output intent with the profile of an RGB display. */
const checkOutputIntent = (document: PDFDocument): Diagnostic[] => {
  const intents = members(entry(document.catalog, 'OutputIntents'));
  const stream = entry(intents[0], 'DestOutputProfile');
  const profile = decoded(stream) ?? new Uint8Array();
  const signature = (at: number) => String.fromCharCode(...profile.slice(at, at + 4));
  const size = profile.length < 128 ? 0 : new DataView(profile.buffer, profile.byteOffset).getUint32(0);
  const good =
    intents.length === 1 &&
    asName(entry(intents[0], 'S')) === 'GTS_PDFA1' &&
    asText(entry(intents[0], 'OutputConditionIdentifier')) &&
    asNumber(entry(stream, 'N')) === 3 &&
    size > 0 &&
    size === profile.length &&
    (profile[8] === 2 || profile[8] === 4) &&
    signature(12) === 'mntr' &&
    signature(16) === 'RGB ' &&
    signature(36) === 'acsp';
  return good
    ? []
    : [fault('output-intent', 'the file claims PDF/A without one whole profile of RGB', '6.2.3')];
};

const FORBIDDEN: readonly (readonly [key: string, code: string, message: string, clause: string])[] = [
  ['JS', 'active-content', 'the file holds a script', '6.5'],
  ['Annots', 'annotation', 'a page has annotations', '6.3'],
  ['AA', 'active-content', 'the file holds actions', '6.5'],
  ['TR', 'transfer-curve', 'a graphics state has a transfer curve', '6.2.5'],
  ['HTP', 'halftone-phase', 'a graphics state has a halftone phase', '6.2.5'],
  ['SMask', 'transparency', 'the file has transparency', '6.2.10'],
  ['OCProperties', 'optional-content', 'the file has layers', '6.9'],
  ['CIDSet', 'cid-set', 'a font lists its characters', '6.2.11.4'],
];
const FORBIDDEN_NAMES = FORBIDDEN.map(([key, ...fault]) => [PDFName.of(key), ...fault] as const);

const dictOf = (object: PDFObject): PDFDict | undefined =>
  object instanceof PDFDict ? object : object instanceof PDFRawStream ? object.dict : undefined;

const checkObjects = (document: PDFDocument): Diagnostic[] => {
  const found: Diagnostic[] = [];
  for (const [, object] of document.context.enumerateIndirectObjects()) {
    const dict = dictOf(object);
    for (const [key, code, message, clause] of FORBIDDEN_NAMES)
      if (dict?.has(key)) found.push(fault(code, message, clause));
    if (members(entry(dict, 'Filter')).some(filter => asName(filter) === 'LZWDecode'))
      found.push(fault('lzw', 'a stream is compressed with LZW', '6.1.7.2'));
    if (object instanceof PDFRawStream && dict?.has(PDFName.of('F')))
      found.push(fault('external-stream', 'a stream lies outside the file', '6.1.7.1'));
    if (asName(entry(dict, 'Subtype')) === 'CIDFontType2' && !entry(dict, 'CIDToGIDMap'))
      found.push(fault('cid-map', 'a font does not map its codes to glyphs', '6.2.11.3.2'));
    if (asName(entry(dict, 'Type')) === 'EmbeddedFile' && !asText(entry(entry(dict, 'Params'), 'ModDate')))
      found.push(fault('attachment-undated', 'an attached file has no day of change', '6.8'));
  }
  return found;
};

const checkBytes = (document: PDFDocument, bytes: Uint8Array): Diagnostic[] => {
  const found: Diagnostic[] = [];
  const line = bytes.indexOf(10);
  const comment = bytes.subarray(line + 1, line + 6);
  if (comment[0] !== 37 || comment.length < 5 || [...comment.subarray(1)].some(byte => byte < 128))
    found.push(fault('header-comment', 'no comment of bytes above 127 follows the header', '6.1.2'));
  const end = new TextDecoder('latin1').decode(bytes.subarray(-8));
  if (!/%%EOF(?:\r\n|\r|\n)?$/u.test(end))
    found.push(fault('data-behind-end', 'the file goes on behind its end', '6.1.3'));
  if (document.context.trailerInfo.Encrypt) found.push(fault('encrypted', 'the file is encrypted', '6.1.3'));
  return found;
};

const PICTURES = new Set(['Do', 'sh', 'BI', 'gs', 'ri']);

/** Colors that the profile of RGB describes, and no pictures or graphics states. */
const checkPaint = ({ painted, operators }: PageMarks): Diagnostic[] => [
  ...painted
    .flatMap(({ fill, stroke }) => [fill, stroke])
    .filter(({ space }) => space !== 'DeviceGray' && space !== 'DeviceRGB')
    .map(({ space }) => fault('color-space', `${space} is painted under a profile of RGB`, '6.2.4')),
  ...operators
    .filter(({ operator }) => PICTURES.has(operator))
    .map(({ operator }) => fault('picture', `the operator ${operator} is used`, '6.2.8')),
];

/** Checks what a file that claims PDF/A has to keep beyond what every sheet keeps. */
export const checkPdfa3 = (
  document: PDFDocument,
  bytes: Uint8Array,
  xmp: string,
  pages: readonly PageMarks[],
): Diagnostic[] =>
  claimsPdfA(xmp)
    ? [
        ...checkClaim(xmp),
        ...checkOutputIntent(document),
        ...checkObjects(document),
        ...checkBytes(document, bytes),
        ...pages.flatMap(checkPaint),
      ]
    : [];
