import { cmyk, degrees, PDFDict, PDFDocument, PDFName } from 'pdf-lib';
import type { CopyMark } from '../provenance/copy-mark.ts';
import { type Millimetres, toMillimetres, toPoints } from '../quantity/length.ts';
import type { StripFault } from '../roll/strip-fault.ts';
import { copyEntries } from './metadata.ts';

/** Labels on the web as they come off the roll; millimetres. */
export interface WebStrip {
  readonly label: { readonly width: Millimetres; readonly height: Millimetres };
  readonly gap: Millimetres;
  readonly linerWidth: Millimetres;
  readonly leadingEdge: 'top' | 'bottom' | 'left' | 'right';
  readonly count: number;
  readonly title: string;
}

/** Labels are cut to this, so a file that differs by more is another label. */
const TOLERANCE: Millimetres = 0.5;
const MARGIN: Millimetres = 10;

/**
 * Places the trimmed page of a label file on a web that runs to the right, so many times, turned as it leaves the
 * roll: a picture for the printer, no artwork.
 */
export async function webStrip(
  file: Uint8Array,
  { label, gap, linerWidth, leadingEdge, count, title }: WebStrip,
  copy: CopyMark,
): Promise<{ readonly bytes: Uint8Array; readonly fault: null } | { readonly fault: StripFault }> {
  let source: PDFDocument;
  try {
    source = await PDFDocument.load(file, { updateMetadata: false, throwOnInvalidObject: true });
  } catch {
    return { fault: { id: 'unreadable' } };
  }
  const pages = source.getPages();
  const [page] = pages;
  if (!page || pages.length !== 1) return { fault: { id: 'pages', pages: pages.length } };
  const trim = page.getTrimBox();
  const [width, height] = [toMillimetres(trim.width), toMillimetres(trim.height)];
  if (Math.abs(width - label.width) > TOLERANCE || Math.abs(height - label.height) > TOLERANCE)
    return { fault: { id: 'size', width, height } };

  const strip = await PDFDocument.create({ updateMetadata: false });
  strip.setTitle(title);
  const info = strip.context.lookup(strip.context.trailerInfo.Info, PDFDict);
  for (const [key, value] of Object.entries(copyEntries(copy))) info.set(PDFName.of(key), value);
  const sideways = leadingEdge === 'left' || leadingEdge === 'right';
  const [along, across] = sideways ? [width, height] : [height, width];
  const web = count * (label[sideways ? 'width' : 'height'] + gap) + gap;
  const sheet = strip.addPage([web + 2 * MARGIN, linerWidth + 3 * MARGIN].map(toPoints) as [number, number]);
  const box = { left: trim.x, bottom: trim.y, right: trim.x + trim.width, top: trim.y + trim.height };
  const placed = await strip.embedPage(page, box);
  sheet.drawRectangle({
    x: toPoints(MARGIN),
    y: toPoints(MARGIN),
    width: toPoints(web),
    height: toPoints(linerWidth),
    color: cmyk(0, 0.02, 0.08, 0.06),
  });
  for (let index = 0; index < count; index += 1) {
    const x = MARGIN + gap + index * (label[sideways ? 'width' : 'height'] + gap);
    const y = MARGIN + (linerWidth - across) / 2;
    const white = { x, y, width: along, height: across };
    sheet.drawRectangle({
      x: toPoints(white.x),
      y: toPoints(white.y),
      width: toPoints(white.width),
      height: toPoints(white.height),
      color: cmyk(0, 0, 0, 0),
    });
    const { dx, dy, turn } = anchor(leadingEdge, along, across);
    sheet.drawPage(placed, { x: toPoints(x + dx), y: toPoints(y + dy), rotate: degrees(turn) });
  }
  // An arrow above the web, the way it runs; pdf-lib turns the axis of the path down.
  const [length, head] = [Math.min(60, web / 2), 4];
  const points = [
    [0, -0.6],
    [length - head, -0.6],
    [length - head, -2],
    [length, 0],
    [length - head, 2],
    [length - head, 0.6],
    [0, 0.6],
  ].map(pair => pair.map(part => toPoints(part!)).join(' '));
  sheet.drawSvgPath(`M ${points.join(' L ')} Z`, {
    x: toPoints(MARGIN),
    y: toPoints(2 * MARGIN + linerWidth),
    color: cmyk(0, 1, 1, 0),
  });
  return { bytes: await strip.save({ useObjectStreams: false }), fault: null };
}

/** Where the lower left corner of the upright label goes, and how far it turns about it, counter-clockwise. */
function anchor(edge: WebStrip['leadingEdge'], along: Millimetres, across: Millimetres) {
  switch (edge) {
    case 'right':
      return { dx: 0, dy: 0, turn: 0 };
    case 'left':
      return { dx: along, dy: across, turn: 180 };
    case 'top':
      return { dx: 0, dy: across, turn: -90 };
    case 'bottom':
      return { dx: along, dy: 0, turn: 90 };
  }
}
