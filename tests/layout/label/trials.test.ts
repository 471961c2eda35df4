import { beforeAll, describe, expect, it } from 'vitest';
import type { Die } from '../../../src/layout/die/die.ts';
import type { FrameItem, Tag, TextItem } from '../../../src/layout/frame.ts';
import { type Trial, tryLabel } from '../../../src/layout/label/layout-label.ts';
import { toMillimetres } from '../../../src/quantity/length.ts';
import { loadFonts } from '../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { advised, expectHeld, SAFE } from './held.ts';
import { extentOf, inkPoints } from './ink.ts';
import { type SampleOptions, sampleModel, sampleStock } from './sample.ts';
import { CONTENTS, DIES } from './trials.ts';

/** Regulation (EU) 2024/2865: distance of base lines 120 % of the size, from memory. */
const LEADING = 1.2;

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

const lay = async (options: SampleOptions, die: Die): Promise<Trial> =>
  tryLabel(await sampleModel(options), fonts, { ...(await sampleStock(die.width, die.height)), die });

const isText = (item: FrameItem): item is TextItem => item.kind === 'text';

/** Base lines of each paragraph, from its top. */
function baseLines(items: readonly FrameItem[]): ReadonlyMap<Tag, readonly TextItem[]> {
  const lines = new Map<Tag, TextItem[]>();
  for (const item of items.filter(isText)) {
    if (typeof item.tag === 'string' || item.tag.type === 'Figure') continue;
    lines.set(item.tag, [...(lines.get(item.tag) ?? []), item]);
  }
  return lines;
}

describe.each(Object.entries(CONTENTS))('%s', (_, options) => {
  it.each(Object.entries(DIES))('on %s', async (_, die) => {
    const outcome = await lay(options, die);
    if (!outcome.layout) {
      expect(outcome.diagnostics[0]).toMatchObject({ code: 'label-too-small', severity: 'error' });
      const larger = advised(die, outcome.remedies!);
      for (const other of larger)
        expect((await lay(options, other)).layout, JSON.stringify(other)).not.toBeNull();
      return;
    }
    expectHeld(outcome.layout, die, fonts);
    const items = outcome.layout.document.frames[0]!.items.filter(
      ({ layer }) => layer !== 'die' && layer !== 'draft',
    );
    const sizes = new Set<string>();
    for (const paragraph of baseLines(items).values()) {
      const ys = [...new Set(paragraph.map(({ y }) => y))].sort((a, b) => a - b);
      const em = toMillimetres(paragraph[0]!.size);
      sizes.add(em.toFixed(3));
      const columns = new Set(paragraph.map(({ x }) => Math.round(x)));
      for (const [at, y] of ys.entries())
        if (at > 0 && columns.size <= 2)
          expect((y - ys[at - 1]!) / em).toBeGreaterThanOrEqual(LEADING - 1e-3);
    }
    expect(sizes.size).toBeLessThanOrEqual(5);
  });
});

describe('typography', () => {
  it('sets a name whose long word does not fit at the largest size as large as the width allows', async () => {
    const options = { ...CONTENTS['one hazard'], name: 'Limewright Descaler' };
    const sizes = await Promise.all(
      [100, 110, 120, 130].map(async width => {
        const { layout } = await lay(options, { width, height: 125, cornerRadius: 3 });
        const name = layout!.document.frames[0]!.items.filter(isText).find(({ run }) =>
          run.text.includes('Limewright'),
        )!;
        return toMillimetres(name.size) / layout!.fitted.measures.em;
      }),
    );
    // Two lines of the display size, 4 times the running text, or of a part of it above the 2.5 of the signal word.
    for (const size of sizes) expect(size).toBeGreaterThan(2.5);
  });

  it('begins every condition on a line of its own, in bold, and keeps it in one column', async () => {
    for (const content of ['corrosive', 'flammable', 'nine statements'])
      for (const name of ['130x120', '75x130', 'wrap 276x90', '150x250']) {
        const { layout } = await lay(CONTENTS[content]!, DIES[name]!);
        if (!layout) continue;
        const texts = layout.document.frames[0]!.items.filter(isText);
        const leads = texts.filter(({ run }) => /^(?:IF |In case of)/.test(run.text));
        expect(leads.length).toBeGreaterThanOrEqual(4);
        for (const lead of leads) {
          expect(lead.run.face).toBe('bold');
          const own = texts.filter(({ tag }) => tag === lead.tag);
          expect(lead.x, lead.run.text).toBeCloseTo(Math.min(...own.map(({ x }) => x)), 3);
          expect(texts.some(({ x, y }) => y === lead.y && x < lead.x && x > lead.x - 3)).toBe(false);
          // One column: lines follow one another downwards.
          const ys = own.map(({ y }) => y);
          expect(ys).toEqual([...ys].sort((a, b) => a - b));
        }
      }
  });

  it('prints carbon dioxide with its subscript, and readers of the file find CO2', async () => {
    const { layout } = await lay(CONTENTS.flammable!, DIES['130x120']!);
    const runs = layout!.document.frames[0]!.items.filter(isText).map(({ run }) => run);
    const run = runs.find(({ text }) => text.includes('CO2'))!;
    const subscript = fonts.shape('\u2082', run.face).glyphs[0]!.id;
    const at = run.text.indexOf('CO2') + 2;
    expect(run.glyphs[at]).toMatchObject({ id: subscript, text: '2' });
  });

  it('moves nothing when the draft is signed off', async () => {
    for (const name of ['100x70', '130x120', 'round 100']) {
      const itemsOf = async (draft: boolean) =>
        (await lay({ ...CONTENTS['one hazard'], draft }, DIES[name]!)).layout!.document.frames[0]!.items;
      const places = (items: readonly FrameItem[]) =>
        items
          .filter(({ layer }) => layer !== 'draft')
          .map(({ tag: _, ...item }) => (item.kind === 'text' ? { ...item, run: item.run.text } : item));
      const [draft, signed] = [await itemsOf(true), await itemsOf(false)];
      expect(places(draft)).toEqual(places(signed));
      expect(signed.some(({ layer }) => layer === 'draft')).toBe(false);
      expect(draft.filter(({ layer }) => layer === 'draft')).toHaveLength(2);
    }
  });

  it('keeps text off the folds of a fold-out, and off the strip that is overlapped', async () => {
    const panel = 80;
    const folded = { width: 3 * panel, height: 80, cornerRadius: 3, panels: 3 };
    const wrap = { width: 276, height: 90, cornerRadius: 3, overlap: 10 };
    for (const content of ['corrosive', 'severe']) {
      const { layout } = await lay(CONTENTS[content]!, folded);
      for (const item of layout!.document.frames[0]!.items.filter(({ layer }) => !layer)) {
        const { left, right } = extentOf(inkPoints(item, fonts));
        for (const fold of [panel, 2 * panel])
          expect(
            left > fold + SAFE - 1e-3 || right < fold - SAFE + 1e-3,
            isText(item) ? item.run.text : 'path',
          ).toBe(true);
      }
      const around = (await lay(CONTENTS[content]!, wrap)).layout!;
      for (const item of around.document.frames[0]!.items.filter(({ layer }) => !layer))
        expect(extentOf(inkPoints(item, fonts)).right).toBeLessThan(276 - 10);
    }
  });
});

/** Running x-heights on a row of dies; 0 where the label is refused. */
const sweep = async (options: SampleOptions, dies: readonly Die[]): Promise<readonly number[]> =>
  Promise.all(
    dies.map(async die => {
      const outcome = await lay(options, die);
      return outcome.layout?.fitted.measures.xHeight ?? 0;
    }),
  );
const heights = (width: number, from: number, to: number): Die[] =>
  Array.from({ length: (to - from) / 5 + 1 }, (_, at) => ({ width, height: from + 5 * at, cornerRadius: 3 }));

describe('size of type', () => {
  it.each([
    ['corrosive', heights(130, 90, 150)],
    ['flammable', heights(100, 75, 135)],
    ['severe', heights(90, 90, 200)],
    ['one hazard', heights(70, 60, 160).map(die => ({ ...die, width: die.height }))],
  ])('never falls as the die grows: %s', async (content, dies) => {
    const found = await sweep(CONTENTS[content]!, dies);
    expect(found).toEqual([...found].sort((a, b) => a - b));
    expect(found.at(-1)).toBeGreaterThan(found[0]!);
  });

  // CLP Annex I, Table 1.3, packages of at most 3 litres: 16 mm if possible, not under 10 mm.
  it.each(['corrosive', 'flammable', 'severe'])(
    'never falls where a larger die first has room for the wanted pictograms: %s',
    async content => {
      const pictogram = { wanted: 16, least: 10, cite: 'CLP Annex I, 1.2.1.4, Table 1.3' };
      const type = { least: {}, front: null, cite: pictogram.cite, bordered: false, pictogram };
      const found: number[] = [];
      const sides: number[] = [];
      for (const die of heights(100, 70, 105)) {
        const { layout } = await lay({ ...CONTENTS[content]!, type }, die);
        found.push(layout?.fitted.measures.xHeight ?? 0);
        const { measures, display } = layout?.fitted ?? {};
        sides.push(measures && display ? (measures.pictogram * display.pictogram) / Math.SQRT2 : 0);
      }
      expect(found).toEqual([...found].sort((a, b) => a - b));
      expect(sides.some(side => side >= 10 - 1e-6 && side < 16 - 1e-6)).toBe(true);
      expect(sides.at(-1)).toBeGreaterThanOrEqual(16 - 1e-6);
    },
  );

  it('does not depend on the length of the name', async () => {
    const die = DIES['110x125']!;
    for (const content of ['one hazard', 'corrosive']) {
      const [short = 0] = await sweep(CONTENTS[content]!, [die]);
      const [long = 0] = await sweep(CONTENTS[`${content}, long name`]!, [die]);
      expect(long).toBeGreaterThanOrEqual(0.95 * short);
    }
  });
});

describe('a label that cannot be', () => {
  it.each([
    ['a tiny die', {}, { width: 10, height: 10, cornerRadius: 0 }],
    ['a name of 200 letters', { name: 'Polyoxyethylenated '.repeat(11).trim() }, DIES['40x30']!],
    ['one word of 200 letters', { name: 'x'.repeat(200) }, DIES['130x120']!],
  ] satisfies [string, SampleOptions, Die][])(
    '%s is refused, with what would do',
    async (_, options, die) => {
      const outcome = await lay(options, die);
      expect(outcome).toMatchObject({ layout: null, diagnostics: [{ code: 'label-too-small' }] });
    },
  );
});
