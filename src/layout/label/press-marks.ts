import type { Millimetres } from '../../quantity/length.ts';
import { toPoints } from '../../quantity/length.ts';
import { type FontLibrary, runWidth } from '../../text/glyph-run.ts';
import type { FrameItem, Segment } from '../frame.ts';
import type { Stock } from '../stock.ts';

/** Room for marks beyond the bleed, and their measures; common practice of printers, no source. */
export const SLUG: Millimetres = 8;
const OFFSET: Millimetres = 1;
const LENGTH: Millimetres = 5;
const CAPITALS: Millimetres = 1.6;

/** Crop marks at the corners of the trim and a line on the job, all outside the bleed. */
export function pressMarks({ die, profile }: Stock, line: string, fonts: FontLibrary): readonly FrameItem[] {
  const { width, height } = die;
  const from = profile.bleed.value + OFFSET;
  const segments: Segment[] = [];
  const stroke = (x: number, y: number, to: number, down: number) =>
    segments.push(['M', x, y], ['L', to, down]);
  for (const x of [0, width]) {
    stroke(x, -from, x, -from - LENGTH);
    stroke(x, height + from, x, height + from + LENGTH);
  }
  for (const y of [0, height]) {
    stroke(-from, y, -from - LENGTH, y);
    stroke(width + from, y, width + from + LENGTH, y);
  }
  const run = fonts.shape(line, 'regular');
  const wanted = toPoints((CAPITALS * 1000) / fonts.metrics('regular').capHeight);
  const room = width - 2 * OFFSET;
  const natural = runWidth(run, wanted);
  const size = natural > room ? (wanted * room) / natural : wanted;
  const y = height + from + CAPITALS * 1.5;
  return [
    { kind: 'path', tag: 'layout', segments, stroke: 'black', strokeWidth: profile.rule.thin },
    { kind: 'text', tag: 'layout', x: OFFSET, y, size, run, ink: 'black' },
  ];
}
