import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { Frame, FrameItem, PagedDocument } from '../../src/layout/frame.ts';
import type { LabelProfile } from '../../src/pdf/profile.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { toPoints } from '../../src/quantity/length.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { LABEL, labelDocument, rectangle, tag, textItem } from '../support/paged-documents.ts';
import { darkPixels, extractText, openPdf, pixelAt, renderPage } from '../support/render.ts';

const fonts = await loadFonts();
const bytes = await writePdf(labelDocument(fonts), fonts, LABEL);
const DPI = 254; // ten pixels a millimetre
const OFFSET = 7; // bleed and slug

const withItems = (...items: FrameItem[]): PagedDocument => {
  const document = labelDocument(fonts);
  const frame: Frame = { ...document.frames[0]!, items };
  return { ...document, frames: [frame] };
};

describe('a label', () => {
  it('has the page boxes of its die, bleed and slug', async () => {
    const page = (await PDFDocument.load(bytes, { updateMetadata: false })).getPage(0);
    const close = (box: object, expected: number[]) => {
      for (const [index, value] of Object.values(box).entries())
        expect(value).toBeCloseTo(expected[index]!, 3);
    };
    close(page.getMediaBox(), [0, 0, toPoints(74), toPoints(54)]);
    close(page.getBleedBox(), [toPoints(5), toPoints(5), toPoints(64), toPoints(44)]);
    close(page.getTrimBox(), [toPoints(7), toPoints(7), toPoints(60), toPoints(40)]);
  });

  it('gives back every word in reading order', async () => {
    const [text] = await extractText(bytes);
    expect(text!.replace(/\s+/gu, ' ').trim()).toBe(
      'Kerbstone Patio Cleaner DANGER Causes severe skin burns and eye damage. P305+ P351+P338',
    );
  });

  it('draws shapes where the frame puts them, in their inks', async () => {
    const canvas = await renderPage(bytes, 1, DPI);
    const at = (x: number, y: number) => pixelAt(canvas, (x + OFFSET) * 10, (y + OFFSET) * 10);
    const [red, green, blue] = at(44, 10) as [number, number, number];
    expect(red).toBeGreaterThan(180);
    expect(Math.max(green, blue)).toBeLessThan(80);
    expect(Math.max(...at(50, 10).slice(0, 3))).toBeLessThan(70);
    expect(at(46, 6).slice(0, 3)).toEqual([255, 255, 255]);
    const ground = at(10, 38)[0]!;
    expect(ground).toBeGreaterThan(215);
    expect(ground).toBeLessThan(250);
    expect(at(-2.3, 38).slice(0, 3)).toEqual([255, 255, 255]);
  });

  it('shows glyphs where the text is, and nothing beside it', async () => {
    const canvas = await renderPage(bytes, 1, DPI);
    const dark = (x: number, y: number, width: number, height: number) =>
      darkPixels(canvas, {
        x: (x + OFFSET) * 10,
        y: (y + OFFSET) * 10,
        width: width * 10,
        height: height * 10,
      });
    expect(dark(4, 4.4, 36, 3.8)).toBeGreaterThan(900);
    expect(dark(4, 1, 36, 2.5)).toBe(0);
    expect(dark(4, 29.5, 36, 2.5)).toBe(0);
  });

  it('turns text counter-clockwise about its start', async () => {
    const heading = tag('H1');
    const item = textItem(fonts, 'HHHHHH', { x: 30, y: 30, tag: heading, size: 12, rotate: 90 });
    const document = { ...withItems(item), root: tag('Document', [heading]) };
    const canvas = await renderPage(await writePdf(document, fonts, LABEL), 1, DPI);
    const dark = (x: number, y: number, width: number, height: number) =>
      darkPixels(canvas, {
        x: (x + OFFSET) * 10,
        y: (y + OFFSET) * 10,
        width: width * 10,
        height: height * 10,
      });
    const total = darkPixels(canvas);
    expect(total).toBeGreaterThan(300);
    // The run is about 14 mm long and its capitals 3 mm high: all of it lies up and to the left of the start.
    expect(dark(26, 14, 4.2, 16.2)).toBe(total);
  });

  it('has its cut line on a layer that declares the processing step (ISO 19593-1)', async () => {
    const pdf = await openPdf(bytes);
    const layers = [...(await pdf.getOptionalContentConfig())];
    expect(layers).toHaveLength(1);
    const kiss: LabelProfile = {
      ...LABEL,
      die: { ink: 'Dieline', step: 'PartialCutting', layer: 'Kiss cut' },
    };
    const source = Buffer.from(await writePdf(labelDocument(fonts), fonts, kiss)).toString('latin1');
    expect(source).toMatch(/\/GTS_ProcStepsGroup \/Structural\s+\/GTS_ProcStepsType \/PartialCutting/u);
    expect(source).toMatch(/\/Separation \/Dieline \/DeviceCMYK/u);
    expect(await preflight(Buffer.from(source, 'latin1'), { kind: 'label', dieInk: 'Dieline' })).toEqual([]);
  });

  it('is PDF 1.6 with an identifier and makes no claim to PDF/X', () => {
    const source = Buffer.from(bytes).toString('latin1');
    expect(source.slice(0, 8)).toBe('%PDF-1.6');
    expect(source).toMatch(/\/ID \[ <[0-9A-F]{32}> <[0-9A-F]{32}> \]/u);
    expect(source).not.toMatch(/GTS_PDFXVersion|OutputIntents/u);
  });

  it('is the same, byte for byte, for the same input', async () => {
    expect(Buffer.from(await writePdf(labelDocument(fonts), fonts, LABEL)).equals(bytes)).toBe(true);
    const changed = { ...labelDocument(fonts), subject: 'Another' };
    const id = (pdf: Uint8Array) => /\/ID \[ (\S+)/u.exec(Buffer.from(pdf).toString('latin1'))![1];
    expect(id(await writePdf(changed, fonts, LABEL))).not.toBe(id(bytes));
  });

  it('refuses what a press file must not have', async () => {
    const write = (item: FrameItem) => writePdf(withItems(item), fonts, LABEL);
    const line = { kind: 'path', tag: 'layout', segments: rectangle(0, 0, 9, 9) } as const;
    await expect(write({ ...line, layer: 'die', fill: 'die' })).rejects.toThrow(/stroked, never filled/u);
    await expect(write({ ...line, stroke: 'die' })).rejects.toThrow(/cut-line layer/u);
    await expect(write({ ...line, layer: 'die', stroke: 'black' })).rejects.toThrow(/cut-line layer/u);
    await expect(write(line)).rejects.toThrow(/neither filled nor stroked/u);
    await expect(write({ ...line, stroke: 'black', strokeWidth: Number.NaN })).rejects.toThrow(RangeError);
    await expect(write({ ...line, tag: tag('P'), fill: 'black' })).rejects.toThrow(
      /outside the structure tree/u,
    );
    await expect(writePdf(labelDocument(fonts), fonts, { ...LABEL, die: { ink: 'Black' } })).rejects.toThrow(
      /Black/u,
    );
  });
});
