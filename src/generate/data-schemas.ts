import * as z from 'zod/mini';
import { allocation } from './data/allocation.ts';
import { consumer } from './data/consumer.ts';
import { duties } from './data/duties.ts';
import { labels } from './data/labels.ts';
import { languages } from './data/languages.ts';
import { numberedSheets } from './data/numbered-sheets.ts';
import { packages } from './data/packages.ts';
import { reactivity } from './data/reactivity.ts';
import { readingsOfAppendixC } from './data/readings-of-appendix-c.ts';
import { regulatory } from './data/regulatory.ts';
import { sheets } from './data/sheets.ts';
import { sources } from './data/sources.ts';
import { statements } from './data/statements.ts';
import { substancesAndClasses } from './data/substances-and-classes.ts';
import { supply } from './data/supply.ts';
import { tables } from './data/tables.ts';
import { transport } from './data/transport.ts';
import { thresholdsSchema } from './thresholds-schema.ts';

const schemas: Readonly<Record<string, z.core.$ZodType>> = {
  '<basis>/thresholds.json': thresholdsSchema,
  ...allocation,
  ...consumer,
  ...duties,
  ...labels,
  ...languages,
  ...reactivity,
  ...readingsOfAppendixC,
  ...regulatory,
  ...sheets,
  ...numberedSheets,
  ...sources,
  ...statements,
  ...substancesAndClasses,
  ...supply,
  ...tables,
  ...packages,
  ...transport,
};

const patternOf = (path: string): RegExp =>
  new RegExp(
    `^${path.replaceAll('.', '\\.').replace('<basis>', '(us-hcs|eu-clp|un-ghs)').replaceAll('*', '[^/]+')}$`,
  );

const patterns = Object.entries(schemas).map(([path, schema]) => [patternOf(path), schema] as const);

/**
 * The faults of a file of the law data, each with its place; none where it holds what its schema says and nothing else.
 * A file without a schema is a fault.
 * @param path below `hazard-data/`
 */
export function dataFaults(path: string, content: unknown): readonly string[] {
  const schema = patterns.find(([pattern]) => pattern.test(path))?.[1];
  if (!schema) return [`${path} has no schema in src/generate/data`];
  const { success, error } = z.safeParse(schema, content);
  if (success) return [];
  return error.issues.map(issue => `${path} ${issue.path.join('.')}: ${issue.message}`);
}

/**
 * The faults of a table: rows that have not as many cells as its head.
 * @param text tab-separated; lines of remarks begin with #
 */
export function tableFaults(path: string, text: string): readonly string[] {
  const rows = text.split('\n').filter(line => line !== '' && !line.startsWith('#'));
  const cells = rows[0]?.split('\t').length ?? 0;
  if (cells < 2) return [`${path} has no head`];
  return rows.flatMap((row, at) =>
    row.split('\t').length === cells
      ? []
      : [`${path} row ${at}: ${row.split('\t').length} cells, not ${cells}`],
  );
}
