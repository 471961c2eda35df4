import type { createCanvas } from '@napi-rs/canvas';
import { expect, it } from 'vitest';
import { tryLabel } from '../../src/layout/label/layout-label.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { sampleModel, sampleStock } from '../layout/label/sample.ts';
import { CONTENTS, DIES } from '../layout/label/trials.ts';
import { openPdf } from '../support/render.ts';

const fonts = await loadFonts();

const written = async (content: string, die: string, draft: boolean) => {
  const given = DIES[die]!;
  const stock = { ...(await sampleStock(given.width, given.height)), die: given };
  const { layout } = await tryLabel(await sampleModel({ ...CONTENTS[content], draft }), fonts, stock);
  return writePdf(layout!.document, fonts, { kind: 'label', version: '0' });
};

/** Pixels as pdf.js shows a page, with the layer of a draft or without. */
async function pixels(bytes: Uint8Array, withDraft: boolean) {
  const pdf = await openPdf(bytes);
  const layers = await pdf.getOptionalContentConfig();
  const drafts = [...layers].filter(([, group]) => (group as { name: string }).name === 'Draft');
  for (const [id] of drafts) layers.setVisibility(id, withDraft);
  const page = await pdf.getPage(1);
  const viewport = page.getViewport({ scale: 150 / 72 });
  const [width, height] = [Math.ceil(viewport.width), Math.ceil(viewport.height)];
  const drawn = (
    pdf.canvasFactory as { create(w: number, h: number): { canvas: never; context: never } }
  ).create(width, height);
  const context = drawn.context as ReturnType<ReturnType<typeof createCanvas>['getContext']>;
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, width, height);
  await page.render({
    canvas: drawn.canvas,
    canvasContext: drawn.context,
    viewport,
    optionalContentConfigPromise: Promise.resolve(layers),
  }).promise;
  const { data } = context.getImageData(0, 0, width, height);
  await pdf.loadingTask.destroy();
  return { layers: drafts.length, data: Buffer.from(data.buffer) };
}

it.each([
  ['corrosive', '130x120'],
  ['one hazard', '100x70'],
  ['severe', 'wrap 276x90'],
  ['flammable', 'oval 160x110'],
])('the draft of %s on %s is the signed label but for its layer', async (content, die) => {
  const draft = await written(content, die, true);
  const signed = await pixels(await written(content, die, false), false);
  const [hidden, shown] = [await pixels(draft, false), await pixels(draft, true)];
  expect([signed.layers, hidden.layers]).toEqual([0, 1]);
  expect(hidden.data.equals(signed.data)).toBe(true);
  expect(shown.data.equals(signed.data)).toBe(false);
});
