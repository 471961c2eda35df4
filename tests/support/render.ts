import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { type Canvas, createCanvas, type SKRSContext2D } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { PDFDocumentProxy } from 'pdfjs-dist/types/src/display/api.js';

interface CanvasFactory {
  create(width: number, height: number): { canvas: Canvas; context: SKRSContext2D };
}

const root = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));

/** Opens PDF bytes with pdf.js, an independent reader; close with `loadingTask.destroy()` where many are opened. */
export const openPdf = (bytes: Uint8Array): Promise<PDFDocumentProxy> =>
  getDocument({
    // pdf.js takes the buffer away from its caller.
    data: bytes.slice(),
    cMapUrl: `${join(root, 'cmaps')}/`,
    cMapPacked: true,
    standardFontDataUrl: `${join(root, 'standard_fonts')}/`,
    verbosity: 0,
  }).promise;

/**
 * Renders one page, white ground, MediaBox to canvas.
 * @param page counted from 1
 */
export const renderPage = async (bytes: Uint8Array, page = 1, dpi = 150): Promise<Canvas> => {
  const pdf = await openPdf(bytes);
  try {
    const proxy = await pdf.getPage(page);
    const viewport = proxy.getViewport({ scale: dpi / 72 });
    const [width, height] = [Math.ceil(viewport.width), Math.ceil(viewport.height)];
    // pdf.js draws on canvases of its own, perhaps of another version of the library: pixels are copied over.
    const drawn = (pdf.canvasFactory as CanvasFactory).create(width, height);
    drawn.context.fillStyle = '#ffffff';
    drawn.context.fillRect(0, 0, width, height);
    await proxy.render({ canvas: drawn.canvas as never, canvasContext: drawn.context as never, viewport })
      .promise;
    const canvas = createCanvas(width, height);
    const context = canvas.getContext('2d');
    const pixels = context.createImageData(width, height);
    pixels.data.set(drawn.context.getImageData(0, 0, width, height).data);
    context.putImageData(pixels, 0, 0);
    return canvas;
  } finally {
    await pdf.loadingTask.destroy();
  }
};

/** RGBA of one pixel. */
export const pixelAt = (canvas: Canvas, x: number, y: number): readonly number[] => [
  ...canvas.getContext('2d').getImageData(Math.round(x), Math.round(y), 1, 1).data,
];

/** Number of pixels darker than a grey level (0-255) in a rectangle of the canvas. */
export const darkPixels = (
  canvas: Canvas,
  area = { x: 0, y: 0, width: canvas.width, height: canvas.height },
  below = 128,
): number => {
  const { data } = canvas.getContext('2d').getImageData(area.x, area.y, area.width, area.height);
  let count = 0;
  for (let offset = 0; offset < data.length; offset += 4) {
    const luma = 0.299 * data[offset]! + 0.587 * data[offset + 1]! + 0.114 * data[offset + 2]!;
    if (luma < below) count += 1;
  }
  return count;
};

/** Text of each page in content order, one string a page; line ends of the content become line feeds. */
export const extractText = async (bytes: Uint8Array): Promise<string[]> => {
  const pdf = await openPdf(bytes);
  try {
    const pages: string[] = [];
    for (let number = 1; number <= pdf.numPages; number += 1) {
      const page = await pdf.getPage(number);
      const { items } = await page.getTextContent({ disableNormalization: true });
      pages.push(items.map(item => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join(''));
    }
    return pages;
  } finally {
    await pdf.loadingTask.destroy();
  }
};
