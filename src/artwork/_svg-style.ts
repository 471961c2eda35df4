import { inksOfScreen } from '../quantity/screen-color.ts';
import type { Inks } from './art.ts';

/** How a shape is painted, as far as its element and those round it say. */
export interface SvgStyle {
  readonly fill: Inks | null;
  readonly rule: 'nonzero' | 'evenodd';
  readonly stroke: Inks | null;
  readonly width: number;
  readonly cap: 0 | 1 | 2;
  readonly join: 0 | 1 | 2;
  readonly miter: number;
  readonly dash: readonly number[];
  readonly dashFrom: number;
}

/** Initial values of SVG 2, 13.2 to 13.5. */
export const INITIAL: SvgStyle = {
  fill: [0, 0, 0, 1],
  rule: 'nonzero',
  stroke: null,
  width: 1,
  cap: 0,
  join: 0,
  miter: 4,
  dash: [],
  dashFrom: 0,
};

/** What is not understood, in words. */
export class SvgFault extends Error {}

// Properties that bear on text, gradients and filters alone, none of which is drawn here, and notes of editors.
const INERT =
  /^(?:-inkscape-.*|font(?:-.*)?|text-.*|letter-spacing|word-spacing|line-height|white-space|writing-mode|direction|baseline-shift|dominant-baseline|stop-.*|flood-.*|lighting-color|solid-.*|color-(?:interpolation.*|rendering)|image-rendering|shape-rendering|enable-background|overflow|cursor|pointer-events)$/;

// Properties that draw something else unless they have the value at which they do nothing.
const NEUTRAL: Readonly<Record<string, readonly string[]>> = {
  opacity: ['1', '100%', '1.0'],
  'fill-opacity': ['1', '100%', '1.0'],
  'stroke-opacity': ['1', '100%', '1.0'],
  'clip-path': ['none'],
  'clip-rule': ['nonzero', 'evenodd'],
  mask: ['none'],
  filter: ['none'],
  marker: ['none'],
  'marker-start': ['none'],
  'marker-mid': ['none'],
  'marker-end': ['none'],
  'mix-blend-mode': ['normal'],
  isolation: ['auto'],
  'paint-order': ['normal'],
  'vector-effect': ['none'],
  display: ['inline', 'block'],
  visibility: ['visible'],
};

const CAPS: Readonly<Record<string, SvgStyle['cap']>> = { butt: 0, round: 1, square: 2 };
const JOINS: Readonly<Record<string, SvgStyle['join']>> = { miter: 0, round: 1, bevel: 2 };

/** A number of user units, `px` being one. @throws SvgFault for another unit */
export function userUnits(text: string, what: string): number {
  const match = /^\s*([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)(?:px)?\s*$/i.exec(text);
  if (!match) throw new SvgFault(`\`${what}="${text}"\` is no number of user units`);
  return Number(match[1]);
}

/** Red, green and blue of a screen, or process inks; null for none. @throws SvgFault for what it cannot read */
export function svgColor(text: string, converted: () => void): Inks | null {
  const value = text.trim().toLowerCase();
  if (value === 'none' || value === 'transparent') return null;
  if (value === 'black') return [0, 0, 0, 1];
  if (value === 'white') return [0, 0, 0, 0];
  const inks = /^device-cmyk\(([^)]*)\)$/.exec(value);
  if (inks) {
    const parts = partsOf(inks[1]!, 1);
    if (parts.length === 4) return parts as unknown as Inks;
  }
  const screen = screenParts(value);
  if (!screen)
    throw new SvgFault(
      value.startsWith('url(') ? `the color \`${text}\` (a gradient or pattern)` : `the color \`${text}\``,
    );
  const [red, green, blue] = screen;
  // Black, white and grays are black ink alone whichever way they are read.
  if (red !== green || green !== blue) converted();
  return inksOfScreen([red, green, blue]).map(part => Number((part / 100).toFixed(4))) as unknown as Inks;
}

function screenParts(value: string): readonly [number, number, number] | null {
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/.exec(value);
  const long = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/.exec(value);
  const hex = short?.slice(1).map(digit => digit + digit) ?? long?.slice(1);
  if (hex) return hex.map(pair => Number.parseInt(pair, 16) / 255) as unknown as [number, number, number];
  const list = /^rgb\(([^)]*)\)$/.exec(value);
  const parts = list ? partsOf(list[1]!, 255) : [];
  return parts.length === 3 ? (parts as unknown as [number, number, number]) : null;
}

/** Numbers and percentages as parts of 0 to 1; empty where one is neither or outside. */
function partsOf(text: string, whole: number): readonly number[] {
  const parts = text
    .trim()
    .split(/[\s,]+/)
    .map(part => (part.endsWith('%') ? Number(part.slice(0, -1)) / 100 : Number(part) / whole));
  return parts.every(part => part >= 0 && part <= 1) ? parts : [];
}

function dashes(text: string): readonly number[] {
  if (text.trim() === 'none') return [];
  const list = text
    .trim()
    .split(/[\s,]+/)
    .map(part => userUnits(part, 'stroke-dasharray'));
  if (list.some(part => part < 0)) throw new SvgFault(`\`stroke-dasharray="${text}"\``);
  if (list.every(part => part === 0)) return [];
  return list.length % 2 === 0 ? list : [...list, ...list];
}

/**
 * A style with one property changed; null where it is no property of style.
 * @throws SvgFault for a property or value that would draw what is not understood
 */
export function styled(style: SvgStyle, name: string, given: string, converted: () => void): SvgStyle | null {
  const value = given.trim();
  const pick = <T>(from: Readonly<Record<string, T>>): T => {
    const found = from[value];
    if (found === undefined) throw new SvgFault(`\`${name}="${value}"\``);
    return found;
  };
  if (value === 'inherit') throw new SvgFault(`\`${name}="inherit"\``);
  switch (name) {
    case 'fill':
      return { ...style, fill: svgColor(value, converted) };
    case 'stroke':
      return { ...style, stroke: svgColor(value, converted) };
    case 'fill-rule':
      return { ...style, rule: pick({ nonzero: 'nonzero', evenodd: 'evenodd' } as const) };
    case 'stroke-width':
      return { ...style, width: userUnits(value, name) };
    case 'stroke-linecap':
      return { ...style, cap: pick(CAPS) };
    case 'stroke-linejoin':
      return { ...style, join: pick(JOINS) };
    case 'stroke-miterlimit':
      return { ...style, miter: userUnits(value, name) };
    case 'stroke-dasharray':
      return { ...style, dash: dashes(value) };
    case 'stroke-dashoffset':
      return { ...style, dashFrom: userUnits(value, name) };
    // Read only through `currentColor`, which is refused.
    case 'color':
      return style;
  }
  if (INERT.test(name)) return style;
  const neutral = NEUTRAL[name];
  if (!neutral) return null;
  if (!neutral.includes(value)) throw new SvgFault(`\`${name}="${value}"\``);
  return style;
}
