import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../../src/cli/commands/label.ts';
import { demoWith, inProcess, put, workshop } from '../../cli/_command.ts';
import { decodeAll } from '../../support/decode.ts';
import { canvasOf, oneBit, runsOfRow } from '../../support/one-bit.ts';
import { renderPage } from '../../support/render.ts';

const DIE = '{width: 130 mm, height: 120 mm, corner-radius: 3 mm}';
const GTIN = '"0614141000418"';

async function made(target: string, changes: readonly (readonly [string, string])[] = [], ...more: string[]) {
  const folder = workshop();
  const record = changes.reduce((text, change) => text.replace(...change), demoWith([DIE, DIE]));
  const out = join(folder, 'made');
  const {
    status,
    out: said,
    err,
  } = await inProcess(label, [
    put(folder, 'p.yaml', record),
    '--target',
    target,
    '--out',
    out,
    '--json',
    ...more,
  ]);
  const json = said === '' ? null : JSON.parse(said);
  const bytes = json?.file ? new Uint8Array(readFileSync(join(out, json.file))) : null;
  return { status, err, json, bytes };
}

/**
 * Elements of UPC-A 6 14141 00041 8 as ISO/IEC 15420 has them, odd parity at the left, worked by hand from its table of
 * digits: 0 is 3211, 1 is 2221, 4 is 1132, 6 is 1114, 8 is 1213.
 */
const DIGITS: Readonly<Record<string, string>> = { 0: '3211', 1: '2221', 4: '1132', 6: '1114', 8: '1213' };
const elements = (digits: string): number[] =>
  [...`111${half(digits.slice(0, 6))}11111${half(digits.slice(6))}111`].map(Number);
const half = (digits: string) => [...digits].map(digit => DIGITS[digit]).join('');

describe.each([
  ['203', 203.2],
  ['300', 300],
  ['600', 600],
] as const)('a label for a printer of %s dpi', (name, dpi) => {
  it('has bars of whole dots, as the symbol has them, and is black or white', async () => {
    const { json, bytes } = await made(`printer-${name}`);
    expect(json).toMatchObject({ target: `printer-${name}`, file: `label-bottle-946-printer-${name}.pdf` });
    const { box, x, quietZones } = json.barCode;
    const dot = 25.4 / dpi;
    const dots = Math.round(x / dot);
    expect(x / dot).toBeCloseTo(dots, 1);
    const page = await oneBit(bytes!, dpi);
    expect(page.width).toBe(Math.floor(130 / dot + 1e-9));
    const y = page.height - Math.round((box[1] + box[3]) / 2 / dot);
    // The bars stand in the box between the small figures at its left and right.
    const from = Math.round(box[0] / dot) - Math.round(1 / dot);
    const runs = runsOfRow(page, y, from);
    const bars = runs.slice(1, 60);
    expect(bars).toEqual(elements('614141000418'.padStart(12, '0')).map(modules => modules * dots));
    expect(runs[60]).toBeGreaterThanOrEqual(Math.floor(quietZones[1] / dot));
    const [symbol] = await decodeAll(canvasOf(page, dpi < 250 ? 2 : 1), ['UPCA']);
    expect(symbol?.text.replaceAll(' ', '')).toContain('614141000418');
  });

  it('is decoded turned by a quarter', async () => {
    // Bars of a bottle of 40 mm stand as rungs of a ladder (GS1: diameter at least 6/pi times the bars).
    const { json, bytes } = await made(`printer-${name}`, [['diameter: 88 mm', 'diameter: 40 mm']]);
    expect(json.barCode.turned).toBe(true);
    const page = await oneBit(bytes!, dpi);
    const [symbol] = await decodeAll(canvasOf(page, dpi < 250 ? 2 : 1), ['UPCA']);
    expect(symbol?.text.replaceAll(' ', '')).toContain('614141000418');
  });
});

describe('bar codes of a press label', () => {
  it.each<[string, readonly [string, string][]]>([
    ['UPC-A', []],
    ['turned', [['diameter: 88 mm', 'diameter: 40 mm']]],
    [
      'UPC-E',
      [
        [GTIN, '"0123456000073"'.replace('0123456000073', '012345000065')],
        ['gtin: "012345000065"', 'gtin: "012345000065"\n    bar-code: {symbol: UPC-E}'],
      ],
    ],
    ['EAN-13', [[`gtin: ${GTIN}`, 'gtin: "9521234567899"\n    bar-code: {magnification: 120 %}']]],
    ['EAN-8', [[GTIN, '"95200002"']]],
    ['QR', [[`gtin: ${GTIN}`, `gtin: ${GTIN}\n    bar-code: {symbol: QR, domain: https://id.example.com}`]]],
    ['Data Matrix', [[`gtin: ${GTIN}`, `gtin: ${GTIN}\n    bar-code: {symbol: Data Matrix}`]]],
  ])('%s is decoded by an independent reader', async (name, changes) => {
    const { json, bytes, err } = await made('press', changes);
    expect(err).not.toContain('error:');
    const canvas = await renderPage(bytes!, 1, 400);
    const found = await decodeAll(canvas, []);
    expect(found.map(({ text }) => text.replaceAll(' ', '')).join()).toMatch(
      name === 'QR'
        ? /https:\/\/id\.example\.com\/01\/00614141000418/
        : name === 'Data Matrix'
          ? /https:\/\/id\.gs1\.org\/01\/00614141000418/
          : new RegExp(json.barCode.number.replace(/^0/, '')),
    );
    if (name === 'EAN-13')
      expect(json.barCode).toMatchObject({ symbology: 'EAN-13', x: 0.396, magnification: 120 });
    if (name === 'turned') expect(json.barCode.turned).toBe(true);
  });

  it('warns of bars cut short, and refuses a symbol that the GTIN does not go into', async () => {
    const short = await made('press', [[`gtin: ${GTIN}`, `gtin: ${GTIN}\n    bar-code: {height: 12 mm}`]]);
    expect(short.status).toBe(0);
    expect(short.json.barCode.height).toBeCloseTo(12, 3);
    expect(short.err).toMatch(/cut to 12 mm; at this size they should be [\d.]+ mm/);
    const wrong = await made('press', [[`gtin: ${GTIN}`, `gtin: ${GTIN}\n    bar-code: {symbol: EAN-8}`]]);
    expect(wrong).toMatchObject({ status: 1, bytes: null });
    expect(wrong.err).toContain('cannot be printed as EAN-8');
    const outside = await made('press', [
      [`gtin: ${GTIN}`, `gtin: ${GTIN}\n    bar-code: {magnification: 79 %}`],
    ]);
    expect(outside.status).toBe(2);
  });
});

describe('preprinted red frames', () => {
  const framed = (frames: string): [string, string] => [DIE, DIE.replace('}', `, red-frames: [${frames}]}`)];
  const one = '{left: 4 mm, bottom: 90 mm, side: 15 mm}';

  // 29 CFR 1910.1200 App. C, C.2.3.1, and OSHA's letter of interpretation of 20 December 2012.
  it('take the symbols, and one that is left over is black all over', async () => {
    const { status, json, bytes } = await made('printer-300', [
      framed(`${one}, {left: 4 mm, bottom: 60 mm, side: 15 mm}`),
    ]);
    expect(status).toBe(0);
    expect(json.pictograms).toMatchObject([{ code: 'GHS05', side: 15, box: [4, 90, 25.213, 111.213] }]);
    const page = await oneBit(bytes!, 300);
    const shareOf = (bottom: number) => {
      let [black, all] = [0, 0];
      const [half, dot] = [15 / Math.SQRT2, 25.4 / 300];
      for (let y = 0; y < page.height; y += 1)
        for (let x = 0; x < page.width; x += 1) {
          const [a, b] = [(x + 0.5) * dot - 4 - half, (page.height - y - 0.5) * dot - bottom - half];
          if (Math.abs(a) + Math.abs(b) > half) continue;
          all += 1;
          if (page.at(x, y)) black += 1;
        }
      return black / all;
    };
    expect(shareOf(60)).toBe(1);
    expect(shareOf(90)).toBeGreaterThan(0.03);
    expect(shareOf(90)).toBeLessThan(0.5);
  });

  // Bad input: a place off the label, and a frame that cannot be read beside one that can.
  it.each([
    ['{left: 4 mm, bottom: 115 mm, side: 15 mm}', /frame reaches over the edge/],
    [`${one}, {left: 100 mm, bottom: 1 mm, side: 45 mm}`, /frame reaches over the edge/],
    [`${one}, {left: 4 mm, bottom: 90 mm, side: fifteen}`, /side/],
    [`{left: -4 mm, bottom: 90 mm, side: 15 mm}, ${one}`, /outside of the label/],
  ])('%s is refused with its place', async (frames, wrong) => {
    const { status, err } = await made('printer-300', [framed(frames)]);
    expect(status).toBe(2);
    expect(err).toMatch(wrong);
  });

  it('are asked for where none are declared, and refused where they are too few', async () => {
    const black = await made('printer-300');
    expect(black).toMatchObject({ status: 1 });
    expect(black.bytes).not.toBeNull();
    expect(black.err).toMatch(/they must be red \(29 CFR 1910\.1200 App\. C, C\.2\.3\.1\)/);
    const outside = await made('printer-300', [framed('{left: 120 mm, bottom: 90 mm, side: 15 mm}')]);
    expect(outside.status).toBe(2);
    expect(outside.err).toContain('over the edge of the label');
    const over = await made('printer-300', [framed(`${one}, {left: 5 mm, bottom: 80 mm, side: 15 mm}`)]);
    expect(over.status).toBe(2);
  });
});
