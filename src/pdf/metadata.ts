import { createHash } from 'node:crypto';
import { type PDFContext, PDFHexString, type PDFRef, PDFString } from 'pdf-lib';
import type { PagedDocument } from '../layout/frame.ts';
import type { CopyMark } from '../provenance/copy-mark.ts';

/** What a file says about itself, once in its Info dictionary and once more in XMP. */
export interface Metadata {
  readonly title: string;
  readonly subject: string;
  readonly language: string;
  readonly producer: string;
  readonly date: Date;
  readonly copy?: CopyMark;
  /** Hash of the content, 32 hexadecimal digits. */
  readonly id: string;
  readonly claims: { readonly pdfx4: boolean; readonly pdfua1: boolean; readonly pdfa3: boolean };
}

/** Hash of everything that is shown, tagged or attached: same content, same identifier. */
export const contentId = (document: PagedDocument, contents: readonly string[], settings: string): string => {
  const { frames, attachments, ...described } = document;
  const hash = createHash('sha256').update(JSON.stringify(described)).update(settings);
  for (const { width, height, bleed, slug } of frames)
    hash.update(JSON.stringify([width, height, bleed, slug]));
  for (const content of contents) hash.update(content);
  for (const { bytes, ...described } of attachments) hash.update(JSON.stringify(described)).update(bytes);
  return hash.digest('hex').slice(0, 32);
};

const seconds = (date: Date): string => date.toISOString().slice(0, 19);

/** A date as in ISO 32000-1 7.9.4, in UTC. */
export const pdfDate = (date: Date): PDFString => PDFString.of(`D:${seconds(date).replace(/[-:T]/gu, '')}Z`);

/** The mark of a copy as entries of the Info dictionary. */
export const copyEntries = ({ kind, fingerprint }: CopyMark) => ({
  LabelwrightCopy: PDFString.of(kind),
  LabelwrightFingerprint: PDFString.of(fingerprint),
});

/** Text strings go out as UTF-16, so that no character depends on a reader's code page. */
export const writeInfo = (
  context: PDFContext,
  { title, subject, producer, date, copy, claims }: Metadata,
): PDFRef =>
  context.register(
    context.obj({
      Title: PDFHexString.fromText(title),
      Subject: PDFHexString.fromText(subject),
      Creator: PDFHexString.fromText(producer),
      Producer: PDFHexString.fromText(producer),
      CreationDate: pdfDate(date),
      ModDate: pdfDate(date),
      // No property of the XMP that PDF/A builds on, and of no use to an office printer.
      ...(!claims.pdfa3 && { Trapped: 'False' }),
      ...(copy && copyEntries(copy)),
    }),
  );

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string =>
  text.replace(/[&<>"]/gu, character => ENTITIES[character] ?? character);

const uuid = (id: string): string =>
  `uuid:${id.slice(0, 8)}-${id.slice(8, 12)}-${id.slice(12, 16)}-${id.slice(16, 20)}-${id.slice(20)}`;

const alternative = (text: string): string =>
  `<rdf:Alt><rdf:li xml:lang="x-default">${escaped(text)}</rdf:li></rdf:Alt>`;

/** Properties that PDF/A does not know by itself: they are described in the file (ISO 19005-3 6.6.2.3). */
const OWN_SCHEMAS = [
  {
    schema: 'PDF/UA identification',
    namespace: 'http://www.aiim.org/pdfua/ns/id/',
    prefix: 'pdfuaid',
    properties: [['part', 'Integer', 'part of ISO 14289']],
  },
  {
    schema: 'labelwright document',
    namespace: 'urn:labelwright:document:1#',
    prefix: 'lw',
    properties: [
      ['copy', 'Text', 'who may read the document: distribution or review'],
      ['fingerprint', 'Text', 'hash of what the document was made from'],
    ],
  },
] as const;

const extensionSchemas = (): string =>
  `<pdfaExtension:schemas><rdf:Bag>
${OWN_SCHEMAS.map(
  ({ schema, namespace, prefix, properties }) => `<rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>${schema}</pdfaSchema:schema>
<pdfaSchema:namespaceURI>${namespace}</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>${prefix}</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq>
${properties
  .map(
    ([name, valueType, description]) => `<rdf:li rdf:parseType="Resource">
<pdfaProperty:name>${name}</pdfaProperty:name>
<pdfaProperty:valueType>${valueType}</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>${description}</pdfaProperty:description>
</rdf:li>`,
  )
  .join('\n')}
</rdf:Seq></pdfaSchema:property>
</rdf:li>`,
).join('\n')}
</rdf:Bag></pdfaExtension:schemas>`;

const ARCHIVE_NAMESPACES = `
 xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
 xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
 xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
 xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#"`;

/** The XMP packet (ISO 16684-1), agreeing with the Info dictionary. */
export const xmpPacket = ({
  title,
  subject,
  language,
  producer,
  date,
  id,
  claims,
  copy,
}: Metadata): string => {
  const instant = `${seconds(date)}Z`;
  const claimed = [
    ...(claims.pdfx4 ? ['<pdfxid:GTS_PDFXVersion>PDF/X-4</pdfxid:GTS_PDFXVersion>'] : []),
    ...(claims.pdfua1 ? ['<pdfuaid:part>1</pdfuaid:part>'] : []),
    ...(claims.pdfa3
      ? ['<pdfaid:part>3</pdfaid:part>', '<pdfaid:conformance>A</pdfaid:conformance>', extensionSchemas()]
      : []),
  ];
  const marked = copy
    ? [`<lw:copy>${copy.kind}</lw:copy>`, `<lw:fingerprint>${escaped(copy.fingerprint)}</lw:fingerprint>`]
    : [];
  return `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about=""
 xmlns:dc="http://purl.org/dc/elements/1.1/"
 xmlns:xmp="http://ns.adobe.com/xap/1.0/"
 xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/"
 xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
 xmlns:pdfxid="http://www.npes.org/pdfx/ns/id/"
 xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
 xmlns:lw="urn:labelwright:document:1#"${claims.pdfa3 ? ARCHIVE_NAMESPACES : ''}>
<dc:format>application/pdf</dc:format>
<dc:title>${alternative(title)}</dc:title>
<dc:description>${alternative(subject)}</dc:description>
<dc:language><rdf:Bag><rdf:li>${escaped(language)}</rdf:li></rdf:Bag></dc:language>
<xmp:CreatorTool>${escaped(producer)}</xmp:CreatorTool>
<xmp:CreateDate>${instant}</xmp:CreateDate>
<xmp:ModifyDate>${instant}</xmp:ModifyDate>
<xmp:MetadataDate>${instant}</xmp:MetadataDate>
<xmpMM:DocumentID>${uuid(id)}</xmpMM:DocumentID>
<xmpMM:VersionID>1</xmpMM:VersionID>
<xmpMM:RenditionClass>default</xmpMM:RenditionClass>
<pdf:Producer>${escaped(producer)}</pdf:Producer>
${claims.pdfa3 ? '' : '<pdf:Trapped>False</pdf:Trapped>\n'}${[...marked, ...claimed].map(line => `${line}\n`).join('')}</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>`;
};

/** The XMP stream, uncompressed, so that tools which know nothing of PDF can read it too. */
export const writeXmp = (context: PDFContext, metadata: Metadata): PDFRef =>
  context.register(
    context.stream(new TextEncoder().encode(xmpPacket(metadata)), { Type: 'Metadata', Subtype: 'XML' }),
  );
