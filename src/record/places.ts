import type { Diagnostic, Position, Severity } from '../report/diagnostic.ts';

/** Keys and list indexes from the top of a record down to a value. */
export type Path = readonly (string | number)[];

/** `formula[2].percent` */
export function pathText(path: Path): string {
  let text = '';
  for (const key of path) text += typeof key === 'number' ? `[${key}]` : text === '' ? key : `.${key}`;
  return text;
}

interface Place {
  readonly key: number | null;
  readonly value: number;
}

/** Where in the text of a file its values stand. */
export class Places {
  readonly file: string;
  readonly #text: string | null;
  readonly #places = new Map<string, Place>();
  #lineStarts: number[] | null = null;

  /** @param text null for a record that never was text: findings then carry a path alone. */
  constructor(file: string, text: string | null) {
    this.file = file;
    this.#text = text;
  }

  /** Remembers the offsets of a key and of its value. */
  set(path: Path, key: number | null, value: number): void {
    this.#places.set(path.join('\0'), { key, value });
  }

  /** Position of an offset in the text. */
  positionOf(offset: number): Position {
    if (this.#text === null) return { file: this.file };
    const starts = this.#starts();
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { file: this.file, line: low + 1, column: offset - starts[low]! + 1 };
  }

  /** Position of a value, or of its key, or of the nearest mapping around it that exists. */
  at(path: Path, part: 'key' | 'value' = 'value'): Position {
    if (this.#text === null) return { file: this.file };
    for (let length = path.length; length >= 0; length--) {
      const place = this.#places.get(path.slice(0, length).join('\0'));
      if (!place) continue;
      const offset = length < path.length || part === 'key' ? (place.key ?? place.value) : place.value;
      return this.positionOf(offset);
    }
    return { file: this.file, line: 1, column: 1 };
  }

  /**
   * Where the words of a text value stand, in their order: runs of letters between blanks, each found behind the one
   * before; where one is written otherwise in the file (an escape), the place of the value.
   */
  words(path: Path, text: string): readonly Position[] {
    const place = this.#places.get(path.join('\0'));
    if (this.#text === null || !place) return [];
    let from = place.value;
    return [...text.matchAll(/\S+/g)].map(([word]) => {
      const found = this.#text!.indexOf(word, from);
      if (found < 0) return this.at(path);
      from = found + word.length;
      return this.positionOf(found);
    });
  }

  /** The line of the text that a position points to. */
  excerpt({ line }: Position): string | undefined {
    if (this.#text === null || line === undefined) return undefined;
    const starts = this.#starts();
    const from = starts[line - 1];
    if (from === undefined) return undefined;
    return this.#text.slice(from, starts[line] ?? this.#text.length).replace(/[\r\n]+$/, '');
  }

  /** A finding about a value of this file. */
  finding(
    path: Path,
    code: string,
    message: string,
    hint?: string,
    options: { part?: 'key' | 'value'; severity?: Severity } = {},
  ): Diagnostic {
    const at = this.at(path, options.part);
    return {
      code,
      severity: options.severity ?? 'error',
      message,
      hint,
      at,
      path: pathText(path) || undefined,
      excerpt: this.excerpt(at),
    };
  }

  /** A finding about a place in the text. */
  findingAt(offset: number, code: string, message: string, hint?: string): Diagnostic {
    const at = this.positionOf(offset);
    return { code, severity: 'error', message, hint, at, excerpt: this.excerpt(at) };
  }

  #starts(): number[] {
    if (this.#lineStarts) return this.#lineStarts;
    const starts = [0];
    const text = this.#text ?? '';
    for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) starts.push(i + 1);
    this.#lineStarts = starts;
    return starts;
  }
}

/** Findings by file in order of first appearance, then by place. */
export function inOrder(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const files = [...new Set(diagnostics.map(({ at }) => at?.file ?? ''))];
  const rank = ({ at }: Diagnostic) => files.indexOf(at?.file ?? '');
  return [...diagnostics].sort(
    (a, b) =>
      rank(a) - rank(b) || (a.at?.line ?? 0) - (b.at?.line ?? 0) || (a.at?.column ?? 0) - (b.at?.column ?? 0),
  );
}
