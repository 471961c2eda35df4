import { beforeAll, describe, expect, it } from 'vitest';
import type { FrameItem, PathItem, TextItem } from '../../../src/layout/frame.ts';
import { arrangeLabel, type LabelLayout, layoutLabel } from '../../../src/layout/label/layout-label.ts';
import { writePdf } from '../../../src/pdf/write.ts';
import { toMillimetres } from '../../../src/quantity/length.ts';
import { loadFonts } from '../../../src/text/font-library.ts';
import { type FontLibrary, runWidth } from '../../../src/text/glyph-run.ts';
import { extractText, renderPage } from '../../support/render.ts';
import { decode } from './read-back.ts';
import { corrosive, mild, type SampleOptions, sampleModel, sampleStock, severe } from './sample.ts';

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

async function laidOut(width: number, height: number, options?: SampleOptions): Promise<LabelLayout> {
  const outcome = await arrangeLabel(await sampleModel(options), fonts, await sampleStock(width, height));
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('\n'));
  return outcome.value;
}

const cases: [string, number, number, SampleOptions][] = [
  ['bottle', 130, 120, {}],
  ['bottle, five pictograms', 130, 120, { elements: severe }],
  ['small, one hazard', 90, 60, { elements: mild }],
  ['flat and wide', 200, 50, {}],
  ['narrow', 40, 160, {}],
  ['wrap', 270, 120, { elements: severe }],
  ['narrow bottle', 90, 70, { elements: mild, diameter: 40 }],
  [
    'unclassified',
    100,
    70,
    {
      elements: {
        ...mild,
        signalWord: null,
        pictograms: [],
        hazardStatements: [],
        precautionaryStatements: [],
      },
    },
  ],
  ['panel alone', 90, 60, { only: 'precautions' }],
];

interface Extent {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

function extent(item: FrameItem): Extent {
  if (item.kind === 'path') return pathExtent(item);
  if (item.kind === 'art')
    return { left: item.x, right: item.x + item.width, top: item.y, bottom: item.y + item.height };
  const width = runWidth(item.run, item.size);
  const rise = toMillimetres((item.size * fonts.metrics(item.run.face).capHeight) / 1000);
  // Figures stand on the base line.
  const descent = /^[\d ]+$/.test(item.run.text) ? 0 : -fonts.metrics(item.run.face).descent;
  const fall = toMillimetres((item.size * descent) / 1000);
  const { x, y } = item;
  return item.rotate === 90
    ? { left: x - rise, right: x + fall, top: y - width, bottom: y }
    : { left: x, right: x + width, top: y - rise, bottom: y + fall };
}

function pathExtent({ segments, strokeWidth = 0 }: PathItem): Extent {
  const numbers = segments.map(segment => segment.filter(part => typeof part === 'number'));
  const xs = numbers.flatMap(list => list.filter((_, at) => at % 2 === 0));
  const ys = numbers.flatMap(list => list.filter((_, at) => at % 2 === 1));
  const half = strokeWidth / 2;
  return {
    left: Math.min(...xs) - half,
    right: Math.max(...xs) + half,
    top: Math.min(...ys) - half,
    bottom: Math.max(...ys) + half,
  };
}

const texts = (items: readonly FrameItem[]) => items.filter((item): item is TextItem => item.kind === 'text');

describe.each(cases)('%s, %d x %d mm', (_, width, height, options) => {
  let layout: LabelLayout;
  let items: readonly FrameItem[];
  beforeAll(async () => {
    layout = await laidOut(width, height, options);
    items = layout.document.frames[0]!.items;
  });

  it('keeps everything but the die inside the safe zone', async () => {
    const safe = (await sampleStock(width, height)).profile.safeZone.value - 1e-3;
    for (const item of items.filter(({ layer }) => layer !== 'die')) {
      const { left, top, right, bottom } = extent(item);
      expect(left).toBeGreaterThanOrEqual(safe);
      expect(top).toBeGreaterThanOrEqual(safe);
      expect(right).toBeLessThanOrEqual(width - safe);
      expect(bottom).toBeLessThanOrEqual(height - safe);
    }
  });

  it('sets no text below the least size and no pictogram below 10 mm', async () => {
    const { profile } = await sampleStock(width, height);
    for (const { run, size } of texts(items)) {
      const xHeight = toMillimetres((size * fonts.metrics(run.face).xHeight) / 1000);
      expect(xHeight, run.text).toBeGreaterThanOrEqual(profile.xHeight.minimum - 1e-3);
    }
    for (const item of items) {
      if (item.kind !== 'path' || item.fill !== 'red') continue;
      const { left, right, top, bottom } = extent(item);
      expect(right - left).toBeGreaterThanOrEqual(profile.pictogram.minimumSide * Math.SQRT2 - 1e-3);
      expect(bottom - top).toBeCloseTo(right - left, 3);
    }
  });

  it('lays no section over another', () => {
    const blocks = layout.areas.filter(({ role }) => role !== 'lot-window');
    for (const [at, a] of blocks.entries()) {
      for (const b of blocks.slice(at + 1)) {
        const wide = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
        const high = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
        expect(Math.min(wide, high), `${a.role} and ${b.role}`).toBeLessThanOrEqual(1e-6);
      }
    }
  });

  it('lays no line of text over another', () => {
    const boxes = texts(items).map(extent);
    for (const [at, a] of boxes.entries()) {
      for (const b of boxes.slice(at + 1)) {
        const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
        // Descenders may reach into the room of accents, not into capitals.
        const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        expect(Math.min(wide, high)).toBeLessThan(0.35 * Math.max(a.bottom - a.top, b.bottom - b.top));
      }
    }
  });

  it('leaves the window for the lot clear', () => {
    for (const area of layout.areas.filter(({ role }) => role === 'lot-window')) {
      for (const item of items.filter(({ layer }) => !layer)) {
        const { left, right, top, bottom } = extent(item);
        const inside =
          left < area.x + area.width - 0.01 &&
          right > area.x + 0.01 &&
          top < area.y + area.height - 0.01 &&
          bottom > area.y + 0.01;
        const around =
          left < area.x && right > area.x + area.width && top < area.y && bottom > area.y + area.height;
        expect(inside && !around).toBe(false);
      }
    }
  });

  it('gives every word back in reading order, and its bar code decodes', async () => {
    const model = await sampleModel(options);
    const pdf = await writePdf(layout.document, fonts, { kind: 'label', version: '0.0.0' });
    const text = (await extractText(pdf))[0]!.replace(/\s+/g, ' ');
    const elements = options.elements ?? corrosive;
    const expected = [
      'DRAFT for qualified review',
      'Kerbstone Patio Cleaner',
      ...(elements.signalWord ? [elements.signalWord] : []),
      ...elements.hazardStatements.map(statement => statement.text),
      ...elements.supplemental.map(statement => statement.text),
      ...elements.precautionaryStatements.map(statement => statement.text),
      ...(options.only
        ? []
        : [
            'Directions',
            'Apply and leave for five minutes.',
            'Quarry Lane Products, Inc.',
            '1200 Quarry Lane',
            '+1 555 010 0100',
            'Emergency: +1 555 010 0199',
            '946 mL (32 fl oz)',
          ]),
    ];
    let from = 0;
    for (const phrase of expected) {
      const place = text.indexOf(phrase, from);
      expect(place, `${phrase} after position ${from} of: ${text}`).toBeGreaterThanOrEqual(0);
      from = place + phrase.length;
    }
    const found = await decode(await renderPage(pdf, 1, 600));
    expect(found.map(code => code.text.padStart(13, '0'))).toEqual(model.gtin ? [model.gtin] : []);
  });
});

describe('fit', () => {
  it('gives the same page again', async () => {
    const [first, second] = [await laidOut(130, 120), await laidOut(130, 120)];
    const bytes = (layout: LabelLayout) =>
      writePdf(layout.document, fonts, { kind: 'label', version: '0.0.0' });
    expect(await bytes(first)).toEqual(await bytes(second));
  });

  it('refuses a label that is too small, and the dies it names hold the text', async () => {
    const outcome = await layoutLabel(await sampleModel(), fonts, await sampleStock(60, 40));
    expect(outcome.ok).toBe(false);
    const [found] = outcome.diagnostics;
    expect(found).toMatchObject({ code: 'label-too-small', severity: 'error' });
    const sizes = [...found!.hint!.matchAll(/(\d+) x (\d+) mm/g)].map(
      ([, w, h]) => [Number(w), Number(h)] as const,
    );
    expect(sizes).toHaveLength(2);
    for (const [width, height] of sizes)
      expect((await laidOut(width, height)).areas.length).toBeGreaterThan(0);
    // One millimetre less does not hold it: the promise is the least size.
    const less = [
      [sizes[0]![0], sizes[0]![1] - 1],
      [sizes[1]![0] - 1, sizes[1]![1]],
    ] as const;
    for (const [width, height] of less) {
      expect((await layoutLabel(await sampleModel(), fonts, await sampleStock(width, height))).ok).toBe(
        false,
      );
    }
  });

  it('uses a larger die for larger type', async () => {
    const sizes = [];
    for (const times of [1, 1.25, 1.5])
      sizes.push((await laidOut(130 * times, 120 * times)).fitted.measures.xHeight);
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
  });

  it('says so where the type is smaller than preferred, and where the label goes round more than once', async () => {
    const narrow = await layoutLabel(await sampleModel({ diameter: 60 }), fonts, await sampleStock(200, 50));
    expect(narrow.diagnostics.map(({ code }) => code)).toEqual(['label-wider-than-container', 'small-type']);
  });

  it('turns the bar code on a bottle too thin for upright bars', async () => {
    const outcome = await arrangeLabel(
      await sampleModel({ elements: mild, diameter: 40 }),
      fonts,
      await sampleStock(90, 70),
    );
    expect(outcome.diagnostics.map(({ code }) => code)).toContain('bar-code-turned');
    const area = outcome.ok ? outcome.value.areas.find(({ role }) => role === 'bar-code') : undefined;
    expect(area!.height).toBeGreaterThan(area!.width);
  });

  it('stops at a character that the face lacks', async () => {
    const outcome = await layoutLabel(
      await sampleModel({ name: 'Cleaner 漢' }),
      fonts,
      await sampleStock(130, 120),
    );
    expect(outcome).toMatchObject({ ok: false, diagnostics: [{ code: 'missing-glyph', severity: 'error' }] });
  });

  it('leaves the draft notice off only where there is a sign-off', async () => {
    const words = async (draft: boolean) =>
      texts((await laidOut(130, 120, { draft })).document.frames[0]!.items).map(({ run }) => run.text);
    expect(await words(true)).toContain('DRAFT for qualified review');
    expect((await words(false)).join(' ')).not.toMatch(/draft/i);
  });
});
