import type { TypeRules } from '../../../src/document/type-rules.ts';
import type { Die } from '../../../src/layout/die/die.ts';
import { tryLabel } from '../../../src/layout/label/layout-label.ts';
import { writePdf } from '../../../src/pdf/write.ts';
import { preflight } from '../../../src/preflight/preflight.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { inkPoints, leastDepth } from './ink.ts';
import { corrosive, type SampleOptions, sampleModel, sampleStock, severe } from './sample.ts';
import { CONTENTS, LONG_NAME } from './trials.ts';

/** Park and Miller's generator: the same seed gives the same labels. */
export function generator(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  const next = () => {
    state = (state * 16807) % 2147483647;
    return (state - 1) / 2147483646;
  };
  // Neighbouring seeds begin alike.
  for (let turn = 0; turn < 8; turn += 1) next();
  return next;
}

const pick = <T>(random: () => number, items: readonly T[]): T => items[Math.floor(random() * items.length)]!;

/** A die of any kind that a record may give. */
export function randomDie(random: () => number): Die {
  const width = 20 + Math.round(random() * 280 * 4) / 4;
  const height = 20 + Math.round(random() * 230 * 4) / 4;
  const kind = random();
  if (kind < 0.2) return { width, height, cornerRadius: 0, shape: 'oval' };
  if (kind < 0.3) return { width, height: Math.min(height, 100), cornerRadius: 3, overlap: width * 0.04 };
  if (kind < 0.4) return { width: width * 3, height, cornerRadius: 3, panels: 3 };
  return { width, height, cornerRadius: (random() * Math.min(width, height)) / 2 };
}

/** Contents of 0 to 9 statements, some of them left out, with names of all lengths. */
export function randomContent(random: () => number): SampleOptions {
  const options = pick(random, Object.values(CONTENTS));
  const elements = options.elements ?? corrosive;
  const keep = random();
  const words = LONG_NAME.split(' ');
  return {
    elements: {
      ...elements,
      hazardStatements: elements.hazardStatements.filter(() => random() < 0.5 + keep),
      precautionaryStatements: elements.precautionaryStatements.filter(() => random() < 0.3 + keep),
      pictograms: random() < 0.2 ? severe.pictograms : elements.pictograms,
    },
    name: words.slice(0, 1 + Math.floor(random() * words.length)).join(' '),
    gtin: pick(random, ['0614141000418', '9521234543213', null]),
    diameter: pick(random, [null, 30, 60, 88, 200]),
    draft: random() < 0.8,
  };
}

/** Rules of CLP Annex I, Table 1.3 by rows, with and without the letters of Regulation (EU) 2024/2865. */
const UNION_ROWS = [
  [16, 10, 1.2],
  [16, 10, 1.4],
  [23, 23, 1.8],
  [32, 32, 2],
] as const;

/** What the law of a label may ask of its sizes: nothing, a row for supply in the Union, or a front that is seen at once. */
export function randomType(random: () => number): TypeRules | null {
  const kind = random();
  const cite = 'random';
  const shared = { front: null, cite, bordered: false };
  if (kind < 0.3) return null;
  if (kind < 0.5) {
    const capHeight = pick(random, [1.19, 1.59, 1.98, 2.38]);
    const least = { precautions: { capHeight, cite }, 'signal-word': { capHeight: 1.6 * capHeight, cite } };
    return { ...shared, least, bordered: true };
  }
  const [wanted, side, xHeight] = pick(random, UNION_ROWS);
  const letters = { xHeight, cite };
  const least: TypeRules['least'] = random() < 0.5 ? {} : { precautions: letters, 'net-contents': letters };
  return { ...shared, least, pictogram: { wanted, least: side, cite } };
}

export interface Counts {
  fits: number;
  refused: number;
  readonly failures: string[];
}

/** Lays random labels out and holds each against the outline and the preflight of its bytes. */
export async function tryRandomLabels(seed: number, count: number, fonts: FontLibrary): Promise<Counts> {
  const counts: Counts = { fits: 0, refused: 0, failures: [] };
  for (let at = 0; at < count; at += 1) {
    const random = generator(seed + at);
    const [die, options] = [randomDie(random), randomContent(random)];
    const stock = { ...(await sampleStock(die.width, die.height)), die };
    const { layout } = await tryLabel(await sampleModel(options), fonts, stock);
    if (!layout) {
      counts.refused += 1;
      continue;
    }
    counts.fits += 1;
    const fail = (why: string) => counts.failures.push(`${seed + at} ${JSON.stringify(die)}: ${why}`);
    for (const item of layout.document.frames[0]!.items) {
      const depth = item.layer === 'die' ? 2 : leastDepth(die, inkPoints(item, fonts));
      if (depth < 1.6 - 2e-3)
        fail(`${item.kind === 'text' ? item.run.text : item.kind} at ${depth.toFixed(3)} mm`);
    }
    const bytes = await writePdf(layout.document, fonts, { kind: 'label', version: '0.0.0' });
    const geometry = { safe: 1.6, xHeight: 0.9, pictogramSide: 10 };
    for (const { message } of await preflight(bytes, { kind: 'label', dieInk: 'CutContour', geometry }))
      fail(message);
  }
  return counts;
}

/** Running x-heights as a die of random content grows, as pairs of neighbours that fall. */
export async function fallingSizes(
  seed: number,
  count: number,
  fonts: FontLibrary,
): Promise<readonly string[]> {
  const falls: string[] = [];
  for (let at = 0; at < count; at += 1) {
    const random = generator(seed + at);
    const options = randomContent(random);
    const axis = Math.floor(random() * 3);
    const [width, height, step] = [50 + random() * 150, 40 + random() * 120, 1 + random() * 6];
    const model = await sampleModel({ ...options, type: randomType(random) });
    let last = 0;
    for (let grown = 0; grown < 8; grown += 1) {
      const die: Die = {
        width: axis === 1 ? width : width + grown * step,
        height: axis === 0 ? height : height + grown * step,
        cornerRadius: 3,
      };
      const { layout } = await tryLabel(model, fonts, { ...(await sampleStock(die.width, die.height)), die });
      const size = layout?.fitted.measures.xHeight ?? 0;
      if (size < last - 1e-9)
        falls.push(`${seed + at} ${JSON.stringify(die)}: ${last.toFixed(3)} to ${size.toFixed(3)}`);
      last = size;
    }
  }
  return falls;
}
