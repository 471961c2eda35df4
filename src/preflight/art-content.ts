import { PDFNumber, type PDFObject, PDFRawStream } from 'pdf-lib';
import { placedImage } from './_art-image.ts';
import { inkOf, type PressSpace, pressSpace } from './_color-space.ts';
import { IDENTITY, type Matrix, product } from './_matrix.ts';
import { asName, asNumber, decoded, entries, entry, members } from './_objects.ts';
import type { ArtContent } from './art-facts.ts';
import { nothingFound } from './art-facts.ts';
import { type Operand, type Operation, operationsOf } from './content-tokens.ts';

interface State {
  readonly matrix: Matrix;
  readonly fill: PressSpace;
  readonly stroke: PressSpace;
}

const MOST_DEPTH = 12;

const numbersOf = (operands: readonly Operand[]): number[] =>
  operands.flatMap(operand => (operand.kind === 'number' ? [operand.value] : []));
const nameOf = (operand: Operand | undefined): string => (operand?.kind === 'name' ? operand.value : '');
const DEVICE: Readonly<Record<string, string>> = { g: 'DeviceGray', rg: 'DeviceRGB', k: 'DeviceCMYK' };

/** The name of a resource in the content, where it has one. */
const called = (name: string): string => (name === '' ? '' : ` "${name}"`);

class Walker {
  readonly found = nothingFound();

  #space(space: PressSpace): PressSpace {
    if (space.kind === 'other') this.found.foreign.add(space.name);
    for (const ink of space.inks) this.found.spots.add(ink);
    if (space.full !== undefined) for (const ink of space.inks) this.found.tints.set(ink, space.full);
    return space;
  }

  #painted(space: PressSpace, values: readonly number[]): void {
    this.found.ink = Math.max(this.found.ink, inkOf(space, values) ?? 0);
    if (space.indexed) this.found.unmeasured.add('a table of colors');
  }

  walk(content: Uint8Array, resources: PDFObject | undefined, matrix: Matrix, depth: number): void {
    if (depth > MOST_DEPTH) {
      this.found.forbidden.add('parts inside of each other without end');
      return;
    }
    let operations: readonly Operation[];
    try {
      operations = operationsOf(content);
    } catch {
      operations = [{ operator: 'BI', operands: [] }];
    }
    const saved: State[] = [];
    let state: State = { matrix, fill: GRAY, stroke: GRAY };
    for (const { operator, operands } of operations) {
      const lower = operator.toLowerCase();
      const side = operator === lower ? 'fill' : 'stroke';
      const numbers = numbersOf(operands);
      const device = DEVICE[lower];
      const name = nameOf(operands[0]);
      if (operator === 'q') saved.push(state);
      else if (operator === 'Q') state = saved.pop() ?? state;
      else if (operator === 'cm' && numbers.length === 6)
        state = { ...state, matrix: product(numbers as unknown as Matrix, state.matrix) };
      else if (device) {
        const space = this.#named(device, undefined);
        state = { ...state, [side]: this.#space(space) };
        this.#painted(space, numbers);
      } else if (lower === 'cs') state = { ...state, [side]: this.#space(this.#named(name, resources)) };
      else if (lower === 'sc' || lower === 'scn') {
        this.#painted(state[side], numbers);
        const pattern = entry(entry(resources, 'Pattern'), nameOf(operands.at(-1)));
        if (pattern) this.#pattern(pattern, resources, matrix, depth);
      } else if (operator === 'gs')
        this.#graphicsState(entry(entry(resources, 'ExtGState'), name), resources, state.matrix, depth);
      else if (operator === 'Tf') this.#font(entry(entry(resources, 'Font'), name), name, resources, depth);
      else if (operator === 'sh') this.#shading(entry(entry(resources, 'Shading'), name), resources, name);
      else if (operator === 'BDC' && name === 'OC') this.found.layers = true;
      else if (operator === 'BI') {
        this.found.forbidden.add(
          'pictures inside of the content (inline images), or content that cannot be read',
        );
        return;
      } else if (operator === 'Do')
        this.#object(entry(entry(resources, 'XObject'), name), resources, state.matrix, depth, name);
    }
  }

  /** What a page places. */
  place(object: PDFObject, matrix: Matrix): void {
    this.#object(object, undefined, matrix, 0);
  }

  #named(name: string, resources: PDFObject | undefined): PressSpace {
    const named = entry(entry(resources, 'ColorSpace'), name);
    if (named) return pressSpace(named, resources);
    return name === 'DeviceGray'
      ? GRAY
      : name === 'DeviceCMYK'
        ? CMYK
        : { ...GRAY, kind: name === 'Pattern' ? 'pattern' : 'other', name };
  }

  #pattern(pattern: PDFObject, resources: PDFObject | undefined, matrix: Matrix, depth: number): void {
    if (asNumber(entry(pattern, 'PatternType')) === 2) this.#shading(entry(pattern, 'Shading'), resources);
    else this.#stream(pattern, resources, matrix, depth);
  }

  #shading(shading: PDFObject | undefined, resources: PDFObject | undefined, name = ''): void {
    this.#space(pressSpace(entry(shading, 'ColorSpace'), resources));
    this.found.unmeasured.add(`the shading${called(name)}`);
  }

  /** A stream of content with resources of its own. */
  #stream(stream: PDFObject, resources: PDFObject | undefined, matrix: Matrix, depth: number): void {
    const own = members(entry(stream, 'Matrix')).map(part => asNumber(part) ?? 0);
    const placed = own.length === 6 ? product(own as unknown as Matrix, matrix) : matrix;
    const content = decoded(stream);
    if (content) this.walk(content, entry(stream, 'Resources') ?? resources, placed, depth + 1);
  }

  #object(
    object: PDFObject | undefined,
    resources: PDFObject | undefined,
    matrix: Matrix,
    depth: number,
    name = '',
  ): void {
    if (!(object instanceof PDFRawStream)) return;
    if (entry(object, 'OC')) this.found.layers = true;
    const type = asName(entry(object, 'Subtype'));
    if (type === 'Image') {
      const image = placedImage(object, matrix, resources);
      if (image.space) this.#space(image.space);
      if (image.ink === null)
        this.found.unmeasured.add(
          `the${image.jpeg ? ' JPEG' : ''} picture${called(name)} of ${image.columns} x ${image.rows} pixels`,
        );
      this.found.ink = Math.max(this.found.ink, image.ink ?? 0);
      this.found.transparent ||= image.transparent;
      for (const what of image.forbidden) this.found.forbidden.add(what);
      this.found.images.push(image);
      return;
    }
    if (type !== 'Form' || asName(entry(object, 'Subtype2')) === 'PS') {
      this.found.forbidden.add('PostScript');
      return;
    }
    for (const [key, what] of [
      ['Ref', 'parts of other files (reference XObjects)'],
      ['OPI', 'pictures that are put in later (OPI)'],
    ] as const)
      if (entry(object, key)) this.found.forbidden.add(what);
    this.group(entry(object, 'Group'), resources);
    this.#stream(object, resources, matrix, depth);
  }

  /** A transparency group (ISO 32000-1 11.6.6) blends in a color space of its own. */
  group(group: PDFObject | undefined, resources: PDFObject | undefined): void {
    if (!group) return;
    this.found.transparent = true;
    const blending = entry(group, 'CS');
    if (blending) this.#space(pressSpace(blending, resources));
  }

  #font(font: PDFObject | undefined, name: string, resources: PDFObject | undefined, depth: number): void {
    if (asName(entry(font, 'Subtype')) === 'Type3') {
      for (const [, glyph] of entries(entry(font, 'CharProcs')))
        this.#stream(glyph, entry(font, 'Resources') ?? resources, IDENTITY, depth);
      return;
    }
    const descendant = members(entry(font, 'DescendantFonts'))[0] ?? font;
    const descriptor = entry(descendant, 'FontDescriptor');
    const embedded = ['FontFile', 'FontFile2', 'FontFile3'].some(key => entry(descriptor, key) !== undefined);
    const called = asName(entry(font, 'BaseFont')) ?? name;
    this.found.fonts.set(called, embedded && (this.found.fonts.get(called) ?? true));
  }

  #graphicsState(
    given: PDFObject | undefined,
    resources: PDFObject | undefined,
    matrix: Matrix,
    depth: number,
  ): void {
    for (const key of ['TR', 'TR2']) {
      const name = entry(given, key);
      if (name && !['Default', 'Identity'].includes(asName(name) ?? ''))
        this.found.forbidden.add('a transfer function');
    }
    if (entry(given, 'HTP') || entry(given, 'HTO')) this.found.forbidden.add('a halftone of its own');
    const mask = entry(given, 'SMask');
    const blend = members(entry(given, 'BM')).map(asName);
    const faint = ['ca', 'CA'].some(key => {
      const part = entry(given, key);
      return part instanceof PDFNumber && part.asNumber() < 1;
    });
    if (faint || blend.some(mode => mode !== 'Normal' && mode !== 'Compatible'))
      this.found.transparent = true;
    if (!mask || asName(mask) === 'None') return;
    this.found.transparent = true;
    this.#object(entry(mask, 'G'), resources, matrix, depth);
  }
}

const GRAY: PressSpace = { kind: 'gray', name: 'DeviceGray', inks: [], profiled: false, indexed: false };
const CMYK: PressSpace = { ...GRAY, kind: 'cmyk', name: 'DeviceCMYK' };

/**
 * Follows the content of a page of artwork, or of a part of a page, into everything that it uses.
 * @param matrix places it on the label, in points
 */
export function artContent(
  content: Uint8Array,
  resources: PDFObject | undefined,
  matrix: Matrix = IDENTITY,
  group?: PDFObject,
): ArtContent {
  const walker = new Walker();
  walker.group(group, resources);
  walker.walk(content, resources, matrix, 0);
  return walker.found;
}

/** As `artContent`, of an object that a page places: a form or an image. */
export function placedContent(object: PDFObject, matrix: Matrix): ArtContent {
  const walker = new Walker();
  walker.place(object, matrix);
  return walker.found;
}
