import type { Diagnostic } from '../../report/diagnostic.ts';
import type { FrameItem } from '../frame.ts';
import type { Stock } from '../stock.ts';
import { type Area, rectangle } from './box.ts';
import type { PictogramFigure } from './content.ts';
import type { Parts } from './parts.ts';
import { apart, inFrames } from './red-frames.ts';

/** Parts without the pictograms that preprinted frames take. */
export interface Framed {
  readonly parts: Parts;
  /** What goes into the frames. */
  readonly pictograms: readonly PictogramFigure[];
  readonly refusal: Diagnostic | null;
}

const CITE = '29 CFR 1910.1200 App. C, C.2.3.1';

/** Takes the pictograms out of the flow where the stock brings frames for them; refuses where frames are too few. */
export function framed(parts: Parts, { redFrames = [] }: Stock): Framed {
  const { hazard } = parts.placed;
  if (redFrames.length === 0) return { parts, pictograms: [], refusal: null };
  const pictograms = hazard?.pictograms ?? [];
  const refusal: Diagnostic | null =
    pictograms.length > redFrames.length
      ? {
          code: 'red-frames',
          severity: 'error',
          message: `the label needs ${pictograms.length} pictograms, and the stock has ${redFrames.length} red ${redFrames.length === 1 ? 'frame' : 'frames'}`,
          hint: `take stock with ${pictograms.length} red frames and write their places under \`red-frames:\` of the label, or have the label printed by a press`,
          path: 'label',
          cite: CITE,
        }
      : null;
  const placed = hazard ? { ...parts.placed, hazard: { ...hazard, pictograms: [] } } : parts.placed;
  return { parts: { ...parts, placed }, pictograms, refusal };
}

/** What stands at fixed places: symbols in preprinted frames, black over the frames left, and the eye mark. */
export function fixedMarks(pictograms: readonly PictogramFigure[], stock: Stock): readonly FrameItem[] {
  const { eyeMark, die } = stock;
  const items = [...inFrames(pictograms, stock)];
  if (eyeMark) {
    const { left, bottom, width, height } = eyeMark;
    const segments = rectangle(left, die.height - bottom - height, width, height);
    items.push({ kind: 'path', tag: 'layout', layer: 'eye-mark', segments, fill: 'black' });
  }
  return items;
}

/** Farther apart, pictograms and signal word no longer look as one, in millimetres; common practice, no source. */
const TOGETHER = 6;

/** What a reviewer should know of the frames of a label for a printer with black alone. */
export function frameFindings(
  areas: readonly Area[],
  pictograms: readonly PictogramFigure[],
  shown: number,
  stock: Stock,
): Diagnostic[] {
  const { redFrames = [], profile } = stock;
  if (profile.dpi === undefined) return [];
  if (redFrames.length === 0)
    return shown === 0
      ? []
      : [
          {
            code: 'red-frames',
            severity: 'error',
            message:
              'the printer has black alone, and the frames of the pictograms came out black; they must be red',
            hint: 'load stock with preprinted red frames and write their places under `red-frames:` of the label, or have the label printed by a press',
            path: 'label',
            cite: CITE,
          },
        ];
  const found: Diagnostic[] = [];
  const left = redFrames.length - pictograms.length;
  if (left > 0)
    found.push({
      code: 'red-frames',
      severity: 'note',
      message: `${left} of ${redFrames.length} preprinted red frames ${left === 1 ? 'stays' : 'stay'} without a symbol and ${left === 1 ? 'is' : 'are'} filled in black`,
      hint: 'look at the first print: no red may show, since a frame without a symbol is not permitted',
      path: 'label',
      cite: `${CITE}; OSHA, letter of interpretation of 20 December 2012`,
    });
  const panel = areas.find(({ role }) => role === 'hazard');
  if (panel && apart(panel, pictograms.length, stock) > TOGETHER)
    found.push({
      code: 'red-frames',
      severity: 'warning',
      message:
        'signal word and hazard statements stand apart from the preprinted frames; they belong together',
      hint: 'take stock whose frames stand beside a free stretch of the label',
      path: 'label',
      cite: '29 CFR 1910.1200(f)(3)',
    });
  return found;
}
