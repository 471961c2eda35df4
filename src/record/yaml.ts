import {
  Composer,
  type CST,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  Lexer,
  type Node,
  type Pair,
  Parser,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import { type Diagnostic, fail, type Outcome, succeed } from '../report/diagnostic.ts';
import { cutByComma, cutByComment, type Swallowed } from './_swallowed.ts';
import { type Path, Places, pathText } from './places.ts';
import type { Source } from './source.ts';
import { yamlFinding } from './yaml-errors.ts';

/** A file as parsed, before it is validated. */
export interface Parsed {
  /** Mappings, lists and scalars; numbers are text as written, so that 4.10 and 0614141000418 keep their digits. */
  readonly value: unknown;
  /** The same with numbers as numbers. */
  readonly raw: unknown;
  readonly places: Places;
  /** Places where the text may say less than was meant. */
  readonly warnings: readonly Diagnostic[];
}

/** No record has a use for more levels than this. */
export const MAX_DEPTH = 64;

/**
 * Parses YAML 1.2 (and so JSON). Aliases, several documents and repeated keys are findings.
 * @param kind of record that is expected, for the advice on an empty file.
 */
export function parseYaml(source: Source, kind = 'product'): Outcome<Parsed> {
  const tokens = tokensOf(source.text);
  if (!tokens) return fail(tooDeep(source.file));
  const places = new Places(source.file, source.text);
  const [document, second] = new Composer({
    version: '1.2',
    schema: 'core',
    strict: true,
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: 'silent',
  }).compose(tokens, true, source.text.length);
  const broken = document?.errors[0] ?? document?.warnings[0];
  if (broken) return fail(yamlFinding(broken, source.text, places));
  if (second)
    return fail(
      places.findingAt(
        second.range[0],
        'not-yaml',
        'a second record begins here (`---`)',
        'keep one record a file',
      ),
    );
  const contents = document?.contents;
  if (!contents || (isScalar(contents) && contents.value === null))
    return fail({
      code: 'empty-file',
      severity: 'error',
      message: 'the file is empty',
      hint: `begin with \`labelwright: ${kind}/1\``,
      at: { file: source.file, line: 1, column: 1 },
    });
  const walk = new Walk(places, source.text);
  const { value, raw } = walk.node(contents, []);
  const { findings, warnings } = walk;
  return findings.length > 0 ? fail(...findings) : succeed({ value, raw, places, warnings });
}

/**
 * The syntax of a text, or null where it is nested too deep. Composing recurses, and a stack that overflows
 * inside a regular expression ends the process; so depth is measured before.
 */
function tokensOf(text: string): CST.Token[] | null {
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  for (const lexeme of new Lexer().lex(text)) {
    tokens.push(...parser.next(lexeme));
    // A level has up to three entries on the parser's stack: collection, item, scalar.
    if (parser.stack.length > 3 * MAX_DEPTH) return null;
  }
  tokens.push(...parser.end());
  return tokens;
}

export const tooDeep = (file: string): Diagnostic => ({
  code: 'nested-too-deep',
  severity: 'error',
  message: `the record is nested more than ${MAX_DEPTH} levels deep`,
  hint: 'is this the right file?',
  at: { file },
});

interface Walked {
  readonly value: unknown;
  readonly raw: unknown;
}

class Walk {
  readonly findings: Diagnostic[] = [];
  readonly warnings: Diagnostic[] = [];
  readonly #places: Places;
  readonly #text: string;

  constructor(places: Places, text: string) {
    this.#places = places;
    this.#text = text;
  }

  #warn(swallowed: Swallowed | null, path: Path): void {
    if (!swallowed) return;
    const { offset, message, hint } = swallowed;
    const found = this.#places.findingAt(offset, 'text-cut', message, hint);
    this.warnings.push({ ...found, severity: 'warning', path: pathText(path) });
  }

  node(node: Node | null, path: Path): Walked {
    if (path.length > MAX_DEPTH) {
      if (!this.findings.some(({ code }) => code === 'nested-too-deep'))
        this.findings.push(tooDeep(this.#places.file));
      return { value: null, raw: null };
    }
    if (isMap(node)) return this.#map(node, path);
    if (isSeq(node)) return this.#list(node, path);
    if (isAlias(node)) {
      const at = this.#places.findingAt(
        node.range?.[0] ?? 0,
        'yaml-alias',
        `\`*${node.source}\` repeats another part of the file by its YAML anchor, which records do not use`,
        'write the value out',
      );
      this.findings.push({ ...at, path: pathText(path) });
      return { value: null, raw: null };
    }
    if (isScalar(node)) {
      this.#warn(cutByComment(node, this.#text), path);
      return scalar(node);
    }
    return { value: null, raw: null };
  }

  #map(map: YAMLMap, path: Path): Walked {
    if (path.length === 0) this.#places.set(path, null, map.range?.[0] ?? 0);
    const value: Record<string, unknown> = {};
    const raw: Record<string, unknown> = {};
    const seen = new Map<string, number>();
    for (const { key, value: inner } of map.items as Pair<Node, Node | null>[]) {
      const offset = key?.range?.[0] ?? map.range?.[0] ?? 0;
      const name = isScalar(key) ? String(key.source ?? key.value) : null;
      if (name === null || name === '__proto__') {
        this.findings.push(
          this.#places.findingAt(
            offset,
            'bad-key',
            name ? `unknown key \`${name}\`` : 'a key must be a plain word',
          ),
        );
        continue;
      }
      const here = [...path, name];
      const first = seen.get(name);
      if (first !== undefined) {
        const { line } = this.#places.positionOf(first);
        this.findings.push({
          ...this.#places.findingAt(
            offset,
            'repeated-key',
            `\`${name}\` is given twice; the first is in line ${line}`,
            'keep one of the two',
          ),
          path: pathText(here),
        });
        continue;
      }
      seen.set(name, offset);
      this.#places.set(here, offset, inner?.range?.[0] ?? offset);
      const walked = this.node(inner, here);
      value[name] = walked.value;
      raw[name] = walked.raw;
    }
    return { value, raw };
  }

  #list(list: YAMLSeq, path: Path): Walked {
    const items = list.items.map((item, index) => {
      const here = [...path, index];
      const node = item as Node | null;
      this.#places.set(here, null, node?.range?.[0] ?? list.range?.[0] ?? 0);
      if (list.flow && index > 0) this.#warn(cutByComma(list.items[index - 1], node, path), here);
      return this.node(node, here);
    });
    return { value: items.map(({ value }) => value), raw: items.map(({ raw }) => raw) };
  }
}

function scalar({ value, source }: { value: unknown; source?: string }): Walked {
  if (typeof value !== 'number') return { value, raw: value };
  const text = source ?? String(value);
  // Digits that a number would lose (codes, GTINs, telephone numbers) stay text in the raw record too.
  const keepsDigits = /^-?(0|[1-9]\d{0,14})(\.\d{1,15})?$/.test(text);
  return { value: text, raw: keepsDigits ? value : text };
}
