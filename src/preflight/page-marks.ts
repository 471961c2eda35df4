import { PDFBool, type PDFObject } from 'pdf-lib';
import { asName, asNumber, entry, members, type PageObject } from './_objects.ts';
import { type Operand, type Operation, operationsOf } from './content-tokens.ts';

/** A colour as last set: family of its space, name of its spot ink if any, components. */
export interface Colour {
  readonly space: string;
  readonly ink?: string;
  readonly components: readonly number[];
}

interface GraphicsState {
  fill: Colour;
  stroke: Colour;
  fillOverprint: boolean;
  strokeOverprint: boolean;
  overprintMode: number;
  font: string;
}

/** Something painted on a page, with the state at that moment. */
export interface PaintedMark extends Readonly<GraphicsState> {
  readonly operator: string;
  readonly paints: readonly ('fill' | 'stroke' | 'text')[];
  readonly codes: readonly number[];
  /** Marked content round it, outermost first. */
  readonly inside: readonly MarkedContent[];
}

export interface MarkedContent {
  readonly tag: string;
  readonly mcid?: number;
  /** For `/OC`: the dictionary of the layer. */
  readonly layer?: PDFObject;
}

export interface PageMarks {
  readonly page: PageObject;
  readonly operators: readonly Operation[];
  readonly painted: readonly PaintedMark[];
  readonly sequences: readonly {
    readonly content: MarkedContent;
    readonly inside: readonly MarkedContent[];
  }[];
  /** Sequences left open or closed without being open. */
  readonly unbalanced: boolean;
}

const PAINTS: Readonly<Record<string, readonly ('fill' | 'stroke' | 'text')[]>> = {
  f: ['fill'],
  F: ['fill'],
  'f*': ['fill'],
  B: ['fill', 'stroke'],
  'B*': ['fill', 'stroke'],
  b: ['fill', 'stroke'],
  'b*': ['fill', 'stroke'],
  S: ['stroke'],
  s: ['stroke'],
  Tj: ['text'],
  TJ: ['text'],
  "'": ['text'],
  '"': ['text'],
  Do: ['fill'],
  sh: ['fill'],
  EI: ['fill'],
};

/** Whether an operator paints. */
export const isPainting = (operator: string): boolean => operator in PAINTS;

const DEVICE: Readonly<Record<string, string>> = { g: 'DeviceGray', rg: 'DeviceRGB', k: 'DeviceCMYK' };

const numbers = (operands: readonly Operand[]): number[] =>
  operands.flatMap(operand => (operand.kind === 'number' ? [operand.value] : []));
const nameOf = (operand: Operand | undefined): string => (operand?.kind === 'name' ? operand.value : '');

const addBytes = (operands: readonly Operand[], into: number[]): number[] => {
  for (const operand of operands) {
    if (operand.kind === 'string') for (const byte of operand.bytes) into.push(byte);
    else if (operand.kind === 'array') addBytes(operand.items, into);
  }
  return into;
};

/** Two-byte codes of a text operand (Identity-H). */
const codesOf = (operands: readonly Operand[]): number[] => {
  const bytes = addBytes(operands, []);
  const codes: number[] = [];
  for (let at = 0; at + 1 < bytes.length; at += 2) codes.push(bytes[at]! * 256 + bytes[at + 1]!);
  return codes;
};

const BLACK: Colour = { space: 'DeviceGray', components: [0] };

class Interpreter {
  readonly #page: PageObject;
  #state: GraphicsState = {
    fill: BLACK,
    stroke: BLACK,
    fillOverprint: false,
    strokeOverprint: false,
    overprintMode: 0,
    font: '',
  };
  readonly #saved: GraphicsState[] = [];
  readonly #inside: MarkedContent[] = [];
  readonly painted: PaintedMark[] = [];
  readonly sequences: { content: MarkedContent; inside: readonly MarkedContent[] }[] = [];
  unbalanced = false;

  constructor(page: PageObject) {
    this.#page = page;
  }

  #resource(category: string, name: string): PDFObject | undefined {
    return entry(entry(this.#page.resources, category), name);
  }

  #space(name: string): Colour {
    const found = this.#resource('ColorSpace', name);
    if (!found) return { space: name, components: [] };
    const [family, ink] = members(found).map(asName);
    return { space: family ?? name, ...(ink !== undefined && { ink }), components: [] };
  }

  #graphicsState(name: string): void {
    const dict = this.#resource('ExtGState', name);
    const flag = (key: string) => {
      const value = entry(dict, key);
      return value instanceof PDFBool ? value.asBoolean() : undefined;
    };
    const [stroke, fill] = [flag('OP'), flag('op') ?? flag('OP')];
    if (stroke !== undefined) this.#state.strokeOverprint = stroke;
    if (fill !== undefined) this.#state.fillOverprint = fill;
    this.#state.overprintMode = asNumber(entry(dict, 'OPM')) ?? this.#state.overprintMode;
  }

  #begin(tag: string, properties: Operand | undefined): void {
    const named = properties?.kind === 'name' ? this.#resource('Properties', properties.value) : undefined;
    const inline = properties?.kind === 'dict' ? properties.entries.get('MCID') : undefined;
    const mcid = inline?.kind === 'number' ? inline.value : asNumber(entry(named, 'MCID'));
    const content: MarkedContent = {
      tag,
      ...(mcid !== undefined && { mcid }),
      ...(tag === 'OC' && named && { layer: named }),
    };
    this.sequences.push({ content, inside: [...this.#inside] });
    this.#inside.push(content);
  }

  run({ operator, operands }: Operation): void {
    const state = this.#state;
    const lower = operator.toLowerCase();
    const side = operator === lower ? 'fill' : 'stroke';
    const device = DEVICE[lower];
    if (device) state[side] = { space: device, components: numbers(operands) };
    else if (lower === 'cs') state[side] = this.#space(nameOf(operands[0]));
    else if (lower === 'sc' || lower === 'scn')
      state[side] = { ...state[side], components: numbers(operands) };
    else if (operator === 'gs') this.#graphicsState(nameOf(operands[0]));
    else if (operator === 'Tf') state.font = nameOf(operands[0]);
    else if (operator === 'q') this.#saved.push({ ...state });
    else if (operator === 'Q') this.#state = this.#saved.pop() ?? state;
    else if (operator === 'BDC') this.#begin(nameOf(operands[0]), operands[1]);
    else if (operator === 'BMC') this.#begin(nameOf(operands[0]), undefined);
    else if (operator === 'EMC') this.unbalanced ||= this.#inside.pop() === undefined;
    const paints = PAINTS[operator];
    if (!paints) return;
    this.painted.push({
      ...this.#state,
      operator,
      paints,
      codes: paints.includes('text') ? codesOf(operands) : [],
      inside: [...this.#inside],
    });
  }

  end(): void {
    this.unbalanced ||= this.#inside.length > 0;
  }
}

/** Runs the content of a page and lists what it paints. @throws SyntaxError for malformed content */
export const marksOf = (page: PageObject): PageMarks => {
  const operators = operationsOf(page.content);
  const interpreter = new Interpreter(page);
  for (const operation of operators) interpreter.run(operation);
  interpreter.end();
  const { painted, sequences, unbalanced } = interpreter;
  return { page, operators, painted, sequences, unbalanced };
};
