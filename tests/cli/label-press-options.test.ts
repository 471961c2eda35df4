import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { openPdf, pixelAt, renderPage } from '../support/render.ts';
import { demo, demoWith, filesBelow, inProcess, put, workshop } from './_command.ts';

// Everything is read back by pdf.js, which shares nothing with the writer.

async function made(
  args: readonly string[],
  { record = demo, profile, maker = '' }: { record?: string; profile?: unknown; maker?: string } = {},
) {
  const folder = workshop();
  const out = join(folder, 'made');
  mkdirSync(out);
  put(folder, 'maker.yaml', `${readFileSync('templates/demo/maker.yaml', 'utf8')}\n${maker}`);
  if (profile !== undefined)
    put(folder, 'press.json', typeof profile === 'string' ? profile : JSON.stringify(profile));
  const path = put(folder, 'p.yaml', record);
  const result = await inProcess(label, [path, '--out', out, ...args.map(arg => arg.replace('IN', folder))]);
  const read = () => new Uint8Array(readFileSync(join(out, 'label-bottle-946.pdf')));
  return { ...result, folder: out, read };
}

const DPI = 254; // ten pixels a millimetre

const layersOf = async (bytes: Uint8Array): Promise<readonly string[]> => {
  const config = await (await openPdf(bytes)).getOptionalContentConfig();
  const names = (group: unknown) => (config.getGroup(group as string) as { name: string }).name;
  return ((config.getOrder() ?? []) as readonly string[]).map(names);
};

/** Widths of the bars in millimetres: the path with the most rectangles. */
async function barWidths(bytes: Uint8Array): Promise<readonly number[]> {
  const page = await (await openPdf(bytes)).getPage(1);
  const { fnArray, argsArray } = await page.getOperatorList();
  const paths = fnArray.flatMap((name, at) =>
    name === OPS.constructPath
      ? [[...((argsArray[at] as [unknown, [Float32Array | null]])[1][0] ?? [])]]
      : [],
  );
  const longest = paths
    .map(path => {
      const xs: number[][] = [];
      // 0 and 1 are moves and lines with a point, 4 closes.
      for (let at = 0; at < path.length; ) {
        const command = path[at]!;
        if (command === 0) xs.push([]);
        if (command === 0 || command === 1) xs.at(-1)!.push(path[at + 1]!);
        at += command === 4 ? 1 : command === 2 ? 7 : command === 3 ? 5 : 3;
        if (command === 2) return [];
      }
      return xs.map(list => ((Math.max(...list) - Math.min(...list)) * 25.4) / 72);
    })
    .sort((a, b) => b.length - a.length)[0]!;
  return longest;
}

describe('marks of the press', () => {
  it('stand outside of the bleed at the trim, with the job beside them', async () => {
    const { status, err, read } = await made(['--marks']);
    expect(status, err).toBe(0);
    const page = await (await openPdf(read())).getPage(1);
    const [, , width, height] = page.view as [number, number, number, number];
    const canvas = await renderPage(read(), 1, DPI);
    const edge = (((width * 25.4) / 72 - 130) / 2) * 10;
    expect(((height * 25.4) / 72 - 120) / 2).toBeCloseTo(edge / 10, 3);
    const isDark = (x: number, y: number) =>
      [-1, 0, 1].some(
        by => Math.max(...pixelAt(canvas, Math.round(x + by), Math.round(y)).slice(0, 3)) < 140,
      ) ||
      [-1, 0, 1].some(
        by => Math.max(...pixelAt(canvas, Math.round(x), Math.round(y + by)).slice(0, 3)) < 140,
      );
    for (const x of [edge, edge + 1300])
      for (const y of [edge - 60, edge + 1200 + 60]) expect(isDark(x, y)).toBe(true);
    // The bleed itself is clean.
    for (const x of [edge, edge + 1300])
      for (const y of [edge - 20, edge + 1200 + 20]) expect(isDark(x, y)).toBe(false);
    const words = (await page.getTextContent()).items.map(item => ('str' in item ? item.str : '')).join(' ');
    expect(words).toContain('CutContour');
  });
});

describe('the eye mark', () => {
  it('is black where the record puts it, on a layer of its own', async () => {
    const record = demoWith([
      'corner-radius: 3 mm}',
      'corner-radius: 3 mm, eye-mark: {left: 0, bottom: 50 mm, width: 6 mm, height: 3 mm}}',
    ]);
    const { status, err, read } = await made([], { record });
    expect(status, err).toBe(0);
    expect(await layersOf(read())).toContain('Eye mark');
    const canvas = await renderPage(read(), 1, DPI);
    const at = (x: number, up: number) =>
      Math.max(
        ...pixelAt(canvas, Math.round(30 + x * 10), Math.round(canvas.height - 30 - up * 10)).slice(0, 3),
      );
    expect(at(3, 51.5)).toBeLessThan(60);
    expect(at(3, 53.5)).toBeGreaterThan(200);
    expect(at(6.6, 51.5)).toBeGreaterThan(200);
  });
});

describe('options on the press', () => {
  it('name ink and cut of the die line before the record does', async () => {
    const { read } = await made(['--die-ink', 'Stanze 1', '--cut', 'kiss'], {
      maker: 'press: {die-ink: Knife, cut: through}\n',
    });
    const source = Buffer.from(read()).toString('latin1');
    expect(source).toContain('/Separation /Stanze#201');
    expect(source).not.toContain('Knife');
    expect(source).toContain('/GTS_ProcStepsType /PartialCutting');
    expect(Buffer.from((await made([])).read()).toString('latin1')).toContain('/GTS_ProcStepsType /Cutting');
  });

  it('take as much off every bar as they say', async () => {
    const plain = await barWidths((await made([])).read());
    const reduced = await barWidths((await made(['--bar-width-reduction', '0.05mm'])).read());
    // UPC-A has 30 bars (GS1 General Specifications 5.2.1.2).
    expect([plain.length, reduced.length]).toEqual([30, 30]);
    for (const [at, width] of plain.entries()) expect(width - reduced[at]!).toBeCloseTo(0.05, 3);
  });

  it('take the profile of a press from a file, and say what is wrong with one', async () => {
    const own = JSON.parse(readFileSync('templates/stocks/roll-paper.json', 'utf8')) as Record<
      string,
      unknown
    >;
    const wide = { ...own, safeZone: { value: 3, source: 'the converter' } };
    const { out } = await made(['--press-profile', 'IN/press.json', '--json'], { profile: wide });
    expect((JSON.parse(out) as { die: { safe: number } }).die.safe).toBe(3);
    for (const [profile, message] of [
      [{ ...own, safeZone: { value: -1, source: 'x' } }, 'safeZone.value'],
      [{ ...own, taste: 1 }, 'taste'],
      ['{', 'it is no JSON'],
    ] as const) {
      const wrong = await made(['--press-profile', 'IN/press.json'], { profile });
      expect([wrong.status, filesBelow(wrong.folder)]).toEqual([2, []]);
      expect(wrong.err).toContain(message);
    }
  });

  it.each([
    [['--die-ink', 'Cyan'], 'cannot be the ink of a cut line'],
    [['--cut', 'kisss'], '--cut'],
    [['--bar-width-reduction', 'thin'], 'is not a length'],
    [['--press-profile', 'nowhere.json'], 'there is no such file'],
    [['--cut', 'kiss', '--target', 'printer-300'], 'is of a press'],
  ])('%j is a wrong call', async (args, message) => {
    const { status, err } = await made(args);
    expect(status).toBe(2);
    expect(err).toContain(message);
  });

  it('and the record of the maker refuses the name of a process ink', async () => {
    const { status, err } = await made([], { maker: 'press: {die-ink: Cyan}\n' });
    expect(status).toBe(2);
    expect(err).toContain('`Cyan` is no spot ink');
  });
});
