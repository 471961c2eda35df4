import { PDFArray, PDFBool, type PDFDocument, PDFRawStream } from 'pdf-lib';
import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asName, asText, decoded, entry, members } from './_objects.ts';
import type { PreflightProfile } from './profile.ts';

const PDF = 'ISO 32000-1';

/** Text of an XMP property, or of the default item of a language alternative. */
const xmpValue = (xmp: string, name: string): string | undefined => {
  const inner = new RegExp(`<${name}>([\\s\\S]*?)</${name}>`, 'u').exec(xmp)?.[1];
  const text = inner && (/<rdf:li[^>]*>([\s\S]*?)<\/rdf:li>/u.exec(inner)?.[1] ?? inner);
  return text
    ?.replace(/&lt;/gu, '<')
    .replace(/&gt;/gu, '>')
    .replace(/&quot;/gu, '"')
    .replace(/&amp;/gu, '&');
};

/** The XMP packet of a file; empty where it has none. */
export const xmpOf = (document: PDFDocument): string =>
  new TextDecoder().decode(decoded(entry(document.catalog, 'Metadata')));

/** Digits of a date, which Info and XMP write differently. */
const digits = (date: string | undefined): string => (date ?? '').replace(/\D/gu, '').slice(0, 14);

const checkIdentity = (document: PDFDocument, bytes: Uint8Array, kind: string): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const header = String.fromCharCode(...bytes.subarray(0, 8));
  const wanted = kind === 'label' ? /^%PDF-1\.[4-6]$/u : /^%PDF-1\.[4-7]$/u;
  if (!wanted.test(header))
    findings.push(
      finding('header-version', `the file begins with ${JSON.stringify(header)}`, `${PDF} 7.5.2`),
    );
  const id = document.context.lookup(document.context.trailerInfo.ID);
  if (!(id instanceof PDFArray) || id.size() !== 2)
    findings.push(finding('file-identifier', 'the trailer has no file identifier', `${PDF} 14.4`));
  return findings;
};

const checkMetadata = (document: PDFDocument, kind: string): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const info = document.context.lookup(document.context.trailerInfo.Info);
  const stream = entry(document.catalog, 'Metadata');
  const title = asText(entry(info, 'Title'));
  const trapped = asName(entry(info, 'Trapped'));
  if (!title?.trim()) findings.push(finding('no-title', 'the file has no title', 'ISO 14289-1 7.1'));
  if (kind !== 'sheet' && trapped !== 'False' && trapped !== 'True')
    findings.push(finding('trapped', `Trapped is ${trapped ?? 'missing'}`, 'ISO 15930-7'));
  if (!(stream instanceof PDFRawStream)) {
    findings.push(finding('no-xmp', 'the file has no XMP metadata', `${PDF} 14.3.2`));
    return findings;
  }
  if (entry(stream, 'Filter'))
    findings.push(finding('xmp-compressed', 'the XMP metadata is compressed', 'ISO 15930-7'));
  const xmp = xmpOf(document);
  const pairs: readonly (readonly [string, string | undefined, string | undefined])[] = [
    ['title', title, xmpValue(xmp, 'dc:title')],
    ['producer', asText(entry(info, 'Producer')), xmpValue(xmp, 'pdf:Producer')],
    ['creation date', digits(asText(entry(info, 'CreationDate'))), digits(xmpValue(xmp, 'xmp:CreateDate'))],
    ['modification date', digits(asText(entry(info, 'ModDate'))), digits(xmpValue(xmp, 'xmp:ModifyDate'))],
    ['trapping', trapped, xmpValue(xmp, 'pdf:Trapped')],
  ];
  for (const [what, first, second] of pairs)
    if (first !== second)
      findings.push(
        finding(
          'metadata-differ',
          `${what} is "${first ?? ''}" in Info and "${second ?? ''}" in XMP`,
          'ISO 15930-7',
        ),
      );
  return findings;
};

const checkCatalog = (document: PDFDocument): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const { catalog } = document;
  const isTrue = (value: unknown) => value instanceof PDFBool && value.asBoolean();
  if (!asText(entry(catalog, 'Lang'))?.trim())
    findings.push(finding('no-language', 'the file names no language', 'ISO 14289-1 7.2'));
  if (!isTrue(entry(entry(catalog, 'ViewerPreferences'), 'DisplayDocTitle')))
    findings.push(finding('title-not-shown', 'viewers are not told to show the title', 'ISO 14289-1 7.1'));
  if (!isTrue(entry(entry(catalog, 'MarkInfo'), 'Marked')))
    findings.push(finding('not-marked', 'the file is not marked as tagged', 'ISO 14289-1 6.2'));
  for (const key of ['OpenAction', 'AA', 'AcroForm'])
    if (entry(catalog, key))
      findings.push(finding('active-content', `the catalog has ${key}`, 'ISO 15930-7'));
  return findings;
};

/** Every attached file: names, description, media type, relationship, and listed as associated (ISO 32000-1 7.11). */
const checkAttachments = (document: PDFDocument): Diagnostic[] => {
  const names = members(entry(entry(entry(document.catalog, 'Names'), 'EmbeddedFiles'), 'Names'));
  const associated = new Set(members(entry(document.catalog, 'AF')));
  return names.flatMap((file, index) => {
    if (index % 2 === 0) return [];
    const stream = entry(entry(file, 'EF'), 'F');
    const complete =
      asText(entry(file, 'F')) &&
      asText(entry(file, 'UF')) &&
      asText(entry(file, 'Desc')) &&
      asName(entry(file, 'AFRelationship')) &&
      asName(entry(stream, 'Subtype')) &&
      associated.has(file);
    const name = asText(names[index - 1]) ?? '';
    return complete
      ? []
      : [
          finding(
            'attachment-incomplete',
            `the attached file ${name} is not fully described`,
            'ISO 19005-3 6.8',
          ),
        ];
  });
};

/** Checks what concerns the file as a whole. */
export const checkDocument = (
  document: PDFDocument,
  bytes: Uint8Array,
  { kind }: PreflightProfile,
): Diagnostic[] => [
  ...checkIdentity(document, bytes, kind),
  ...checkMetadata(document, kind),
  ...checkCatalog(document),
  ...checkAttachments(document),
];
