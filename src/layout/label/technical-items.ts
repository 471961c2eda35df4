import type { FontLibrary } from '../../text/glyph-run.ts';
import { outlineOf } from '../die/outline.ts';
import type { FrameItem } from '../frame.ts';
import type { Die, PressProfile, Stock } from '../stock.ts';
import { type Area, rectangle } from './box.ts';
import { pressMarks } from './press-marks.ts';

/** What the press uses and does not print, and the marks outside the bleed. */
export function technicalItems(
  areas: readonly Area[],
  stock: Stock,
  fonts: FontLibrary,
): readonly FrameItem[] {
  const { die, profile, jobLine } = stock;
  const coder = areas
    .filter(({ role }) => role === 'lot-window')
    .map(
      ({ x, y, width, height }): FrameItem => ({
        kind: 'path',
        tag: 'layout',
        layer: 'coder',
        segments: rectangle(x, y, width, height),
        stroke: 'coder',
        strokeWidth: profile.rule.thin,
      }),
    );
  return [
    ...(jobLine === undefined ? [] : pressMarks(stock, jobLine, fonts)),
    ...coder,
    dieLine(die, profile),
  ];
}

/** Outline of the die on its own layer, drawn last. */
const dieLine = (die: Die, { rule }: PressProfile): FrameItem => ({
  kind: 'path',
  tag: 'layout',
  layer: 'die',
  segments: outlineOf(die).segments,
  stroke: 'die',
  strokeWidth: rule.thin,
});
