import { inflateSync } from 'node:zlib';
import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  type PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
  PDFRef,
  PDFStream,
  PDFString,
} from 'pdf-lib';

// Keys that are asked of thousands of objects: making a name takes longer than looking it up.
const ASKED_OFTEN: ReadonlyMap<string, PDFName> = new Map(
  ['A', 'Alt', 'ColSpan', 'Filter', 'F', 'K', 'MCID', 'P', 'Pg', 'S', 'Subtype', 'Type'].map(key => [
    key,
    PDFName.of(key),
  ]),
);

/** The name object of a key. */
export const nameOf = (key: string): PDFName => ASKED_OFTEN.get(key) ?? PDFName.of(key);

/** Value of a key with references followed; streams give their dictionary's value. */
export const entry = (from: PDFObject | undefined, key: string): PDFObject | undefined =>
  asDict(from)?.lookup(nameOf(key));

/** Value of a key as it stands, a reference unfollowed. */
export const rawEntry = (from: PDFObject | undefined, key: string): PDFObject | undefined =>
  asDict(from)?.get(nameOf(key));

export const asDict = (object: PDFObject | undefined): PDFDict | undefined =>
  object instanceof PDFDict ? object : object instanceof PDFStream ? object.dict : undefined;

export const asName = (object: PDFObject | undefined): string | undefined => {
  if (!(object instanceof PDFName)) return undefined;
  const written = object.asString();
  return written.includes('#') ? object.decodeText() : written.slice(1);
};

export const asNumber = (object: PDFObject | undefined): number | undefined =>
  object instanceof PDFNumber ? object.asNumber() : undefined;

export const asText = (object: PDFObject | undefined): string | undefined =>
  object instanceof PDFString || object instanceof PDFHexString ? object.decodeText() : undefined;

/** Members of an array with references followed; a single object counts as an array of one. */
export const members = (object: PDFObject | undefined): PDFObject[] => {
  if (object === undefined) return [];
  if (!(object instanceof PDFArray)) return [object];
  return Array.from({ length: object.size() }, (_, index) => object.lookup(index)).filter(
    (member): member is PDFObject => member !== undefined,
  );
};

/** Members of an array as they stand. */
export const rawMembers = (object: PDFObject | undefined): PDFObject[] =>
  object instanceof PDFArray ? object.asArray() : object === undefined ? [] : [object];

export const entries = (object: PDFObject | undefined): [string, PDFObject][] => {
  const dict = asDict(object);
  if (!dict) return [];
  return dict.keys().flatMap(key => {
    const value = dict.lookup(key);
    return value === undefined ? [] : [[key.decodeText(), value] as [string, PDFObject]];
  });
};

const FLATE = PDFName.of('FlateDecode');
const FILTER = PDFName.of('Filter');
const PARAMETERS = PDFName.of('DecodeParms');

/** What a stream holds, unpacked; undefined for what is no stream. */
export const decoded = (object: PDFObject | undefined): Uint8Array | undefined => {
  if (!(object instanceof PDFRawStream)) return undefined;
  const { dict, contents } = object;
  if (dict.lookup(FILTER) === FLATE && !dict.has(PARAMETERS)) {
    try {
      return inflateSync(contents);
    } catch {
      // Damaged: the slower reader takes what there is, or says what is wrong.
    }
  }
  return decodePDFRawStream(object).decode();
};

/** A page with what it inherits from its ancestors. */
export interface PageObject {
  readonly dict: PDFDict;
  readonly ref: PDFRef | undefined;
  readonly resources: PDFObject | undefined;
  readonly mediaBox: PDFObject | undefined;
  readonly content: Uint8Array;
}

const contentOf = (page: PDFDict): Uint8Array => {
  const parts = members(entry(page, 'Contents')).flatMap(stream => {
    const bytes = decoded(stream);
    return bytes ? [bytes, new Uint8Array([0x0a])] : [];
  });
  return Uint8Array.from(Buffer.concat(parts));
};

/** All pages in order. */
export const pagesOf = (document: PDFDocument): PageObject[] => {
  const pages: PageObject[] = [];
  const seen = new Set<PDFObject>();
  const walk = (raw: PDFObject, inherited: Partial<PageObject>): void => {
    const node = document.context.lookup(raw);
    if (!(node instanceof PDFDict) || seen.has(node)) return;
    seen.add(node);
    const own = {
      resources: entry(node, 'Resources') ?? inherited.resources,
      mediaBox: entry(node, 'MediaBox') ?? inherited.mediaBox,
    };
    const kids = entry(node, 'Kids');
    if (kids) for (const kid of rawMembers(kids)) walk(kid, own);
    else
      pages.push({
        dict: node,
        ref: raw instanceof PDFRef ? raw : undefined,
        ...own,
        content: contentOf(node),
      });
  };
  const root = rawEntry(document.catalog, 'Pages');
  if (root) walk(root, {});
  return pages;
};
