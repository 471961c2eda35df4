import { decodePDFRawStream, PDFDocument, PDFName, type PDFRawStream } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { arrangeLabel, type LabelLayout } from '../../src/layout/label/layout-label.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { sampleModel, sampleStock } from '../layout/label/sample.ts';
import { DIES } from '../layout/label/trials.ts';

/** Lengths that the press profile asks; 1/16 in inside the die is common practice of label printers. */
const GEOMETRY = { safe: 1.6, xHeight: 0.9, pictogramSide: 10 };
const MM = 72 / 25.4;
const CONTENTS = PDFName.of('Contents');

const fonts = await loadFonts();
let layout: LabelLayout;
let label: Uint8Array;
let content: string;

beforeAll(async () => {
  const die = DIES['130x120']!;
  const stock = { ...(await sampleStock(die.width, die.height)), die };
  const outcome = await arrangeLabel(await sampleModel(), fonts, stock);
  if (!outcome.ok) throw new Error('the sample does not fit');
  layout = outcome.value;
  label = await writePdf(layout.document, fonts, { kind: 'label', version: '0.0.0' });
  const document = await PDFDocument.load(label, { updateMetadata: false });
  const stream = document.getPage(0).node.lookup(CONTENTS) as PDFRawStream;
  content = new TextDecoder('latin1').decode(decodePDFRawStream(stream).decode());
});

/** Codes of what preflight finds in the label with another content. */
async function codesOf(changed: string): Promise<readonly string[]> {
  const document = await PDFDocument.load(label, { updateMetadata: false });
  document.getPage(0).node.set(CONTENTS, document.context.register(document.context.flateStream(changed)));
  const bytes = await document.save({ useObjectStreams: false, addDefaultPage: false });
  bytes.set(new TextEncoder().encode('%PDF-1.6'));
  const found = await preflight(bytes, { kind: 'label', dieInk: 'CutContour', geometry: GEOMETRY });
  return found.map(({ code }) => code);
}

const TEXT_MATRIX = /(\S+ \S+ \S+ \S+) (\S+) (\S+) Tm/gu;

/** The content with the text matrix of one text moved to a place, in millimetres from the upper left of the trim. */
function moved(which: number, place: (x: number, y: number) => readonly [number, number]): string {
  const { bleed, height } = layout.document.frames[0]!;
  let at = -1;
  return content.replace(TEXT_MATRIX, (whole, turn: string, x: string, y: string) => {
    at += 1;
    if (at !== which) return whole;
    const [toX, toY] = place(Number(x) / MM - bleed, height + bleed - Number(y) / MM);
    return `${turn} ${(toX + bleed) * MM} ${(height + bleed - toY) * MM} Tm`;
  });
}

const area = (role: string) => layout.areas.find(found => found.role === role)!;
const count = () => [...content.matchAll(TEXT_MATRIX)].length;

describe('placing', () => {
  it('finds nothing in a label as it is laid out', async () => {
    expect(await codesOf(content)).toEqual([]);
  });

  it('finds any text that is moved over the cut', async () => {
    const { width, height } = layout.document.frames[0]!;
    for (let text = 0; text < count(); text += 3) {
      expect(await codesOf(moved(text, (_, y) => [width + 20, y]))).toContain('off-the-die');
      const near = await codesOf(moved(text, x => [x, height - 1]));
      // The corners are round, and large letters reach over the cut.
      expect(near.some(code => code === 'near-the-cut' || code === 'off-the-die')).toBe(true);
    }
  });

  it('finds any text but the draft notice in the window, in a quiet zone, and over another', async () => {
    const window = area('lot-window');
    const bars = area('bar-code');
    for (let text = 1; text < count(); text += 3) {
      const inWindow = moved(text, () => [window.x + 1, window.y + window.height - 1]);
      expect(await codesOf(inWindow), `text ${text}`).toContain('in-the-window');
      const inZone = moved(text, () => [bars.x + 0.5, bars.y + 10]);
      expect(await codesOf(inZone), `text ${text}`).toContain('in-the-quiet-zone');
    }
    const other = [...content.matchAll(TEXT_MATRIX)][5]!;
    const { bleed, height } = layout.document.frames[0]!;
    const onOther = moved(4, () => [Number(other[2]) / MM - bleed, height + bleed - Number(other[3]) / MM]);
    expect(await codesOf(onOther)).toContain('overlap');
  });

  it('finds type and pictograms that are too small', async () => {
    const smaller = content.replace(
      /\/(\S+) ([\d.]+) Tf/gu,
      (_, name, size) => `/${name} ${Number(size) / 2} Tf`,
    );
    expect(await codesOf(smaller)).toContain('type-too-small');
    const document = await PDFDocument.load(label, { updateMetadata: false });
    const profile = {
      kind: 'label',
      dieInk: 'CutContour',
      geometry: { ...GEOMETRY, pictogramSide: 23 },
    } as const;
    const found = await preflight(await document.save({ useObjectStreams: false }), profile);
    expect(found.map(({ code }) => code)).toContain('pictogram-too-small');
  });

  it('finds what stands on a fold, and in the strip that the other end covers', async () => {
    const document = await PDFDocument.load(label, { updateMetadata: false });
    const bytes = await document.save({ useObjectStreams: false });
    const { x, width } = area('hazard');
    for (const what of ['fold', 'overlap'] as const) {
      const strip = (from: number, to: number) =>
        preflight(bytes, {
          kind: 'label',
          dieInk: 'CutContour',
          geometry: { ...GEOMETRY, clear: [{ what, from, to }] },
        });
      expect((await strip(x + width / 2 - 1, x + width / 2 + 1)).map(({ code }) => code)).toContain(
        `on-the-${what}`,
      );
      expect((await strip(0, 1)).map(({ code }) => code)).not.toContain(`on-the-${what}`);
    }
  });
});
