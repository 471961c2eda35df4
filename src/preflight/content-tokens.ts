/** An operand of a content stream (ISO 32000-1 7.8.2). */
export type Operand =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly value: string }
  | { readonly kind: 'string'; readonly bytes: readonly number[] }
  | { readonly kind: 'array'; readonly items: readonly Operand[] }
  | { readonly kind: 'dict'; readonly entries: ReadonlyMap<string, Operand> };

export interface Operation {
  readonly operator: string;
  readonly operands: readonly Operand[];
}

/** What a byte is to the scanner: white space, a delimiter, or part of a word. */
const [WHITE, DELIMITER] = [1, 2];
const KINDS = Uint8Array.from({ length: 256 }, (_, byte) => {
  if ([0, 9, 10, 12, 13, 32].includes(byte)) return WHITE;
  return '()<>[]{}/%'.includes(String.fromCharCode(byte)) ? DELIMITER : 0;
});
const NAME = code('/');
const COMMENT = code('%');
const STRING = code('(');
const STRING_END = code(')');
const ARRAY = code('[');
const ANGLE = code('<');
const ANGLE_END = code('>');
const ESCAPE = code('\\');
const ESCAPES: Readonly<Record<string, number>> = { n: 10, r: 13, t: 9, b: 8, f: 12 };
const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)$/;

function code(character: string): number {
  return character.charCodeAt(0);
}

class Scanner {
  /** One character a byte. */
  readonly #text: string;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  }

  /** The byte here; NaN at the end. */
  #peek(): number {
    return this.#text.charCodeAt(this.#at);
  }

  get #isEnd(): boolean {
    return this.#at >= this.#text.length;
  }

  #skipBlank(): void {
    for (; ; this.#at += 1) {
      const byte = this.#peek();
      if (byte === COMMENT) while (!this.#isEnd && this.#peek() !== 10 && this.#peek() !== 13) this.#at += 1;
      else if (KINDS[byte] !== WHITE) return;
    }
  }

  #word(): string {
    const start = this.#at;
    while (KINDS[this.#peek()] === 0) this.#at += 1;
    return this.#text.slice(start, this.#at);
  }

  #literal(): Operand {
    const bytes: number[] = [];
    let depth = 1;
    this.#at += 1;
    while (!this.#isEnd) {
      const byte = this.#peek();
      this.#at += 1;
      if (byte === ESCAPE) {
        const octal = /^[0-7]{1,3}/u.exec(this.#text.slice(this.#at, this.#at + 3))?.[0];
        if (octal) {
          bytes.push(Number.parseInt(octal, 8) & 255);
          this.#at += octal.length;
        } else {
          const next = this.#isEnd ? -1 : this.#peek();
          bytes.push(ESCAPES[String.fromCharCode(next)] ?? next);
          this.#at += 1;
        }
        continue;
      }
      if (byte === STRING) depth += 1;
      if (byte === STRING_END) depth -= 1;
      if (depth === 0) break;
      bytes.push(byte);
    }
    return { kind: 'string', bytes };
  }

  #hex(): Operand {
    const start = this.#at + 1;
    const end = this.#text.indexOf('>', start);
    this.#at = end < 0 ? this.#text.length : end;
    const digits = this.#text.slice(start, this.#at).replace(/\s/gu, '');
    this.#at += 1;
    const even = digits.length % 2 === 0 ? digits : `${digits}0`;
    const bytes: number[] = [];
    for (let at = 0; at < even.length; at += 2) bytes.push(hexByte(even, at));
    return { kind: 'string', bytes };
  }

  #until(close: number): Operand[] {
    const items: Operand[] = [];
    for (;;) {
      this.#skipBlank();
      if (this.#isEnd) throw new SyntaxError(`content ends before ${String.fromCharCode(close)}`);
      if (this.#peek() === close) return items;
      const item = this.next();
      if (typeof item === 'string')
        throw new SyntaxError(`operator ${item} before ${String.fromCharCode(close)}`);
      if (item) items.push(item);
    }
  }

  #dict(): Operand {
    this.#at += 2;
    const items = this.#until(ANGLE_END);
    this.#at += 2;
    const entries = new Map<string, Operand>();
    for (let index = 0; index + 1 < items.length; index += 2) {
      const key = items[index]!;
      if (key.kind === 'name') entries.set(key.value, items[index + 1]!);
    }
    return { kind: 'dict', entries };
  }

  /** Next operand, or operator as a string; undefined at the end. */
  next(): Operand | string | undefined {
    this.#skipBlank();
    if (this.#isEnd) return undefined;
    const byte = this.#peek();
    if (byte === NAME) {
      this.#at += 1;
      const word = this.#word();
      return { kind: 'name', value: word.includes('#') ? decodedName(word) : word };
    }
    if (byte === STRING) return this.#literal();
    if (byte === ARRAY) {
      this.#at += 1;
      const items = this.#until(code(']'));
      this.#at += 1;
      return { kind: 'array', items };
    }
    if (byte === ANGLE) return this.#text.charCodeAt(this.#at + 1) === ANGLE ? this.#dict() : this.#hex();
    const word = this.#word();
    if (word === '') throw new SyntaxError(`stray ${String.fromCharCode(byte)} in content`);
    return NUMBER.test(word) ? { kind: 'number', value: Number(word) } : word;
  }
}

const decodedName = (word: string): string =>
  word.replace(/#([0-9A-Fa-f]{2})/gu, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));

/** The value of a hexadecimal digit by its character; NaN where it is none. */
const DIGITS = Float64Array.from({ length: 256 }, (_, byte) =>
  Number.parseInt(String.fromCharCode(byte), 16),
);

const hexByte = (digits: string, at: number): number =>
  DIGITS[digits.charCodeAt(at)]! * 16 + DIGITS[digits.charCodeAt(at + 1)]!;

/** Splits a content stream into operations. @throws SyntaxError where it is malformed */
export const operationsOf = (bytes: Uint8Array): Operation[] => {
  const scanner = new Scanner(bytes);
  const operations: Operation[] = [];
  let operands: Operand[] = [];
  for (let token = scanner.next(); token !== undefined; token = scanner.next()) {
    if (typeof token !== 'string') {
      operands.push(token);
      continue;
    }
    operations.push({ operator: token, operands });
    operands = [];
  }
  return operations;
};
