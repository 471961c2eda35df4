import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { BasisId } from '../../src/reference/basis.ts';
import { classifyLines } from '../support/cases.ts';
import { failure, readEdgeCase } from './edge-notation.ts';

interface EdgeFile {
  readonly basis: BasisId;
  readonly source: string;
  readonly tables: readonly {
    readonly table: string;
    readonly form?: string;
    readonly cases: readonly string[];
  }[];
}

const folder = join(import.meta.dirname, '../cases/edges');

// Every limit of the law's tables just below, at and just above its figure. Figures and outcomes are the law's, in the
// paragraph named beside each table; the mixtures are ours.
for (const name of readdirSync(folder).filter(file => file.endsWith('.yaml'))) {
  const { basis, source, tables } = parse(readFileSync(join(folder, name), 'utf8')) as EdgeFile;
  describe(`${basis}: ${source}`, () => {
    for (const { table, form, cases } of tables)
      describe(table, () => {
        it.each(cases)('%s', async text => {
          const { formula, properties, expectations } = readEdgeCase(text);
          const result = await classifyLines(formula, basis, { form: form ?? 'liquid', properties });
          expect(
            expectations.map(expectation => failure(result, expectation)).filter(wrong => wrong !== null),
          ).toEqual([]);
        });
      });
  });
}
