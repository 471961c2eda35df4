import type { Frame, FrameItem, Ink } from '../layout/frame.ts';

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

/** Process inks taken as ideal: no profile, no promise. */
function onScreen([cyan = 0, magenta = 0, yellow = 0, black = 0]: readonly number[]): string {
  const light = (part: number): number => Math.round(255 * (1 - part / 100) * (1 - black / 100));
  return `#${[cyan, magenta, yellow].map(part => light(part).toString(16).padStart(2, '0')).join('')}`;
}

/** The color of an ink. @throws RangeError for the ink of a layer that no one sees */
export function colorOf(ink: Ink, { brand }: PictureLook = {}): string {
  const color = ink === 'brand' && brand ? onScreen(brand) : COLORS[ink];
  if (!color) throw new RangeError(`the ink "${ink}" is not seen on a label`);
  return color;
}

/** What is seen of a label: no cut line, no window of the coder, nothing beyond the trim but for what is cut off. */
export const seen = ({ items }: Frame): readonly FrameItem[] =>
  items.filter(({ layer }) => layer !== 'die' && layer !== 'coder');
