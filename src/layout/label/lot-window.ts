import type { Millimetres } from '../../quantity/length.ts';
import { type Box, drawn, empty, named, rectangle, stack } from './box.ts';
import type { Making } from './parts.ts';
import { paragraphsBox } from './text-block.ts';

/**
 * Window of a clear size that the coder prints lot and date into: nothing stands in it. Empty where the label has
 * none; null where it does not fit the width.
 */
export function lotWindow(making: Making, width: Millimetres): Box | null {
  const { parts, measures } = making;
  const { lot } = parts.placed;
  if (!lot) return empty;
  const { thin, gap } = measures;
  const least = parts.lotWindow ?? parts.profile.lotWindow.minimum;
  const wanted = parts.lotWindow ?? measures.lotWindow;
  const room = width - 2 * thin;
  if (room < least.width - 1e-9) return null;
  const clear = { width: Math.min(room, wanted.width), height: wanted.height };
  const caption = paragraphsBox(lot.paragraphs, clear.width, making);
  if (!caption) return null;
  const frame = drawn(clear.width + 2 * thin, clear.height + 2 * thin, () => [
    {
      kind: 'path',
      tag: 'layout',
      // The line lies outside the clear area.
      segments: rectangle(thin / 2, thin / 2, clear.width + thin, clear.height + thin),
      stroke: 'black',
      strokeWidth: thin,
    },
  ]);
  const framed: Box = {
    ...frame,
    draw(sheet, x, y) {
      sheet.areas.push({ role: 'lot-window', x: x + thin, y: y + thin, ...clear });
      frame.draw(sheet, x, y);
    },
  };
  return named('lot', stack([caption, framed], gap * 0.2));
}
