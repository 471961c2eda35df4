import { type PDFContext, type PDFObject, type PDFRawStream, type PDFRef, PDFStream } from 'pdf-lib';
import { flateStream } from './flate.ts';

/** Objects in one compressed stream: in larger ones more is alike, but a reader of one object unpacks them all. */
const TOGETHER = 200;

/** Widths of the columns of a cross-reference row in bytes: kind, place, place within. */
const COLUMNS = [1, 4, 2] as const;

/** What `objects` give as one stream (ISO 32000-1 7.5.7). */
const objectStream = (
  context: PDFContext,
  objects: readonly (readonly [PDFRef, PDFObject])[],
): PDFRawStream => {
  let [index, body] = ['', ''];
  for (const [{ objectNumber }, object] of objects) {
    index += `${objectNumber} ${body.length} `;
    body += `${object}\n`;
  }
  return flateStream(context, index + body, { Type: 'ObjStm', N: objects.length, First: index.length });
};

/**
 * A file of PDF 1.7 whose objects lie in compressed streams, with a cross-reference stream (ISO 32000-1 7.5.8). Nothing
 * of it is encrypted, and every object is of generation 0.
 * @throws RangeError for a file of 4 GB and more
 */
export const serializeCompressed = (context: PDFContext): Uint8Array => {
  const parts: Uint8Array[] = [];
  let length = 0;
  const put = (part: Uint8Array) => {
    parts.push(part);
    length += part.length;
  };
  const rows: [number, number, number][] = [[0, 0, 65_535]];
  let next = context.largestObjectNumber + 1;
  const putObject = (number: number, object: PDFStream) => {
    rows[number] = [1, length, 0];
    object.updateDict();
    put(Buffer.from(`${number} 0 obj\n${object.dict}\nstream\n`, 'latin1'));
    put(object.getContents());
    put(Buffer.from('\nendstream\nendobj\n\n'));
  };
  // Four bytes above 127 say that the file is binary (7.5.2).
  put(Buffer.from('%PDF-1.7\n%\x81\x81\x81\x81\n\n', 'latin1'));
  const packed: [PDFRef, PDFObject][] = [];
  for (const [ref, object] of context.enumerateIndirectObjects())
    if (object instanceof PDFStream) putObject(ref.objectNumber, object);
    else packed.push([ref, object]);
  for (let at = 0; at < packed.length; at += TOGETHER) {
    const objects = packed.slice(at, at + TOGETHER);
    for (const [within, [{ objectNumber }]] of objects.entries()) rows[objectNumber] = [2, next, within];
    putObject(next++, objectStream(context, objects));
  }
  const start = length;
  rows[next] = [1, start, 0];
  putObject(next, crossReferences(context, rows));
  put(Buffer.from(`startxref\n${start}\n%%EOF`));
  return Uint8Array.from(Buffer.concat(parts));
};

/** Where each object stands; a number that no object has is free. */
const crossReferences = (
  context: PDFContext,
  rows: readonly (readonly [number, number, number])[],
): PDFRawStream => {
  const size = rows.length;
  const bytes = Buffer.alloc(size * COLUMNS.reduce((sum, width) => sum + width, 0));
  let at = 0;
  for (let number = 0; number < size; number++) {
    const row = rows[number] ?? [0, 0, 65_535];
    for (const [column, width] of COLUMNS.entries()) at = bytes.writeUIntBE(row[column]!, at, width);
  }
  const { Root, Info, ID } = context.trailerInfo;
  return flateStream(context, bytes, { Type: 'XRef', Size: size, W: [...COLUMNS], Root, Info, ID });
};
