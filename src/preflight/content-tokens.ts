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

const WHITE = new Set([0, 9, 10, 12, 13, 32]);
const DELIMITERS = new Set([...'()<>[]{}/%'].map(character => character.charCodeAt(0)));
const code = (character: string): number => character.charCodeAt(0);
const ESCAPES: Readonly<Record<string, number>> = { n: 10, r: 13, t: 9, b: 8, f: 12 };

class Scanner {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  #peek(): number {
    return this.#bytes[this.#at] ?? -1;
  }

  #skipBlank(): void {
    for (;;) {
      if (WHITE.has(this.#peek())) this.#at += 1;
      else if (this.#peek() === code('%')) {
        while (this.#peek() >= 0 && this.#peek() !== 10 && this.#peek() !== 13) this.#at += 1;
      } else return;
    }
  }

  #word(): string {
    const start = this.#at;
    while (this.#peek() >= 0 && !WHITE.has(this.#peek()) && !DELIMITERS.has(this.#peek())) this.#at += 1;
    return String.fromCharCode(...this.#bytes.subarray(start, this.#at));
  }

  #literal(): Operand {
    const bytes: number[] = [];
    let depth = 1;
    this.#at += 1;
    while (this.#peek() >= 0) {
      const byte = this.#peek();
      this.#at += 1;
      if (byte === code('\\')) {
        const octal = /^[0-7]{1,3}/u.exec(
          String.fromCharCode(...this.#bytes.subarray(this.#at, this.#at + 3)),
        )?.[0];
        if (octal) {
          bytes.push(Number.parseInt(octal, 8) & 255);
          this.#at += octal.length;
        } else {
          const next = this.#peek();
          bytes.push(ESCAPES[String.fromCharCode(next)] ?? next);
          this.#at += 1;
        }
        continue;
      }
      if (byte === code('(')) depth += 1;
      if (byte === code(')')) depth -= 1;
      if (depth === 0) break;
      bytes.push(byte);
    }
    return { kind: 'string', bytes };
  }

  #hex(): Operand {
    const start = this.#at + 1;
    while (this.#peek() >= 0 && this.#peek() !== code('>')) this.#at += 1;
    const digits = String.fromCharCode(...this.#bytes.subarray(start, this.#at)).replace(/\s/gu, '');
    this.#at += 1;
    const pairs = (digits.length % 2 === 0 ? digits : `${digits}0`).match(/../gu) ?? [];
    return { kind: 'string', bytes: pairs.map(pair => Number.parseInt(pair, 16)) };
  }

  #until(close: string): Operand[] {
    const items: Operand[] = [];
    for (;;) {
      this.#skipBlank();
      if (this.#peek() < 0) throw new SyntaxError(`content ends before ${close}`);
      if (this.#peek() === code(close)) return items;
      const item = this.next();
      if (typeof item === 'string') throw new SyntaxError(`operator ${item} before ${close}`);
      if (item) items.push(item);
    }
  }

  #dict(): Operand {
    this.#at += 2;
    const items = this.#until('>');
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
    const byte = this.#peek();
    if (byte < 0) return undefined;
    if (byte === code('/')) {
      this.#at += 1;
      const value = this.#word().replace(/#([0-9A-Fa-f]{2})/gu, (_, hex: string) =>
        String.fromCharCode(Number.parseInt(hex, 16)),
      );
      return { kind: 'name', value };
    }
    if (byte === code('(')) return this.#literal();
    if (byte === code('[')) {
      this.#at += 1;
      const items = this.#until(']');
      this.#at += 1;
      return { kind: 'array', items };
    }
    if (byte === code('<')) return this.#bytes[this.#at + 1] === code('<') ? this.#dict() : this.#hex();
    const word = this.#word();
    if (word === '') throw new SyntaxError(`stray ${String.fromCharCode(byte)} in content`);
    return /^[-+]?(?:\d+\.?\d*|\.\d+)$/u.test(word) ? { kind: 'number', value: Number(word) } : word;
  }
}

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
