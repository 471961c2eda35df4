import SvgPath from 'svgpath';
import { SvgFault, userUnits } from './_svg-style.ts';
import type { DrawnSegment, Matrix } from './art.ts';

type Attributes = Readonly<Record<string, string>>;

/** Attributes that give the outline of an element; undefined for one that is no shape. */
export const GEOMETRY: Readonly<Record<string, readonly string[]>> = {
  path: ['d'],
  rect: ['x', 'y', 'width', 'height', 'rx', 'ry'],
  circle: ['cx', 'cy', 'r'],
  ellipse: ['cx', 'cy', 'rx', 'ry'],
  line: ['x1', 'y1', 'x2', 'y2'],
  polyline: ['points'],
  polygon: ['points'],
};

/**
 * The outline of a shape in user units: lines and cubic curves, absolute. Quadratic curves are cubic ones exactly;
 * arcs of ellipses are within 0.03 % of their radius.
 * @throws SvgFault for an outline that cannot be read
 */
export function outlineOfShape(element: string, attributes: Attributes): readonly DrawnSegment[] {
  const data = pathData(element, attributes);
  return data === '' ? [] : segmentsOf(data);
}

function pathData(element: string, attributes: Attributes): string {
  const number = (name: string): number => userUnits(attributes[name] ?? '0', name);
  switch (element) {
    case 'path':
      return (attributes.d ?? '').trim();
    case 'rect':
      return rectangle(attributes, number);
    case 'circle':
      return ellipse(number('cx'), number('cy'), number('r'), number('r'));
    case 'ellipse':
      return ellipse(number('cx'), number('cy'), number('rx'), number('ry'));
    case 'line':
      return `M${number('x1')} ${number('y1')}L${number('x2')} ${number('y2')}`;
    default: {
      const points = (attributes.points ?? '').trim();
      return points === '' ? '' : `M${points}${element === 'polygon' ? 'Z' : ''}`;
    }
  }
}

function ellipse(x: number, y: number, rx: number, ry: number): string {
  if (!(rx > 0 && ry > 0)) return '';
  return `M${x - rx} ${y}A${rx} ${ry} 0 0 1 ${x + rx} ${y}A${rx} ${ry} 0 0 1 ${x - rx} ${y}Z`;
}

/** SVG 2, 10.2: one radius stands for both, and neither is more than half its side. */
function rectangle(attributes: Attributes, number: (name: string) => number): string {
  const [x, y, width, height] = ['x', 'y', 'width', 'height'].map(number) as [number, number, number, number];
  if (!(width > 0 && height > 0)) return '';
  const [wide, high] = [attributes.rx ?? attributes.ry, attributes.ry ?? attributes.rx];
  const rx = Math.min(width / 2, wide === undefined ? 0 : userUnits(wide, 'rx'));
  const ry = Math.min(height / 2, high === undefined ? 0 : userUnits(high, 'ry'));
  if (!(rx > 0 && ry > 0)) return `M${x} ${y}h${width}v${height}h${-width}Z`;
  const arc = (dx: number, dy: number) => `a${rx} ${ry} 0 0 1 ${dx} ${dy}`;
  const [w, h] = [width - 2 * rx, height - 2 * ry];
  return `M${x + rx} ${y}h${w}${arc(rx, ry)}v${h}${arc(-rx, ry)}h${-w}${arc(-rx, -ry)}v${-h}${arc(rx, -ry)}Z`;
}

function segmentsOf(data: string): readonly DrawnSegment[] {
  const path = new SvgPath(data) as InstanceType<typeof SvgPath> & { readonly err?: string };
  // A reader of SVG draws such a path up to its fault; here nothing is drawn by halves.
  if (path.err) throw new SvgFault(`a path that cannot be read (${path.err.replace(/^SvgPath: /, '')})`);
  const segments: DrawnSegment[] = [];
  path
    .abs()
    .unshort()
    .unarc()
    .iterate((segment, _index, x, y) => {
      const [name, ...given] = segment as readonly [string, ...number[]];
      const [a = 0, b = 0, c = 0, d = 0] = given;
      if (name === 'H') segments.push(['L', a, y]);
      else if (name === 'V') segments.push(['L', x, a]);
      else if (name === 'Q')
        segments.push([
          'C',
          x + (2 / 3) * (a - x),
          y + (2 / 3) * (b - y),
          c + (2 / 3) * (a - c),
          d + (2 / 3) * (b - d),
          c,
          d,
        ]);
      else if (name.toUpperCase() === 'Z') segments.push(['Z']);
      else segments.push([name, ...given] as unknown as DrawnSegment);
    });
  return segments;
}

const product = (a: Matrix, b: Matrix): Matrix => [
  a[0] * b[0] + a[1] * b[2],
  a[0] * b[1] + a[1] * b[3],
  a[2] * b[0] + a[3] * b[2],
  a[2] * b[1] + a[3] * b[3],
  a[4] * b[0] + a[5] * b[2] + b[4],
  a[4] * b[1] + a[5] * b[3] + b[5],
];

function single(name: string, [a = 0, b, c, d = 0, e = 0, f = 0]: readonly number[]): Matrix | null {
  const turn = (a * Math.PI) / 180;
  switch (name) {
    case 'matrix':
      return [a, b ?? 0, c ?? 0, d, e, f];
    case 'translate':
      return [1, 0, 0, 1, a, b ?? 0];
    case 'scale':
      return [a, 0, 0, b ?? a, 0, 0];
    case 'rotate': {
      const [cos, sin, x, y] = [Math.cos(turn), Math.sin(turn), b ?? 0, c ?? 0];
      return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y];
    }
    case 'skewX':
      return [1, 0, Math.tan(turn), 1, 0, 0];
    case 'skewY':
      return [1, Math.tan(turn), 0, 1, 0, 0];
    default:
      return null;
  }
}

const COUNTS: Readonly<Record<string, readonly number[]>> = {
  matrix: [6],
  translate: [1, 2],
  scale: [1, 2],
  rotate: [1, 3],
  skewX: [1],
  skewY: [1],
};

/** A list of transformations (SVG 2, 8.5) before those round it. @throws SvgFault for one that cannot be read */
export function transformed(text: string, outer: Matrix): Matrix {
  let [rest, own] = [text.trim(), outer];
  while (rest !== '') {
    const match = /^([a-zA-Z]+)\s*\(([^)]*)\)\s*,?\s*/.exec(rest);
    const numbers = (match?.[2] ?? '')
      .trim()
      .split(/[\s,]+|(?<=[\d.])(?=[-+])/)
      .map(Number);
    const known = match && COUNTS[match[1]!]?.includes(numbers.length) && numbers.every(Number.isFinite);
    const matrix = known ? single(match[1]!, numbers) : null;
    if (!match || !matrix) throw new SvgFault(`\`transform="${text}"\``);
    own = product(matrix, own);
    rest = rest.slice(match[0].length);
  }
  return own;
}
