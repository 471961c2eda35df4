import type { SKRSContext2D } from '@napi-rs/canvas';
import type { ArtItem } from '../layout/frame.ts';
import { onScreen } from './shown.ts';
import { pathData } from './svg.ts';

const CAPS = ['butt', 'round', 'square'] as const;
const JOINS = ['miter', 'round', 'bevel'] as const;
const inked = (inks: readonly number[]): string => onScreen(inks.map(part => 100 * part));

/** Draws artwork on a canvas in millimetres; nothing of a page of a PDF, which is not drawn here. */
export async function drawArt(
  library: typeof import('@napi-rs/canvas'),
  context: SKRSContext2D,
  { art, x, y, width, height }: ArtItem,
): Promise<void> {
  if (art.kind === 'page') return;
  if (art.kind === 'picture') {
    context.drawImage(await library.loadImage(Buffer.from(art.source)), x, y, width, height);
    return;
  }
  const [left, top, wide, high] = art.view;
  context.beginPath();
  context.rect(x, y, width, height);
  context.clip();
  context.translate(x, y);
  context.scale(width / wide, height / high);
  context.translate(-left, -top);
  for (const { matrix, segments, fill, rule, line } of art.shapes) {
    context.save();
    context.transform(...matrix);
    const path = new library.Path2D(pathData(segments));
    if (fill) {
      context.fillStyle = inked(fill);
      context.fill(path, rule);
    }
    if (line) {
      context.strokeStyle = inked(line.inks);
      context.lineWidth = line.width;
      context.lineCap = CAPS[line.cap];
      context.lineJoin = JOINS[line.join];
      context.miterLimit = line.miter;
      context.setLineDash([...line.dash]);
      context.lineDashOffset = line.dashFrom;
      context.stroke(path);
    }
    context.restore();
  }
}
