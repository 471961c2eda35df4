import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { operators, pageOf, png, svg } from '../artwork/files.ts';
import { pressProfile } from '../support/press-profile.ts';
import { openPdf, pixelAt, renderPage } from '../support/render.ts';
import { demo, demoWith, inProcess, put, workshop } from './_command.ts';

const AREAS = [
  '{holds: regulated, left: 42 mm, bottom: 4 mm, width: 84 mm, height: 112 mm}',
  '{holds: identity, left: 4 mm, bottom: 80 mm, width: 36 mm, height: 34 mm, ground: artwork}',
  '{holds: net-contents, left: 4 mm, bottom: 4 mm, width: 36 mm, height: 14 mm}',
];
const withArtwork = (file: string, areas: readonly string[] = AREAS, more = '') =>
  demoWith(['  tagline:', `  artwork: {file: ${file}, ${more}areas: [${areas.join(', ')}]}\n  tagline:`]);

/** A pale field with a green foot, in the inks of a press. */
const FIELD = svg(
  '<path fill="device-cmyk(0.1 0 0.3 0)" d="M0 0H136V126H0Z"/><path fill="device-cmyk(0.6 0 0.9 0.1)" d="M0 90H136V126H0Z"/>',
);

async function made(
  files: Readonly<Record<string, Uint8Array>>,
  {
    record = demo,
    maker = '',
    args = [],
  }: { record?: string; maker?: string; args?: readonly string[] } = {},
) {
  const folder = workshop();
  const out = join(folder, 'made');
  put(folder, 'maker.yaml', `${readFileSync('templates/demo/maker.yaml', 'utf8')}\n${maker}`);
  mkdirSync(join(folder, 'art'));
  for (const [name, bytes] of Object.entries(files)) writeFileSync(join(folder, 'art', name), bytes);
  const path = put(folder, 'p.yaml', record);
  const result = await inProcess(label, [path, '--out', out, ...args.map(arg => arg.replace('IN', folder))]);
  const read = (name = 'label-bottle-946.pdf') => new Uint8Array(readFileSync(join(out, name)));
  return { ...result, read };
}

const DPI = 254; // ten pixels a millimetre
const BLEED = 30;

/** XObjects of the one page, by their subtype. */
async function objectsOf(bytes: Uint8Array) {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  return document.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFRawStream ? [object.dict] : []))
    .filter(
      dict =>
        dict.get(PDFName.of('Subtype')) !== undefined &&
        dict.get(PDFName.of('Type')) === PDFName.of('XObject'),
    )
    .map(dict => ({
      subtype: String(dict.get(PDFName.of('Subtype'))),
      space: String(dict.get(PDFName.of('ColorSpace'))),
      mask: dict.get(PDFName.of('SMask')) !== undefined,
    }));
}

describe('artwork under a label', () => {
  it('runs into the bleed, and its areas are white as another reader renders it', async () => {
    const { status, err, read } = await made(
      { 'front.svg': FIELD },
      { record: withArtwork('art/front.svg') },
    );
    expect(status, err).toBe(0);
    const canvas = await renderPage(read(), 1, DPI);
    const at = (x: number, up: number) =>
      pixelAt(canvas, Math.round(BLEED + x * 10), Math.round(canvas.height - BLEED - up * 10)).slice(0, 3);
    const isGreen = ([red, green, blue]: number[]) => green! > red! + 40 && green! > blue! + 40;
    expect(isGreen(at(-2.5, -2.5))).toBe(true);
    expect(isGreen(at(41, 20))).toBe(true);
    // Inside the margin of the regulated text, and of the net contents.
    expect(at(125.6, 6)).toEqual([255, 255, 255]);
    expect(at(5, 17.6)).toEqual([255, 255, 255]);
    // The name stands on the artwork.
    expect(at(39, 112)).not.toEqual([255, 255, 255]);
    expect((await objectsOf(read())).map(({ subtype }) => subtype)).toEqual(['/Form']);
  });

  it('leaves every word of the label to readers of the file, in its area', async () => {
    const { read } = await made({ 'front.svg': FIELD }, { record: withArtwork('art/front.svg') });
    const page = await (await openPdf(read())).getPage(1);
    const places = (await page.getTextContent()).items.flatMap(item =>
      'str' in item && item.str.trim() !== ''
        ? [{ text: item.str, x: ((item.transform[4] as number) * 25.4) / 72 - 3 }]
        : [],
    );
    const find = (text: string) => places.find(place => place.text.includes(text))!;
    expect(find('Kerbstone').x).toBeCloseTo(4, 1);
    expect(find('946 mL').x).toBeLessThan(40);
    for (const text of ['Danger', 'Prevention', 'Tallow Lane']) expect(find(text).x).toBeGreaterThan(42);
  });

  it('with a page of a PDF is placed as it is, and PDF/X-4 stands', async () => {
    const page = await pageOf([136, 126], (each, document) =>
      operators(each, document, '0.1 0 0.3 0 k 0 0 400 400 re f 0.6 0 0.9 0.1 k 0 0 400 100 re f'),
    );
    const folder = { 'front.pdf': page, 'press.icc': pressProfile() };
    const { status, err, read } = await made(folder, {
      record: withArtwork('art/front.pdf'),
      args: ['--icc', 'IN/art/press.icc', '--condition', 'Own proof', '--picture', 'svg'],
    });
    expect(status, err).toBe(0);
    expect(err).toContain('without the artwork or logo that is a page of a PDF');
    expect(Buffer.from(read()).toString('latin1')).toContain('PDF/X-4');
    const canvas = await renderPage(read(), 1, DPI);
    const [red, green, blue] = pixelAt(canvas, 5, canvas.height - 5);
    expect(green! > red! + 40 && green! > blue! + 40).toBe(true);
  });

  it('is an input of what is made: another picture, another fingerprint', async () => {
    const mark = async (bytes: Uint8Array) => {
      const { read } = await made({ 'front.svg': bytes }, { record: withArtwork('art/front.svg') });
      return /<lw:fingerprint>(\w+)</.exec(Buffer.from(read()).toString('latin1'))![1];
    };
    const other = svg('<path fill="device-cmyk(0.1 0 0.3 0)" d="M0 0H136V126H0Z"/>');
    expect(await mark(FIELD)).toBe(await mark(FIELD));
    expect(await mark(FIELD)).not.toBe(await mark(other));
  });

  it('is read back: a label on the artwork itself, and artwork of the screen, are found', async () => {
    const { read } = await made({ 'front.svg': FIELD }, { record: withArtwork('art/front.svg') });
    const geometry = { safe: 1.6, xHeight: 0.9, pictogramSide: 10 };
    const rules = { inkLimit: 300, dpi: 300, reservedInks: [] };
    const identity = [4, 80, 40, 114] as const;
    const codes = async (bytes: Uint8Array, art?: object) => {
      const profile = { kind: 'label', dieInk: 'CutContour', geometry, ...(art && { art }) } as const;
      return (await preflight(bytes, profile as Parameters<typeof preflight>[1])).map(({ code }) => code);
    };
    expect(await codes(read(), { ...rules, bare: [identity] })).toEqual([]);
    expect(await codes(read(), { ...rules, bare: [] })).toContain('on-the-artwork');
    expect(await codes(read(), { ...rules, inkLimit: 100, bare: [identity] })).toContain('ink-limit');
    expect(await codes(read())).toContain('colour-operator');
    // The form of the artwork exchanged for one in DeviceRGB.
    const document = await PDFDocument.load(read(), { updateMetadata: false });
    for (const [ref, object] of document.context.enumerateIndirectObjects())
      if (object instanceof PDFRawStream && String(object.dict.get(PDFName.of('Subtype'))) === '/Form')
        document.context.assign(
          ref,
          document.context.flateStream('1 0 0 rg 0 0 9 9 re f', {
            Type: 'XObject',
            Subtype: 'Form',
            BBox: [0, 0, 9, 9],
          }),
        );
    const changed = await document.save({ useObjectStreams: false, addDefaultPage: false });
    changed.set(new TextEncoder().encode('%PDF-1.6'));
    expect(await codes(changed, { ...rules, bare: [identity] })).toContain('art-foreign-color');
  });

  it.each([
    ['area-missing', ['{holds: identity, left: 4 mm, bottom: 80 mm, width: 36 mm, height: 34 mm}']],
    ['area-off-the-label', ['{holds: regulated, left: 1 mm, bottom: 4 mm, width: 84 mm, height: 112 mm}']],
    [
      'areas-overlap',
      [AREAS[0]!, '{holds: identity, left: 4 mm, bottom: 80 mm, width: 60 mm, height: 34 mm}'],
    ],
    ['area-twice', [AREAS[0]!, AREAS[1]!, AREAS[1]!]],
    [
      'area-too-small',
      [AREAS[0]!, '{holds: bar-code, left: 4 mm, bottom: 4 mm, width: 20 mm, height: 14 mm}'],
    ],
    ['label-too-small', ['{holds: regulated, left: 42 mm, bottom: 4 mm, width: 40 mm, height: 40 mm}']],
  ])('says %s, and writes nothing', async (code, areas) => {
    const { status, out } = await made(
      { 'front.svg': FIELD },
      { record: withArtwork('art/front.svg', areas), args: ['--json'] },
    );
    expect(status).toBe(1);
    const { findings, file } = JSON.parse(out) as { findings: { code: string }[]; file: string | null };
    expect(file).toBeNull();
    expect(findings.map(found => found.code)).toContain(code);
  });

  it('that is not there is one message; for another pack, printer or purpose it is left out and that is said', async () => {
    const gone = await made({}, { record: withArtwork('art/front.svg') });
    expect([gone.status, gone.err.includes('front.svg is not there')]).toEqual([1, true]);
    const record = (more: string) => withArtwork('art/front.svg', AREAS, more);
    for (const [more, args] of [
      ['pack: can, ', []],
      ['for: [us-consumer], ', []],
      ['', ['--target', 'printer-300']],
      ['', ['--only', 'precautions', '--size', '130x120mm']],
    ] as const) {
      const { err } = await made({ 'front.svg': FIELD }, { record: record(more), args });
      expect(err).toContain('front.svg is left out of the label: ');
    }
  });
});

describe('a logo', () => {
  const MARK = svg('<path fill="device-cmyk(1 0 0 0)" d="M0 0H136V126H0Z"/>', '');
  it('takes what the name leaves free, and moves nothing', async () => {
    const record = demoWith(['name: Kerbstone Patio Cleaner', 'name: Slate']);
    const plain = await made({}, { record });
    const marked = await made({ 'logo.svg': MARK }, { record, maker: 'brand: {logo: art/logo.svg}\n' });
    expect(marked.status, marked.err).toBe(0);
    const texts = async (bytes: Uint8Array) =>
      (await (await (await openPdf(bytes)).getPage(1)).getTextContent()).items.map(item =>
        'str' in item ? [item.str, ...item.transform] : [],
      );
    expect(await texts(marked.read())).toEqual(await texts(plain.read()));
    expect(await objectsOf(plain.read())).toEqual([]);
    expect((await objectsOf(marked.read())).map(({ subtype }) => subtype)).toEqual(['/Form']);
  });

  it('of which the record keeps the width is as wide as that; as a PNG it has its opacity in a mask', async () => {
    const logo = png(300, 150, [0, 120, 160, 128]);
    const { status, err, read } = await made(
      { 'logo.png': logo },
      { maker: 'brand: {logo: art/logo.png, logo-width: 20 mm}\n' },
    );
    expect(status, err).toBe(0);
    expect(err).toContain('colors of a screen');
    const images = (await objectsOf(read())).filter(({ subtype }) => subtype === '/Image');
    expect(images.map(({ space }) => space).sort()).toEqual(['/DeviceCMYK', '/DeviceGray']);
    expect(images.filter(({ mask }) => mask)).toHaveLength(1);
    const small = await made(
      { 'logo.png': png(100, 50, [0]) },
      { maker: 'brand: {logo: art/logo.png, logo-width: 20 mm}\n' },
    );
    expect([small.status, small.err.includes('dpi at the size')]).toEqual([1, true]);
  });
});
