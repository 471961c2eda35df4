import type { Frame, FrameItem, Ink } from '../layout/frame.ts';

/** Inks as a screen shows them, in sRGB; inks of technical layers are not shown. */
const COLORS: Readonly<Partial<Record<Ink, string>>> = {
  black: '#000000',
  white: '#ffffff',
  red: '#e30613',
  grey: '#666666',
  tint: '#e6e6e6',
};

/** The color of an ink. @throws RangeError for the ink of a layer that no one sees */
export function colorOf(ink: Ink): string {
  const color = COLORS[ink];
  if (!color) throw new RangeError(`the ink "${ink}" is not seen on a label`);
  return color;
}

/** What is seen of a label: no cut line, no window of the coder, nothing beyond the trim but for what is cut off. */
export const seen = ({ items }: Frame): readonly FrameItem[] =>
  items.filter(({ layer }) => layer !== 'die' && layer !== 'coder');
