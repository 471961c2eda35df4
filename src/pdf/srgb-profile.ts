import srgb from './conformance/srgb.json' with { type: 'json' };

type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

const rows = (values: readonly (readonly number[])[]): Matrix => values as unknown as Matrix;
const times = (matrix: Matrix, [x, y, z]: Triple): Triple =>
  matrix.map(([a, b, c]) => a * x + b * y + c * z) as unknown as Triple;
const columns = (matrix: Matrix): Matrix =>
  rows([0, 1, 2].map(at => matrix.map(row => row[at as 0 | 1 | 2])));
const product = (left: Matrix, right: Matrix): Matrix =>
  columns(rows(columns(right).map(column => times(left, column))));

/** Inverse of a matrix that has one, by cofactors. */
function inverse(matrix: Matrix): Matrix {
  const [[a, b, c], [d, e, f], [g, h, i]] = matrix;
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  return rows(
    [
      [e * i - f * h, c * h - b * i, b * f - c * e],
      [f * g - d * i, a * i - c * g, c * d - a * f],
      [d * h - e * g, b * g - a * h, a * e - b * d],
    ].map(row => row.map(each => each / determinant)),
  );
}

const diagonal = ([x, y, z]: Triple): Matrix => [
  [x, 0, 0],
  [0, y, 0],
  [0, 0, z],
];

/** Of chromaticity x, y and luminance 1. */
const xyz = ([x = 0, y = 1]: readonly number[]): Triple => [x / y, 1, (1 - x - y) / y];

/** Adaptation of the white of sRGB to the illuminant of profiles, by the cones of Bradford (ICC.1:2022 Annex E). */
function adaptation(): Matrix {
  const bradford = rows(srgb.bradford);
  const from = times(bradford, xyz(srgb.white));
  const to = times(bradford, srgb.illuminant as unknown as Triple);
  const scale = to.map((value, at) => value / from[at as 0 | 1 | 2]) as unknown as Triple;
  return product(inverse(bradford), product(diagonal(scale), bradford));
}

/** What full red, green and blue are under the illuminant of profiles. */
function adaptedPrimaries(): Matrix {
  const { red, green, blue } = srgb.primaries;
  const primaries = columns(rows([red, green, blue].map(xyz)));
  const luminance = times(inverse(primaries), xyz(srgb.white));
  return columns(product(adaptation(), product(primaries, diagonal(luminance))));
}

const ascii = (text: string): number[] => [...text].map(letter => letter.charCodeAt(0));
const uint32 = (value: number): number[] => [24, 16, 8, 0].map(shift => (value >>> shift) & 255);
const uint16 = (value: number): number[] => [(value >>> 8) & 255, value & 255];
/** A signed number with 16 bits behind the point (ICC.1:2022 4.7). */
const fixed = (value: number): number[] => uint32(Math.round(value * 65536) >>> 0);

const type = (signature: string, ...content: readonly number[]): number[] => [
  ...ascii(signature),
  ...uint32(0),
  ...content,
];
const point = (value: readonly number[]): number[] => type('XYZ ', ...value.flatMap(fixed));
const text = (written: string): number[] =>
  type(
    'mluc',
    ...uint32(1),
    ...uint32(12),
    ...ascii('enUS'),
    ...uint32(written.length * 2),
    ...uint32(28),
    ...[...written].flatMap(letter => uint16(letter.charCodeAt(0))),
  );

/** The transfer function as a parametric curve of the fourth kind (ICC.1:2022 10.18). */
function curve(): number[] {
  const { gamma, offset, linearSlope, linearTo } = srgb.transfer;
  const scale = 1 + offset;
  const numbers = [gamma, 1 / scale, offset / scale, 1 / linearSlope, linearTo];
  return type('para', ...uint16(3), ...uint16(0), ...numbers.flatMap(fixed));
}

const padded = (bytes: readonly number[]): readonly number[] => [
  ...bytes,
  ...Array<number>((4 - (bytes.length % 4)) % 4).fill(0),
];

/** The ICC profile of sRGB, a matrix and a curve, worked out from its published numbers (ICC.1:2022, version 4.3). */
export function srgbProfile(): Uint8Array {
  const [red, green, blue] = adaptedPrimaries();
  const transfer = curve();
  const tags: readonly (readonly [string, readonly number[]])[] = [
    ['desc', text(srgb.description)],
    ['cprt', text(srgb.copyright)],
    ['wtpt', point(srgb.illuminant)],
    ['chad', type('sf32', ...adaptation().flat().flatMap(fixed))],
    ['rXYZ', point(red)],
    ['gXYZ', point(green)],
    ['bXYZ', point(blue)],
    ['rTRC', transfer],
    ['gTRC', transfer],
    ['bTRC', transfer],
  ];
  const start = 128 + 4 + tags.length * 12;
  const data: number[] = [];
  const placed = new Map<readonly number[], number>();
  const table = tags.flatMap(([signature, content]) => {
    if (!placed.has(content)) {
      placed.set(content, start + data.length);
      data.push(...padded(content));
    }
    return [...ascii(signature), ...uint32(placed.get(content)!), ...uint32(content.length)];
  });
  const header = [
    ...uint32(start + data.length),
    ...uint32(0),
    ...uint32(0x04300000),
    ...ascii('mntrRGB XYZ '),
    ...srgb.created.flatMap(uint16),
    ...ascii('acsp'),
    // Platform, flags, manufacturer, model, attributes and rendering intent: none.
    ...Array<number>(28).fill(0),
    ...srgb.illuminant.flatMap(fixed),
    // Creator, identifier and what is reserved.
    ...Array<number>(48).fill(0),
  ];
  return Uint8Array.from([...header, ...uint32(tags.length), ...table, ...data]);
}
