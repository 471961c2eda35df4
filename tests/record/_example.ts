import { readFileSync } from 'node:fs';
import { memoryFiles, type RecordEnv } from '../../src/record/files.ts';
import { loadRecord } from '../../src/record/load.ts';
import type { ProductRecord } from '../../src/record/product-record.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';

const read = (name: string): string => readFileSync(`tests/fixtures/good/${name}`, 'utf8');

export const product: string = read('patio-cleaner.yaml');
export const files: Readonly<Record<string, string>> = {
  'cleaner.yaml': product,
  'maker.yaml': read('maker.yaml'),
  'drums/hypochlorite-12.yaml': read('drums/hypochlorite-12.yaml'),
};

/** The example with pieces of its text replaced; each piece must be there. */
export function changed(...changes: readonly (readonly [string, string])[]): string {
  let text = product;
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`not in the example: ${from}`);
    text = text.replace(from, () => to);
  }
  return text;
}

export const env = (more: Readonly<Record<string, string | Uint8Array>> = {}): RecordEnv =>
  memoryFiles({ ...files, ...more });

export const load = (
  text: string | Uint8Array,
  more: Readonly<Record<string, string | Uint8Array>> = {},
): Outcome<ProductRecord> => loadRecord('cleaner.yaml', env({ ...more, 'cleaner.yaml': text }));

/** `line:column code: message -> hint` of each finding. */
export const told = ({ diagnostics }: Outcome<unknown>): string[] =>
  diagnostics.map(
    ({ at, code, message, hint }) => `${at?.line}:${at?.column} ${code}: ${message} -> ${hint}`,
  );
