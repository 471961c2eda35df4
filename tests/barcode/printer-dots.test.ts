import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DotGeometry, possibleDots, symbolOnDots } from '../../src/barcode/printer-dots.ts';
import { sizeFacts, xOfMagnification } from '../../src/barcode/size-facts.ts';
import type { Environment, SymbolName } from '../../src/barcode/spec.ts';
import { type EncodedSymbol, encodeSymbol } from '../../src/barcode/symbols.ts';
import type { FrameItem } from '../../src/layout/frame.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { decodeAll } from '../support/decode.ts';
import { canvasOf, oneBit, runsOfRow } from '../support/one-bit.ts';

const fonts = await loadFonts();

const symbols: readonly (readonly [SymbolName, string, Environment, string, string])[] = [
  ['UPC-A', '614141000418', 'retail', ']E0', '0614141000418'],
  ['EAN-13', '9521234567899', 'retail', ']E0', '9521234567899'],
  ['EAN-8', '96385074', 'retail', ']E4', '96385074'],
  ['UPC-E', '01234565', 'retail', ']E0', '0012345000065'],
  ['ITF-14', '10614141000415', 'general-distribution', ']I1', '10614141000415'],
  [
    'GS1-128',
    '(01)10614141000415(17)271231(10)L2026A',
    'general-distribution',
    ']C1',
    '(01)10614141000415(17)271231(10)L2026A',
  ],
];

const segments = (x: number, y: number, width: number, height: number) =>
  [['M', x, y], ['L', x + width, y], ['L', x + width, y + height], ['L', x, y + height], ['Z']] as const;

/** The bars alone on a page of whole dots, upright or a quarter turn counter-clockwise. */
async function page({ bars, width, height, x }: DotGeometry, dpi: number, turned = false) {
  const dot = 25.4 / dpi;
  const margin = 10 * dot;
  const whole = (length: number) => Math.ceil(length / dot) * dot;
  const [across, down] = [whole(width) + 20 * dot, whole(height + x) + 20 * dot];
  const items: FrameItem[] = [
    {
      kind: 'path',
      tag: 'layout',
      fill: 'black',
      segments: bars.flatMap(bar =>
        turned
          ? segments(bar.y + margin, across - bar.x - margin - bar.width, bar.height, bar.width)
          : segments(bar.x + margin, bar.y + margin, bar.width, bar.height),
      ),
    },
  ];
  const frame = {
    width: turned ? down : across,
    height: turned ? across : down,
    bleed: 0,
    slug: 0,
    items,
  };
  return writePdf(
    {
      frames: [frame],
      root: { type: 'Document', children: [] },
      title: 'bars',
      language: 'en-US',
      subject: 'bars',
      date: '2026-11-26T00:00:00Z',
      attachments: [],
    },
    fonts,
    { kind: 'printer', version: '0' },
  );
}

/** Runs that the symbol must have, in dots, without its quiet zones. */
function expectedRuns({ bars }: EncodedSymbol, dots: number, wide: number): number[] {
  const of = (modules: number) => (modules === 2.5 ? wide : Math.round(modules) * dots);
  return bars.flatMap((bar, at) => {
    const before = bars[at - 1];
    return before ? [of(bar.x - before.x - before.width), of(bar.width)] : [of(bar.width)];
  });
}

describe.each([203.2, 300, 600])('bars at %d dpi', dpi => {
  it.each(symbols)('%s stands on whole dots', async (name, text, environment) => {
    const symbol = await encodeSymbol(name, text, environment);
    const geometry = symbolOnDots(symbol, { dpi })!;
    const { dots, wideDots } = geometry;
    expect(geometry.x).toBeCloseTo((dots * 25.4) / dpi, 9);
    const bytes = await page(geometry, dpi);
    expect(await preflight(bytes, { kind: 'printer' })).toEqual([]);
    const image = await oneBit(bytes, dpi);
    // A scan line through the middle of the bars, clear of bearers and guard ends.
    const row = Math.round(10 + (geometry.quietZone.height / 2) * (dpi / 25.4));
    const runs = runsOfRow(image, row);
    const expected = expectedRuns(symbol, dots, wideDots);
    expect(runs.slice(1, -1)).toEqual(expected);
    expect(runs[0]! - 10).toBeGreaterThanOrEqual(symbol.spec.quietZone.left * dots);
    expect(runs.at(-1)! - 10).toBeGreaterThanOrEqual(symbol.spec.quietZone.right * dots);
    if (name !== 'ITF-14') for (const run of expected) expect(run % dots).toBe(0);
    // Wide to narrow: 2.25 to 3.0 (GS1 General Specifications 5.3.2.1, by a member organization's guide).
    else expect(wideDots / dots).toBeGreaterThanOrEqual(2.25);
    expect(wideDots / dots).toBeLessThanOrEqual(3);
  });
});

describe('a decoder', () => {
  it.each(symbols)(
    'reads %s at 203.2 dpi, upright and turned',
    async (name, text, environment, identifier, read) => {
      const symbol = await encodeSymbol(name, text, environment);
      const geometry = symbolOnDots(symbol, { dpi: 203.2 })!;
      for (const turned of [false, true]) {
        const image = await oneBit(await page(geometry, 203.2, turned), 203.2);
        const found = await decodeAll(canvasOf(image), []);
        expect(found.map(each => [each.identifier, each.text.replace(/^0(?=0\d{12}$)/, '')])).toContainEqual([
          identifier,
          read,
        ]);
      }
    },
  );
});

describe('any lot at any resolution', () => {
  it('has every edge on a boundary of dots', async () => {
    const lot = fc.stringMatching(/^[A-Z0-9-]{1,20}$/);
    await fc.assert(
      fc.asyncProperty(lot, fc.integer({ min: 150, max: 1200 }), async (value, dpi) => {
        const symbol = await encodeSymbol('GS1-128', `(10)${value}`, 'general-distribution');
        const geometry = symbolOnDots(symbol, { dpi });
        if (geometry === null) return;
        for (const { x, width } of geometry.bars)
          for (const edge of [(x * dpi) / 25.4 - 0.1, ((x + width) * dpi) / 25.4 + 0.1])
            expect(Math.abs(edge - Math.round(edge))).toBeLessThan(1e-6);
        // X of GS1-128 in general distribution: 0.495 to 1.016 mm (symbol specification table 2).
        expect(geometry.x).toBeGreaterThanOrEqual(0.495 - 1e-9);
        expect(geometry.x).toBeLessThanOrEqual(1.016 + 1e-9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('sizes', () => {
  it('go down to 75 % at 203 dpi for EAN and UPC, with the height and width of 80 %', async () => {
    const symbol = await encodeSymbol('UPC-A', '614141000418', 'retail');
    expect(possibleDots(symbol, 203.2)).toEqual([2, 3, 4, 5]);
    const small = symbolOnDots(symbol, { dpi: 203.2, x: 0.25 })!;
    expect(small.x).toBeCloseTo(0.25, 9);
    // 80 %: bars 18.28 mm high (size table of GS1 Ireland), quiet zones 9 times 0.264 mm.
    expect(small.quietZone.height).toBeGreaterThanOrEqual(18.28);
    expect(small.width).toBeGreaterThanOrEqual(95 * 0.25 + 18 * 0.264);
    expect(sizeFacts(symbol.spec, small.x, { onDemand: true }).map(({ id }) => id)).toEqual([
      'on-demand-size',
    ]);
    expect(sizeFacts(symbol.spec, small.x).map(({ id }) => id)).toEqual(['x-below-least']);
  });

  it('keep to the width given, or give nothing', async () => {
    const symbol = await encodeSymbol('ITF-14', '10614141000415', 'general-distribution');
    const wide = symbolOnDots(symbol, { dpi: 203.2, maxWidth: 101.5, x: 1.016 })!;
    expect(wide.width).toBeLessThanOrEqual(101.5);
    expect(symbolOnDots(symbol, { dpi: 203.2, maxWidth: 50 })).toBeNull();
  });
});

describe('facts of a size', () => {
  it('stand at the edges of 80 and 200 %', async () => {
    const { spec } = await encodeSymbol('EAN-13', '9521234567899', 'retail');
    const ids = (percent: number) => sizeFacts(spec, xOfMagnification(percent)).map(({ id }) => id);
    // 80 to 200 %: GS1 General Specifications 5.12.3, table 1.
    expect([79.9, 80, 100, 200, 200.1].map(ids)).toEqual([['x-below-least'], [], [], [], ['x-above-most']]);
  });

  it('tell of bars cut short, and of more than a fifth', async () => {
    const { spec } = await encodeSymbol('EAN-13', '9521234567899', 'retail');
    const facts = (height: number) => sizeFacts(spec, 0.33, { height });
    expect(facts(22.85)).toEqual([]);
    expect(facts(22)).toMatchObject([{ id: 'truncated', required: 22.85, beyondAdvice: false }]);
    // A fifth of 22.85 mm leaves 18.28 mm.
    expect(facts(18.28)).toMatchObject([{ beyondAdvice: false }]);
    expect(facts(18.27)).toMatchObject([{ beyondAdvice: true }]);
  });

  it('tell of bars on a bottle', async () => {
    const { spec } = await encodeSymbol('EAN-13', '9521234567899', 'retail');
    const ids = (diameter: number, standing: 'fence' | 'ladder') =>
      sizeFacts(spec, 0.33, { diameter, standing }).map(({ id }) => id);
    // 6/pi times the width of the bars is 59.9 mm.
    expect(ids(60, 'fence')).toEqual([]);
    expect(ids(59, 'fence')).toEqual(['too-curved']);
    expect(ids(59, 'ladder')).toEqual(['turned']);
  });
});
