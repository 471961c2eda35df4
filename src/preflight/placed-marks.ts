import { IDENTITY, type Matrix, product } from './_matrix.ts';
import { asNumber, entry, members } from './_objects.ts';
import { alongCurve, type Extent, extentOf, extentOfAll, type Point } from './_shapes.ts';
import type { Operand, Operation } from './content-tokens.ts';
import { readUnicodeMap } from './fonts.ts';
import { isPainting, type PageMarks, type PaintedMark } from './page-marks.ts';

/** Something painted, with its place on the trim. */
export interface PlacedMark {
  readonly mark: PaintedMark;
  /** Outlines of a path, flattened; the box of a text. */
  readonly outlines: readonly (readonly Point[])[];
  readonly extent: Extent;
  /** Height of the lower-case x of a text in millimetres. */
  readonly xHeight: number | null;
  /** Height of its capitals in millimetres. */
  readonly capHeight: number | null;
  readonly text: string;
}

const MM_PER_POINT = 25.4 / 72;

interface Face {
  readonly widths: readonly number[];
  readonly texts: ReadonlyMap<number, string>;
  readonly rise: number;
  readonly fall: number;
  readonly xHeight: number;
}

function numbersOf(operands: readonly Operand[]): number[] {
  const numbers: number[] = [];
  for (const operand of operands) if (operand.kind === 'number') numbers.push(operand.value);
  return numbers;
}

/** Follows the places of paths and texts through the content of a page. */
class Tracer {
  readonly #faces = new Map<string, Face>();
  readonly #marks: PageMarks;
  readonly #origin: Point;
  readonly #saved: { matrix: Matrix; width: number; font: string; size: number }[] = [];
  #matrix: Matrix = IDENTITY;
  #width = 1;
  #font = '';
  #size = 0;
  #text: Matrix = IDENTITY;
  #line: Matrix = IDENTITY;
  #outlines: Point[][] = [];
  #painted = 0;
  readonly placed: PlacedMark[] = [];

  constructor(marks: PageMarks, origin: Point) {
    this.#marks = marks;
    this.#origin = origin;
  }

  #onTrim([x, y]: Point, matrix: Matrix): Point {
    const [a, b, c, d, e, f] = matrix;
    return [
      (a * x + c * y + e - this.#origin[0]) * MM_PER_POINT,
      (b * x + d * y + f - this.#origin[1]) * MM_PER_POINT,
    ];
  }

  #face(): Face {
    const known = this.#faces.get(this.#font);
    if (known) return known;
    const font = entry(entry(this.#marks.page.resources, 'Font'), this.#font);
    const descendant = members(entry(font, 'DescendantFonts'))[0];
    const descriptor = entry(descendant, 'FontDescriptor');
    const [, widths] = members(entry(descendant, 'W'));
    const number = (key: string) => asNumber(entry(descriptor, key)) ?? 0;
    const face: Face = {
      widths: members(widths).map(width => asNumber(width) ?? 0),
      texts: readUnicodeMap(entry(font, 'ToUnicode')),
      rise: number('CapHeight'),
      fall: number('Descent'),
      xHeight: number('XHeight'),
    };
    this.#faces.set(this.#font, face);
    return face;
  }

  #move(operator: string, [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x3 = 0, y3 = 0]: readonly number[]): void {
    const at = (x: number, y: number) => this.#onTrim([x, y], this.#matrix);
    const outline = this.#outlines.at(-1);
    if (operator === 'm') this.#outlines.push([at(x1, y1)]);
    else if (operator === 're')
      this.#outlines.push([at(x1, y1), at(x1 + x2, y1), at(x1 + x2, y1 + y2), at(x1, y1 + y2)]);
    else if (operator === 'l') outline?.push(at(x1, y1));
    else if (operator === 'c' && outline?.length)
      for (const point of alongCurve(outline.at(-1)!, at(x1, y1), at(x2, y2), at(x3, y3)))
        outline.push(point);
  }

  #show(operands: readonly Operand[], mark: PaintedMark): void {
    const face = this.#face();
    const parts = operands.flatMap(operand => (operand.kind === 'array' ? operand.items : [operand]));
    let [x, end] = [0, 0];
    let text = '';
    for (const part of parts) {
      if (part.kind === 'number') x -= (part.value / 1000) * this.#size;
      if (part.kind !== 'string') continue;
      for (let at = 0; at + 1 < part.bytes.length; at += 2) {
        const code = part.bytes[at]! * 256 + part.bytes[at + 1]!;
        x += ((face.widths[code] ?? 0) / 1000) * this.#size;
        const character = face.texts.get(code) ?? '?';
        text += character;
        if (character.trim() !== '') end = x;
      }
    }
    const matrix = product(this.#text, this.#matrix);
    const [rise, fall] = [face.rise, face.fall].map(height => (height / 1000) * this.#size) as [
      number,
      number,
    ];
    const corners: Point[] = [
      [0, fall],
      [end, fall],
      [end, rise],
      [0, rise],
    ];
    const outline = corners.map(corner => this.#onTrim(corner, matrix));
    this.#text = product([1, 0, 0, 1, x, 0], this.#text);
    if (text.trim() === '') return;
    const xHeight = (face.xHeight / 1000) * this.#size * MM_PER_POINT;
    const capHeight = (face.rise / 1000) * this.#size * MM_PER_POINT;
    this.placed.push({ mark, outlines: [outline], extent: extentOf(outline), xHeight, capHeight, text });
  }

  #paint(mark: PaintedMark): void {
    const half = mark.paints.includes('stroke') ? (this.#width * MM_PER_POINT) / 2 : 0;
    if (this.#outlines.some(({ length }) => length > 0)) {
      const [left, bottom, right, top] = extentOfAll(this.#outlines);
      this.placed.push({
        mark,
        outlines: this.#outlines,
        extent: [left - half, bottom - half, right + half, top + half],
        xHeight: null,
        capHeight: null,
        text: '',
      });
    }
    this.#outlines = [];
  }

  run({ operator, operands }: Operation): void {
    const numbers = numbersOf(operands);
    const matrix = numbers.length === 6 ? (numbers as unknown as Matrix) : IDENTITY;
    if (operator === 'q')
      this.#saved.push({ matrix: this.#matrix, width: this.#width, font: this.#font, size: this.#size });
    else if (operator === 'Q') {
      const saved = this.#saved.pop();
      if (saved)
        [this.#matrix, this.#width, this.#font, this.#size] = [
          saved.matrix,
          saved.width,
          saved.font,
          saved.size,
        ];
    } else if (operator === 'cm') this.#matrix = product(matrix, this.#matrix);
    else if (operator === 'w') this.#width = numbers[0] ?? 1;
    else if (operator === 'BT') this.#text = this.#line = IDENTITY;
    else if (operator === 'Tm') this.#text = this.#line = matrix;
    else if (operator === 'Td')
      this.#text = this.#line = product([1, 0, 0, 1, numbers[0] ?? 0, numbers[1] ?? 0], this.#line);
    else if (operator === 'Tf') {
      this.#font = operands[0]?.kind === 'name' ? operands[0].value : '';
      this.#size = numbers[0] ?? 0;
    } else this.#move(operator, numbers);
    if (operator === 'n') this.#outlines = [];
    if (!isPainting(operator)) return;
    const mark = this.#marks.painted[this.#painted];
    this.#painted += 1;
    if (!mark) return;
    if (mark.paints.includes('text')) this.#show(operands, mark);
    else this.#paint(mark);
  }
}

/** Places of everything painted on a page, in millimetres from the lower left corner of its trim. */
export function placedMarks(marks: PageMarks): readonly PlacedMark[] {
  const [x = 0, y = 0] = members(entry(marks.page.dict, 'TrimBox') ?? marks.page.mediaBox).map(
    corner => asNumber(corner) ?? 0,
  );
  const tracer = new Tracer(marks, [x, y]);
  for (const operation of marks.operators) tracer.run(operation);
  return tracer.placed;
}
