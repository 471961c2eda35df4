import type { Frame, FrameItem, Ink } from '../layout/frame.ts';
import { screenOfInks } from '../quantity/screen-color.ts';

/** Inks as a screen shows them, in sRGB; inks of technical layers are not shown. */
const COLORS: Readonly<Partial<Record<Ink, string>>> = {
  black: '#000000',
  white: '#ffffff',
  red: '#e30613',
  grey: '#666666',
  tint: '#e6e6e6',
};

/** How a picture is drawn. */
export interface PictureLook {
  /** The maker's color as parts of process inks in percent; null where the label has none. */
  readonly brand?: readonly number[] | null;
  /** What the ids of the picture begin with, so that several stand on one page. */
  readonly ids?: string;
}

/** Process inks in percent as a screen shows them. */
export const onScreen = (inks: readonly number[]): string =>
  `#${screenOfInks(inks)
    .map(part => part.toString(16).padStart(2, '0'))
    .join('')}`;

/** The color of an ink. @throws RangeError for the ink of a layer that no one sees */
export function colorOf(ink: Ink, { brand }: PictureLook = {}): string {
  const color = ink === 'brand' && brand ? onScreen(brand) : COLORS[ink];
  if (!color) throw new RangeError(`the ink "${ink}" is not seen on a label`);
  return color;
}

/** What is seen of a label: no cut line, no window of the coder, nothing beyond the trim but for what is cut off. */
export const seen = ({ items }: Frame): readonly FrameItem[] =>
  items.filter(({ layer }) => layer !== 'die' && layer !== 'coder');
