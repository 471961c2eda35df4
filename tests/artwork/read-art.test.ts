import { decode } from 'fast-png';
import { PDFName } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { ArtRules, DrawingArt, PictureArt } from '../../src/artwork/art.ts';
import { artFaults, layUnder } from '../../src/artwork/place-art.ts';
import { readArt } from '../../src/artwork/read-art.ts';
import { grayImage, MM, operators, pageOf, png, screenRed, standardText, svg } from './files.ts';

/** 300 dpi and 300 % of ink are asked by label printers: common practice. */
const RULES: ArtRules = {
  inkLimit: 300,
  dpi: 300,
  reservedInks: ['CutContour', 'CoderWindow'],
  cutInks: ['dieline'],
};
const GROUND = { width: 130, height: 120, bleed: 3, tolerance: 0.5 };
const FULL = [136, 126] as const;

const read = (bytes: Uint8Array, page: number | null = null) => readArt('front', bytes, page, RULES);

/** Codes of all that is said of a file, read and laid under the label. */
async function codes(bytes: Uint8Array, page: number | null = null): Promise<readonly string[]> {
  const found = await read(bytes, page);
  if (!found.ok) return found.diagnostics.map(({ code }) => code);
  const placed = layUnder(found.value, GROUND, RULES);
  return [...found.diagnostics, ...placed.diagnostics].map(({ code }) => code);
}

/** Operators on a page as large as the label with its bleed. */
const drawn = (text: string, spaces: Record<string, unknown> = {}) =>
  pageOf(FULL, (page, document) => {
    operators(page, document, text);
    for (const [name, space] of Object.entries(spaces))
      page.node
        .normalizedEntries()
        .Resources.set(PDFName.of('ColorSpace'), document.context.obj({ [name]: space as never }));
  });

const spot = (ink: string, alternate = 'DeviceCMYK') => [
  'Separation',
  ink,
  alternate,
  { FunctionType: 2, Domain: [0, 1], C0: [0, 0, 0, 0], C1: [0, 1, 0, 0], N: 1 },
];

describe('a page of a PDF', () => {
  it('in the inks of a press, as large as the label with its bleed, has no fault', async () => {
    expect(await codes(await drawn('0.2 0 0 0 k 0 0 300 300 re f'))).toEqual([]);
    expect(await codes(await drawn('/S cs 1 scn 0 0 300 300 re f', { S: spot('Leaf Green') }))).toEqual([]);
  });

  it.each<readonly [string, () => Promise<Uint8Array>]>([
    ['art-pages', () => pageOf(FULL, undefined, 2)],
    ['art-size', () => pageOf([100, 100])],
    ['art-rgb', () => pageOf(FULL, screenRed)],
    ['art-rgb', () => drawn('/S cs 1 scn 0 0 9 9 re f', { S: spot('Leaf Green', 'DeviceRGB') })],
    ['art-font', () => pageOf(FULL, standardText)],
    ['art-ink', () => drawn('1 1 1 0.2 k 0 0 300 300 re f')],
    ['art-die-line', () => drawn('/S CS 1 SCN 9 9 90 90 re S', { S: spot('CutContour') })],
    ['art-die-line', () => drawn('/S CS 1 SCN 9 9 90 90 re S', { S: spot('Die Line') })],
    ['art-layers', () => drawn('/OC /L BDC 0 0 0 1 k 0 0 9 9 re f EMC')],
    ['art-forbidden', () => drawn('BI /W 1 /H 1 /CS /G /BPC 8 ID \u0001 EI')],
    [
      'art-active',
      () =>
        pageOf(FULL, (_, document) => {
          document.addJavaScript('main', 'app.alert(1)');
        }),
    ],
    [
      'art-turned',
      () =>
        pageOf(FULL, page => {
          page.node.set(PDFName.of('Rotate'), page.doc.context.obj(90));
        }),
    ],
    [
      'art-resolution',
      () =>
        pageOf(FULL, (page, document) => {
          const image = document.context.register(grayImage(document.context, 100, 100));
          const name = page.node.newXObject('I', image).asString();
          operators(page, document, `q ${50 * MM} 0 0 ${50 * MM} 0 0 cm ${name} Do Q`);
        }),
    ],
  ])('says %s', async (code, make) => {
    const bytes = await make();
    const found = await codes(bytes);
    expect(found).toContain(code);
  });

  it('whose ink cannot be measured names the picture, and what would be measured', async () => {
    const bytes = await pageOf(FULL, (page, document) => {
      const { context } = document;
      const made = context.stream(new Uint8Array([0xff, 0xd8, 0xff, 0xd9]), {
        Type: 'XObject',
        Subtype: 'Image',
        Width: 1200,
        Height: 1100,
        ColorSpace: 'DeviceCMYK',
        BitsPerComponent: 8,
        Filter: 'DCTDecode',
      });
      const name = page.node.newXObject('Photo', context.register(made)).asString();
      operators(page, document, `q ${100 * MM} 0 0 ${90 * MM} 0 0 cm ${name} Do Q`);
    });
    const { diagnostics } = await read(bytes);
    expect(diagnostics).toMatchObject([{ code: 'art-ink-unmeasured', severity: 'note' }]);
    expect(diagnostics[0]!.message).toMatch(
      /the JPEG picture "Photo[^"]*" of 1200 x 1100 pixels, whose ink was not measured/,
    );
    expect(diagnostics[0]!.hint).toMatch(/separation preview.*300 %.*without loss/);
  });

  it('that is damaged or no artwork at all is one message', async () => {
    expect(await codes(new TextEncoder().encode('%PDF-1.7 nothing'))).toEqual(['art-unreadable']);
    expect(await codes(new TextEncoder().encode('GIF89a'))).toEqual(['art-format']);
  });

  it('of several is taken by its number', async () => {
    const two = await pageOf(FULL, undefined, 2);
    expect(await codes(two, 2)).toEqual([]);
    expect(await codes(two, 3)).toEqual(['art-pages']);
  });

  it('is laid by its trim; without bleed that is a warning', async () => {
    const trimmed = await pageOf([160, 150], page => {
      page.setTrimBox(15 * MM, 15 * MM, 130 * MM, 120 * MM);
      page.setBleedBox(12 * MM, 12 * MM, 136 * MM, 126 * MM);
    });
    const found = await read(trimmed);
    if (!found.ok) throw new Error('the page has faults');
    const placed = layUnder(found.value, GROUND, RULES);
    if (!placed.ok) throw new Error('the page is not placed');
    expect(placed.diagnostics).toEqual([]);
    const { x, y, width, height, art } = placed.value;
    for (const [is, wanted] of [
      [x, -3],
      [y, -3],
      [width, 136],
      [height, 126],
    ] as const)
      expect(is).toBeCloseTo(wanted, 6);
    expect(art.kind === 'page' && art.box.map(corner => Math.round((corner / MM) * 10) / 10)).toEqual([
      12, 12, 148, 138,
    ]);
    expect(await codes(await pageOf([130, 120]))).toEqual(['art-bleed']);
  });
});

describe('an SVG', () => {
  const shapesOf = async (content: string) => {
    const found = await read(svg(content));
    if (!found.ok) throw new Error(found.diagnostics[0]!.message);
    return (found.value as DrawingArt).shapes;
  };

  it('gives its colors as inks: those of a press as they are, those of a screen converted and said', async () => {
    expect((await shapesOf('<path fill="device-cmyk(0.1 20% 0 0)" d="M0 0H9V9Z"/>'))[0]!.fill).toEqual([
      0.1, 0.2, 0, 0,
    ]);
    expect((await shapesOf('<path d="M0 0H9V9Z"/>'))[0]!.fill).toEqual([0, 0, 0, 1]);
    expect((await shapesOf('<path style="fill:#808080" d="M0 0H9V9Z"/>'))[0]!.fill![3]).toBeCloseTo(0.498, 3);
    expect(await codes(svg('<path fill="#f00" d="M0 0H9V9Z"/>'))).toEqual(['art-color-converted']);
    expect(await codes(svg('<path fill="#888" d="M0 0H9V9Z"/>'))).toEqual([]);
  });

  // ISO 32000-1 8.5.2.2 has cubic curves alone; SVG 2, 9.3.7: a quadratic one is a cubic one exactly.
  it('gives quadratic curves exactly, and arcs within 0.03 % of their radius', async () => {
    const [quadratic] = await shapesOf('<path d="M0 0Q3 6 6 0"/>');
    expect(quadratic!.segments[1]).toEqual(['C', 2, 4, 4, 4, 6, 0]);
    const [circle] = await shapesOf('<circle cx="50" cy="50" r="40"/>');
    let [px, py] = [0, 0];
    for (const segment of circle!.segments) {
      const [name, ...numbers] = segment;
      if (name === 'C') {
        const [x1, y1, x2, y2, x, y] = numbers as number[];
        for (let t = 0; t <= 1; t += 1 / 16) {
          const u = 1 - t;
          const at = (a: number, b: number, c: number, d: number) =>
            u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d;
          const radius = Math.hypot(at(px, x1!, x2!, x!) - 50, at(py, y1!, y2!, y!) - 50);
          expect(Math.abs(radius - 40)).toBeLessThan(40 * 0.0003);
        }
      }
      if (name !== 'Z') [px, py] = numbers.slice(-2) as [number, number];
    }
  });

  it('applies groups and transformations from the outermost on', async () => {
    const [shape] = await shapesOf(
      '<g transform="translate(10 5)"><rect transform="rotate(90) scale(2)" width="3" height="4"/></g>',
    );
    const [a, b, c, d, e, f] = shape!.matrix;
    // (3, 0) is scaled to (6, 0), turned to (0, 6), moved to (10, 11).
    expect([3 * a + e, 3 * b + f].map(part => Number(part.toFixed(6)))).toEqual([10, 11]);
    expect([4 * c + e, 4 * d + f].map(part => Number(part.toFixed(6)))).toEqual([2, 5]);
  });

  it.each([
    ['`text`', '<text>Peel</text>'],
    ['`image`', '<image href="x.png"/>'],
    ['`use`', '<use href="#a"/>'],
    ['`linearGradient`', '<linearGradient/>'],
    ['`style`', '<defs><style>path{fill:red}</style></defs><path d="M0 0H9V9Z"/>'],
    ['`script`', '<script>1</script>'],
    ['gradient or pattern', '<path fill="url(#a)" d="M0 0H9V9Z"/>'],
    ['`opacity="0.5"`', '<path opacity="0.5" d="M0 0H9V9Z"/>'],
    ['`clip-path="url(#c)"`', '<g clip-path="url(#c)"><path d="M0 0H9V9Z"/></g>'],
    ['`display="none"`', '<path display="none" d="M0 0H9V9Z"/>'],
    ['the color `tomato`', '<path fill="tomato" d="M0 0H9V9Z"/>'],
    ['a path that cannot be read', '<path d="M0 0 L x"/>'],
    ['`transform="turn(9)"`', '<path transform="turn(9)" d="M0 0H9V9Z"/>'],
    ['the attribute `onclick`', '<path onclick="x()" d="M0 0H9V9Z"/>'],
    ['an error of XML', '<path d="M0 0H9V9Z">'],
    ['nothing that is drawn', '<g/>'],
  ])('with %s is refused by that name, with its place', async (what, content) => {
    const found = await read(svg(content));
    expect(found.ok).toBe(false);
    expect(found.diagnostics.map(({ code }) => code)).toEqual(['art-not-understood']);
    expect(found.diagnostics[0]!.message).toContain(what);
    expect(found.diagnostics[0]!.at).toMatchObject({ file: 'front', line: 1 });
  });

  it('passes over what draws nothing: titles, notes of editors, definitions that nothing uses', async () => {
    const content =
      '<title>t</title><metadata><x/></metadata><defs><linearGradient id="a"/></defs><e:view xmlns:e="urn:editor" e:zoom="2"/><path e:type="arc" xmlns:e="urn:editor" style="font-size:12px;fill:none;stroke:#000000;-inkscape-stroke:none" d="M0 0H9V9Z"/>';
    const [shape] = await shapesOf(content);
    expect(shape).toMatchObject({ fill: null, line: { inks: [0, 0, 0, 1], width: 1 } });
  });

  it('of another shape than the label is refused with the size that would do', async () => {
    const bytes = svg('<path d="M0 0H9V9Z"/>', 'width="68mm" height="63mm"');
    const found = await read(bytes);
    if (!found.ok) throw new Error('not read');
    const placed = layUnder(found.value, GROUND, RULES);
    expect(placed.ok).toBe(false);
    expect(placed.diagnostics[0]!.message).toContain('136 x 126 mm');
    // Without a unit it has no size, and may be placed at any.
    expect(await codes(svg('<path d="M0 0H9V9Z"/>', 'width="68" height="63"'))).toEqual([]);
  });
});

describe('a PNG', () => {
  const picture = async (bytes: Uint8Array) => {
    const found = await read(bytes);
    if (!found.ok) throw new Error(found.diagnostics[0]!.message);
    return { art: found.value as PictureArt, codes: found.diagnostics.map(({ code }) => code) };
  };

  it('of grays stays gray; colors are converted and said; opacity is kept', async () => {
    const gray = await picture(png(4, 3, [128, 128, 128]));
    expect([gray.art.space, gray.art.samples[0], gray.codes]).toEqual(['DeviceGray', 128, []]);
    const red = await picture(png(4, 3, [255, 0, 0]));
    expect([red.art.space, ...red.art.samples.subarray(0, 4)]).toEqual(['DeviceCMYK', 0, 255, 255, 0]);
    expect(red.codes).toEqual(['art-color-converted']);
    const faint = await picture(png(4, 3, [0, 0, 0, 64]));
    expect([...faint.art.alpha!.subarray(0, 2)]).toEqual([64, 64]);
    expect(decode(faint.art.source).width).toBe(4);
  });

  it('needs 300 dpi at the size at which it is placed', async () => {
    const { art } = await picture(png(120, 60, [0]));
    // 120 pixels are 10.16 mm at 300 dpi.
    expect(artFaults(art, 10.1, RULES)).toEqual([]);
    expect(artFaults(art, 10.4, RULES)[0]).toMatchObject({ code: 'art-resolution', severity: 'error' });
    expect(artFaults(art, 10.4, RULES)[0]!.hint).toContain('123 pixels');
  });

  it('that is damaged is said', async () => {
    const bytes = png(4, 4, [1]).slice(0, 40);
    expect(await codes(bytes)).toEqual(['art-unreadable']);
  });
});
