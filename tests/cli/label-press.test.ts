import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { pressProfile } from '../support/press-profile.ts';
import { openPdf, pixelAt, renderPage } from '../support/render.ts';
import { demo, filesBelow, inProcess, put, workshop } from './_command.ts';

const FILE = 'label-bottle-946.pdf';

/** The label of the demo product, of a maker with more keys. */
async function made(
  args: readonly string[],
  { maker = '', record = demo }: { maker?: string; record?: string },
) {
  const folder = workshop();
  const out = join(folder, 'made');
  const yaml = `${readFileSync('templates/demo/maker.yaml', 'utf8')}\n${maker}`;
  put(folder, 'maker.yaml', yaml);
  const path = put(folder, 'p.yaml', record);
  const result = await inProcess(label, [path, '--out', out, ...args.map(arg => arg.replace('IN', folder))]);
  const read = (name = FILE) => new Uint8Array(readFileSync(join(out, name)));
  return { ...result, folder, out, read };
}

describe("the maker's color", () => {
  const DPI = 254; // ten pixels a millimetre

  it.each([
    ['cmyk(90, 40, 20, 30)', 'white'],
    ['cmyk(0, 10, 60, 0)', 'black'],
    ['spot(Signal Green, cmyk(80, 0, 70, 10))', null],
  ])('%s grounds the head and bleeds', async (color, words) => {
    const { status, err, read } = await made([], { maker: `brand: {color: "${color}"}\n` });
    expect(status, err).toBe(0);
    const canvas = await renderPage(read(), 1, DPI);
    const at = (x: number, y: number) => pixelAt(canvas, x, y).slice(0, 3);
    // In the bleed at the upper left corner, and beyond the band at the lower one.
    expect(Math.max(...at(3, 3)) - Math.min(...at(3, 3))).toBeGreaterThan(60);
    expect(at(3, canvas.height - 4)).toEqual([255, 255, 255]);
    const source = Buffer.from(read()).toString('latin1');
    expect(source.includes('/Separation /Signal#20Green')).toBe(words === null);
    const without = await made([], {});
    const places = async (bytes: Uint8Array) =>
      (await (await (await openPdf(bytes)).getPage(1)).getTextContent()).items.map(item =>
        'str' in item ? [item.str, ...item.transform] : [],
      );
    expect(await places(read())).toEqual(await places(without.read()));
  });

  it('of a screen is converted and said; more ink than the press takes is an error', async () => {
    const screen = await made([], { maker: 'brand: {color: "#0a5c36"}\n' });
    expect(screen.status).toBe(0);
    expect(screen.err).toContain('printed as cmyk(89, 0, 41, 64)');
    const heavy = await made([], { maker: 'brand: {color: "cmyk(100, 100, 60, 60)"}\n' });
    expect(heavy.status).toBe(1);
    expect(heavy.err).toContain('320 % of ink');
  });

  it('under white words is asked for by preflight', async () => {
    const { read } = await made([], { maker: 'brand: {color: "cmyk(90, 40, 20, 30)"}\n' });
    const geometry = { safe: 1.6, xHeight: 0.9, pictogramSide: 10 };
    const codes = async (cmyk: readonly number[]) =>
      (await preflight(read(), { kind: 'label', dieInk: 'CutContour', geometry, brand: { cmyk } })).map(
        ({ code }) => code,
      );
    expect(await codes([90, 40, 20, 30])).toEqual([]);
    expect(await codes([10, 40, 20, 30])).toEqual(
      expect.arrayContaining(['white-on-white', 'ink-not-allowed']),
    );
  });
});

describe('the profile of the press', () => {
  it('makes a PDF/X-4 file', async () => {
    const folder = workshop();
    const icc = put(folder, 'press.icc', pressProfile());
    const { status, err, read } = await made(['--icc', icc, '--condition', 'Own proof'], {});
    expect(status, err).toBe(0);
    const { metadata } = await (await openPdf(read())).getMetadata();
    expect((metadata as { get(name: string): unknown }).get('pdfxid:gts_pdfxversion')).toBe('PDF/X-4');
  });

  it.each([
    [['--icc', 'IN/none.icc', '--condition', 'FOGRA39'], 'there is no such file'],
    [['--icc', 'IN/maker.yaml', '--condition', 'FOGRA39'], 'is not an ICC profile'],
    [['--icc', 'IN/maker.yaml'], 'go together'],
    [['--condition', 'FOGRA39'], 'go together'],
    [['--size', '80x60'], 'add --only precautions'],
    [['--only', 'precautions', '--size', 'large'], 'is not a size'],
    [['--only', 'precautions', '--size', '2x60mm'], 'sides are 10 mm to 1200 mm'],
  ])('a call %j is refused with one sentence, and nothing is written', async (args, message) => {
    const { status, out, err, folder } = await made(args, {});
    expect(status).toBe(2);
    expect(out === '' ? '' : out).not.toContain('PDF');
    expect(err).toContain(message);
    expect(filesBelow(folder).filter(name => name.endsWith('.pdf'))).toEqual([]);
  });
});

it('gives the regulated panel alone on a page of its size, without cut line and bleed', async () => {
  const { status, err, read } = await made(['--only', 'precautions', '--size', '80x100mm'], {
    maker: 'brand: {color: "cmyk(90, 40, 20, 30)"}\n',
  });
  expect(status, err).toBe(0);
  const bytes = read('label-bottle-946-precautions.pdf');
  const { view } = await (await openPdf(bytes)).getPage(1);
  for (const [at, side] of [80, 100].entries()) expect(view[at + 2]).toBeCloseTo((side * 72) / 25.4, 2);
  expect(Buffer.from(bytes).toString('latin1')).not.toContain('CutContour');
});
