import type { FrameItem } from '../frame.ts';
import type { Stock } from '../stock.ts';
import { rectangle, type Sheet } from './box.ts';
import type { Fitted } from './fit.ts';

/** Below the last word of the head, in gaps between sections. */
const BELOW = 0.4;

/**
 * The ground of the head in the maker's color, from the edges of the bleed to below name and tagline. It lies under
 * them and takes no room of its own: with it and without it the label is laid out alike.
 */
export function brandBand(
  sheet: Sheet,
  { composition, measures, display }: Fitted,
  { die, profile, brand }: Stock,
): readonly FrameItem[] {
  const head = sheet.areas.find(({ role }) => role === 'identity');
  if (!brand || !head) return [];
  const bleed = profile.bleed.value;
  const right = composition.headRight ?? die.width + bleed;
  const bottom = head.y + head.height + BELOW * measures.gap * display.gap;
  const segments = rectangle(-bleed, -bleed, right + bleed, bottom + bleed);
  return [{ kind: 'path', tag: 'background', segments, fill: 'brand' }];
}
