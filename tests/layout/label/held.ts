import { expect } from 'vitest';
import type { Die } from '../../../src/layout/die/die.ts';
import type { FrameItem, TextItem } from '../../../src/layout/frame.ts';
import type { LabelLayout } from '../../../src/layout/label/layout-label.ts';
import { foldOut, type Remedies } from '../../../src/layout/label/remedies.ts';
import { toMillimetres } from '../../../src/quantity/length.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { extentOf, inkPoints, leastDepth, overlapOf } from './ink.ts';

/** Common practice of label printers: 1/16 in inside the die. */
export const SAFE = 1.6;

const isText = (item: FrameItem): item is TextItem => item.kind === 'text';

/** The dies that a refusal advises. */
export const advised = (die: Die, { height, width, panels, both }: Remedies): readonly Die[] => [
  ...(height === null ? [] : [{ ...die, height }]),
  ...(width === null ? [] : [{ ...die, width }]),
  ...(panels === null ? [] : [foldOut(die, panels)]),
  ...(both === null ? [] : [{ ...die, ...both }]),
];

/** Holds what a label prints against its outline, its own parts and the least sizes of the press. */
export function expectHeld({ document, areas, profile }: LabelLayout, die: Die, fonts: FontLibrary): void {
  const all = document.frames[0]!.items.filter(({ layer }) => layer !== 'die');
  const items = all.filter(({ layer }) => layer !== 'draft');

  for (const item of all) {
    const least = leastDepth(die, inkPoints(item, fonts));
    expect(least, isText(item) ? item.run.text : 'a path').toBeGreaterThanOrEqual(SAFE - 1e-3);
  }

  // The notice of a draft stands clear of the text below it: judgement, no source.
  const [notice] = all.filter(({ layer }) => layer === 'draft').filter(isText);
  const below = extentOf(inkPoints(notice!, fonts));
  for (const item of items) {
    const { left, right, top } = extentOf(inkPoints(item, fonts));
    if (left < below.right && right > below.left)
      expect(top - below.bottom, isText(item) ? item.run.text : 'a path').toBeGreaterThanOrEqual(0.4);
  }

  const lines = items.filter(isText).map(item => ({ item, extent: extentOf(inkPoints(item, fonts)) }));
  for (const [at, a] of lines.entries())
    for (const b of lines.slice(at + 1))
      expect(overlapOf(a.extent, b.extent), `${a.item.run.text} over ${b.item.run.text}`).toBeLessThan(0.01);
  for (const { x, y, width, height } of areas.filter(({ role }) => role === 'lot-window'))
    for (const { item, extent } of lines)
      expect(
        overlapOf(extent, { left: x, top: y, right: x + width, bottom: y + height }),
        `${item.run.text} in the window`,
      ).toBeLessThan(0);

  const { xHeight, pictogram } = profile;
  for (const { item } of lines) {
    if (typeof item.tag !== 'string' && item.tag.type === 'Figure') continue;
    const printed = (toMillimetres(item.size) * fonts.metrics(item.run.face).xHeight) / 1000;
    expect(printed, item.run.text).toBeGreaterThanOrEqual(xHeight.minimum - 1e-3);
  }
  for (const item of items) {
    if (item.kind !== 'path' || item.fill !== 'red') continue;
    const { left, right } = extentOf(inkPoints(item, fonts));
    expect((right - left) / Math.SQRT2).toBeGreaterThanOrEqual(pictogram.minimumSide - 1e-3);
  }
}
