import { beforeAll, describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../src/cli/files.ts';
import { type LabelModel, labelDocument } from '../../../src/document/label.ts';
import { loadTemplate } from '../../../src/document/template.ts';
import { type ClassifiedProduct, classifyProduct } from '../../../src/draft/classified-product.ts';
import { openProduct } from '../../../src/draft/open-product.ts';
import { openReference } from '../../../src/draft/open-reference.ts';
import { purposeOf } from '../../../src/draft/purposes/purposes.ts';
import { readTemplate } from '../../../src/environment/package-files.ts';
import { labelFacts } from '../../../src/layout/label/facts.ts';
import { tryLabel } from '../../../src/layout/label/layout-label.ts';
import { writePdf } from '../../../src/pdf/write.ts';
import { preflight } from '../../../src/preflight/preflight.ts';
import { completeRecord } from '../../../src/record/complete.ts';
import { loadFonts } from '../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { en } from '../../../src/words/en/index.ts';
import { sampleStock } from './sample.ts';

const INCH = 25.4;
let fonts: FontLibrary;
let product: ClassifiedProduct;
let model: (diameter: number, height: number, wide: number) => Promise<LabelModel>;

beforeAll(async () => {
  fonts = await loadFonts();
  const opened = openProduct('templates/demo/patio-cleaner.yaml', nodeFiles);
  const reference = await openReference('us-hcs', '2026-11-25');
  if (!opened.ok || !reference.ok) throw new Error('the demo does not open');
  product = classifyProduct(opened.value, reference.value);
  const record = completeRecord(product.record);
  if (!record.ok) throw new Error('the demo is not complete');
  const template = await loadTemplate(readTemplate, 'labels/us-consumer.hbs');
  model = async (diameter, labelPanelHeight, width) => {
    const [first] = product.record.packs;
    const container = { ...first!.container!, diameter, labelPanelHeight };
    const pack = { ...first!, container, label: { ...first!.label!, width } };
    const { elements, sections, type } = purposeOf('us-consumer')!.prepare(product, pack, en);
    const date = '2026-11-25T00:00:00Z';
    return labelDocument(
      { record: record.value, pack, elements, draft: true, date, sections, type },
      template,
    );
  };
});

const laidOut = async (made: LabelModel, width: number, height: number) => {
  const stock = await sampleStock(width, height);
  const trial = await tryLabel(made, fonts, stock);
  return { ...trial, stock, facts: trial.layout && labelFacts(made, trial.layout, stock, fonts) };
};

// 16 CFR 1500.121(c)(2), Table 1 and 16 CFR 500.21(b) by the panel of the container, not by the label: 40 percent of
// height times circumference. The sizes below are typed from the tables as printed.
describe('heights of capitals', () => {
  it.each([
    // 25.7 square inches
    [88, 150, 130, 120, { signal: 1 / 8, hazard: 3 / 32, other: 5 / 64, contents: 3 / 16 }],
    // 13.6 square inches
    [70, 100, 120, 95, { signal: 7 / 64, hazard: 3 / 32, other: 1 / 16, contents: 1 / 8 }],
    // 38.9 square inches
    [100, 200, 180, 150, { signal: 5 / 32, hazard: 7 / 64, other: 3 / 32, contents: 3 / 16 }],
  ])('container of %s x %s mm, label %s x %s', async (diameter, tall, width, height, least) => {
    const { facts } = await laidOut(await model(diameter, tall, width), width, height);
    const heights = (role: string) =>
      facts!.texts.filter(text => text.role === role).map(({ capHeight }) => capHeight);
    const all = [
      ['signal-word', least.signal],
      ['hazard-statement', least.hazard],
      ['hazard', least.other],
      ['notice', least.other],
      ['precautions', least.other],
      ['first-aid', least.other],
      ['net-contents', least.contents],
    ] as const;
    for (const [role, inches] of all) {
      expect(heights(role).length).toBeGreaterThan(0);
      expect(Math.min(...heights(role))).toBeGreaterThanOrEqual(inches * INCH - 1e-3);
    }
    // (c)(5): all statements of hazard in one size; (c)(4): in capitals.
    expect(new Set(heights('hazard-statement')).size).toBe(1);
    for (const { role, text } of facts!.texts)
      if (role === 'signal-word' || role === 'hazard-statement') expect(text).toBe(text.toUpperCase());
  });
});

describe('the front', () => {
  // 16 CFR 1500.121(b)(2)(ii) and (b)(3): signal word and hazards on the principal display panel, which refers to the other.
  it('of a label that reaches round the container holds hazard block and contents', async () => {
    const { facts } = await laidOut(await model(88, 150, 130), 130, 120);
    const front = 0.4 * Math.PI * 88;
    for (const role of ['product-identifier', 'signal-word', 'hazard-statement', 'notice', 'net-contents'])
      for (const { box } of facts!.texts.filter(text => text.role === role)) {
        expect(box[2]).toBeLessThanOrEqual(front);
      }
    expect(
      facts!.texts.some(({ text }) => text.includes('Read carefully other cautions on the side panel')),
    ).toBe(true);
    // 16 CFR 500.6(b): within the lowest 30 percent.
    const contents = facts!.texts.find(({ role }) => role === 'net-contents')!;
    expect(contents.box[3]).toBeLessThanOrEqual(0.3 * 120);
  });

  it('of a label that is seen at once refers to no other panel', async () => {
    const { facts } = await laidOut(await model(110, 140, 136), 136, 165);
    expect(facts!.texts.some(({ text }) => text.includes('side panel'))).toBe(false);
    expect(facts!.texts.some(({ text }) => text.includes('Keep out of the reach of children.'))).toBe(true);
  });
});

// 16 CFR 1500.121(c)(3): no capital higher than three times its width. The strokes I and 1 are no measure of it.
it('capitals of the faces are at least a third as wide as high', () => {
  for (const face of ['regular', 'bold'] as const) {
    const { capHeight } = fonts.metrics(face);
    for (const letter of 'ABCDEFGHJKLMNOPQRSTUVWXYZ')
      expect(fonts.shape(letter, face).advance * 3).toBeGreaterThan(capHeight);
  }
});

it('a label that is too small is refused with dies that hold it', async () => {
  const made = await model(88, 150, 90);
  const { layout, remedies, diagnostics } = await laidOut(made, 90, 70);
  expect(layout).toBeNull();
  expect(diagnostics[0]).toMatchObject({ code: 'label-too-small', cite: '16 CFR 1500.121(c)(2), Table 1' });
  expect(remedies!.height).not.toBeNull();
  expect((await laidOut(made, 90, remedies!.height!)).layout).not.toBeNull();
  expect((await laidOut(made, 90, remedies!.height! - 1)).layout).toBeNull();
});

it('a larger die never has smaller text', async () => {
  const made = await model(110, 140, 136);
  let last = 0;
  for (let height = 140; height <= 200; height += 5) {
    const { layout } = await laidOut(made, 136, height);
    const size = layout?.fitted.measures.xHeight ?? 0;
    expect(size).toBeGreaterThanOrEqual(last);
    last = size;
  }
  expect(last).toBeGreaterThan(0);
});

it('the file is read back: capitals under their least height, and a text that is not there, are found', async () => {
  const made = await model(88, 150, 130);
  const { layout } = await laidOut(made, 130, 120);
  const copy = { kind: 'distribution' as const, fingerprint: 'test' };
  const bytes = await writePdf(layout!.document, fonts, { kind: 'label', version: '0', copy });
  const codes = async (capitals: { text: string; height: number; cite: string }[]) => {
    const geometry = { safe: 1.6, xHeight: 0.9, pictogramSide: 10, capitals };
    const found = await preflight(bytes, { kind: 'label', dieInk: 'CutContour', geometry });
    return found.map(({ code }) => code);
  };
  const cite = '16 CFR 1500.121(c)(2), Table 1';
  expect(await codes([{ text: 'DANGER', height: 3.175, cite }])).toEqual([]);
  expect(await codes([{ text: 'DANGER', height: 25, cite }])).toEqual(['capitals-too-small']);
  expect(await codes([{ text: 'WARNING', height: 3.175, cite }])).toEqual(['text-missing']);
});
