import { encode } from 'fast-png';
import { type PDFContext, PDFDocument, type PDFPage, type PDFRawStream, rgb, StandardFonts } from 'pdf-lib';

export const MM = 72 / 25.4;

/** A page of a PDF of a size in millimetres, drawn on by operators or by pdf-lib. */
export async function pageOf(
  [width, height]: readonly [number, number],
  draw: (page: PDFPage, document: PDFDocument) => unknown = () => undefined,
  pages = 1,
): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  for (let at = 0; at < pages; at += 1) {
    const page = document.addPage([width * MM, height * MM]);
    await draw(page, document);
  }
  return document.save({ useObjectStreams: false });
}

/** Adds operators to a page as they are. */
export function operators(page: PDFPage, document: PDFDocument, text: string): void {
  page.node.addContentStream(document.context.register(document.context.flateStream(text)));
}

/** A red rectangle as pdf-lib draws it: DeviceRGB. */
export const screenRed = (page: PDFPage): void =>
  page.drawRectangle({ x: 10, y: 10, width: 50, height: 50, color: rgb(1, 0, 0) });

/** Text in a face that every reader has, so that it is not embedded. */
export async function standardText(page: PDFPage, document: PDFDocument): Promise<void> {
  const font = await document.embedFont(StandardFonts.Helvetica);
  const key = page.node.newFontDictionary('F', font.ref).asString();
  operators(page, document, `BT ${key} 12 Tf 0 0 0 1 k 20 20 Td (x) Tj ET`);
}

/** A gray picture as a press takes it. */
export const grayImage = (context: PDFContext, width: number, height: number): PDFRawStream =>
  context.flateStream(new Uint8Array(width * height).fill(90), {
    Type: 'XObject',
    Subtype: 'Image',
    Width: width,
    Height: height,
    ColorSpace: 'DeviceGray',
    BitsPerComponent: 8,
  });

/** A PNG of one color; three or four parts a pixel. */
export function png(width: number, height: number, color: readonly number[]): Uint8Array {
  const channels = color.length as 1 | 3 | 4;
  const data = new Uint8Array(width * height * channels);
  for (let at = 0; at < data.length; at += 1) data[at] = color[at % channels]!;
  return encode({ width, height, data, channels, depth: 8 });
}

/** An SVG of 136 x 126 mm with content. */
export const svg = (content: string, more = 'width="136mm" height="126mm"'): Uint8Array =>
  new TextEncoder().encode(
    `<svg xmlns="http://www.w3.org/2000/svg" ${more} viewBox="0 0 136 126">${content}</svg>`,
  );
