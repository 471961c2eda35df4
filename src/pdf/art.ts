import {
  decodePDFRawStream,
  PDFArray,
  type PDFContext,
  type PDFDict,
  PDFDocument,
  PDFName,
  PDFObjectCopier,
  PDFRawStream,
  type PDFRef,
} from 'pdf-lib';
import type { Art, DrawingArt, DrawnLine, Inks, Matrix, PageArt, PictureArt } from '../artwork/art.ts';
import type { FrameItem } from '../layout/frame.ts';
import { pdfNumber } from './_number.ts';
import { flateStream } from './flate.ts';

/** Every artwork of a document once, by the name of its resource. */
export const artNames = (items: readonly FrameItem[]): ReadonlyMap<Art, string> => {
  const names = new Map<Art, string>();
  for (const item of items)
    if (item.kind === 'art' && !names.has(item.art)) names.set(item.art, `Art${names.size}`);
  return names;
};

/** Whether artwork is blended with what lies below it. */
export const isTransparent = (art: Art): boolean =>
  art.kind === 'page' ? art.transparent : art.kind === 'picture' && art.alpha !== null;

/** Operands of `cm` that lay artwork over a rectangle in points, given by its lower left corner and its sides. */
export function artMatrix(
  art: Art,
  {
    x,
    y,
    width,
    height,
  }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): Matrix {
  if (art.kind === 'picture') return [width, 0, 0, height, x, y];
  if (art.kind === 'drawing') {
    const [left, top, wide, high] = art.view;
    const [sx, sy] = [width / wide, height / high];
    return [sx, 0, 0, -sy, x - left * sx, y + height + top * sy];
  }
  const [left, bottom, right, top] = art.box;
  const [sx, sy] = [width / (right - left), height / (top - bottom)];
  return [sx, 0, 0, sy, x - left * sx, y - bottom * sy];
}

/** Registers artwork as a form or an image XObject (ISO 32000-1 8.10, 8.9). */
export async function registerArt(context: PDFContext, art: Art): Promise<PDFRef> {
  if (art.kind === 'page') return registerPage(context, art);
  return art.kind === 'picture' ? registerPicture(context, art) : registerDrawing(context, art);
}

/** A page as a form with the resources of its own. */
async function registerPage(context: PDFContext, { source, page: number, box }: PageArt): Promise<PDFRef> {
  const document = await PDFDocument.load(source, { updateMetadata: false });
  const { node } = document.getPage(number);
  const copier = PDFObjectCopier.for(document.context, context);
  const resources = node.Resources();
  const group = node.lookup(PDFName.of('Group'));
  const entries: Record<string, PDFDict> = {
    Resources: resources ? copier.copy(resources) : context.obj({}),
    ...(group && { Group: copier.copy(group) as PDFDict }),
  };
  const contents = node.Contents();
  const streams =
    contents instanceof PDFArray
      ? Array.from({ length: contents.size() }, (_, at) => contents.lookup(at))
      : [contents];
  const parts = streams.flatMap(stream =>
    stream instanceof PDFRawStream ? [decodePDFRawStream(stream).decode(), new Uint8Array([10])] : [],
  );
  return context.register(
    flateStream(context, Uint8Array.from(Buffer.concat(parts)), {
      Type: 'XObject',
      Subtype: 'Form',
      FormType: 1,
      BBox: [...box],
      ...entries,
    }),
  );
}

/** Pixels in their inks; opacity as a soft mask. */
function registerPicture(context: PDFContext, { columns, rows, space, samples, alpha }: PictureArt): PDFRef {
  const image = (bytes: Uint8Array, colors: string, more: Record<string, PDFRef> = {}) =>
    context.register(
      flateStream(context, bytes, {
        Type: 'XObject',
        Subtype: 'Image',
        Width: columns,
        Height: rows,
        ColorSpace: colors,
        BitsPerComponent: 8,
        ...more,
      }),
    );
  return image(samples, space, alpha ? { SMask: image(alpha, 'DeviceGray') } : {});
}

const inked = (inks: Inks, operator: 'k' | 'K'): string => `${inks.map(pdfNumber).join(' ')} ${operator}`;

/** Outlines need more decimals than points do: their units may be large. */
const exact = (value: number): string => {
  const text = value.toFixed(6).replace(/\.?0+$/u, '');
  return text === '-0' ? '0' : text;
};

const line = ({ inks, width, cap, join, miter, dash, dashFrom }: DrawnLine): string[] => [
  inked(inks, 'K'),
  `${exact(width)} w ${cap} J ${join} j ${exact(Math.max(1, miter))} M`,
  `[${dash.map(exact).join(' ')}] ${exact(dashFrom)} d`,
];

/** Outlines as a form in the units of the drawing. */
function registerDrawing(context: PDFContext, { view, shapes }: DrawingArt): PDFRef {
  const [left, top, width, height] = view;
  const operators = shapes.flatMap(shape => {
    const path = shape.segments.map(([name, ...numbers]) =>
      name === 'Z' ? 'h' : `${numbers.map(exact).join(' ')} ${name.toLowerCase()}`,
    );
    const star = shape.rule === 'evenodd' ? '*' : '';
    const paint = shape.fill ? (shape.line ? `B${star}` : `f${star}`) : 'S';
    return [
      'q',
      `${shape.matrix.map(exact).join(' ')} cm`,
      ...(shape.fill ? [inked(shape.fill, 'k')] : []),
      ...(shape.line ? line(shape.line) : []),
      ...path,
      paint,
      'Q',
    ];
  });
  return context.register(
    flateStream(context, `${operators.join('\n')}\n`, {
      Type: 'XObject',
      Subtype: 'Form',
      FormType: 1,
      BBox: [left, top, left + width, top + height],
      Resources: {},
    }),
  );
}
