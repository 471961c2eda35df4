import { readNumber } from '../quantity/number.ts';
import { misreads, reads } from '../quantity/reading.ts';
import { type Diagnostic, fail, type Outcome, succeed } from '../report/diagnostic.ts';
import { findingsOf } from './_issues.ts';
import { leaf, line, list, mapping, millimetres, recordKind } from './_leaf.ts';
import * as z from './_zod.ts';
import type { RecordEnv } from './files.ts';
import { distance } from './print-schema.ts';
import { readSource } from './source.ts';
import { parseYaml } from './yaml.ts';

/** A sheet of labels for an office printer; lengths in millimetres. */
export interface LabelSheet {
  readonly page: { readonly width: number; readonly height: number };
  /** From the upper left corner of the page to the first label. */
  readonly margin: { readonly left: number; readonly top: number };
  readonly rows: number;
  readonly columns: number;
  /** From an edge of one label to the same edge of the next; null where labels stand side by side. */
  readonly pitch: { readonly across: number | null; readonly down: number | null };
  /** First place that is still free, counted from 1 along the rows. */
  readonly start: number;
  /** Labels of each lot, or labels; null fills the page. */
  readonly copies: number | null;
  readonly lots: readonly string[];
}

const count = (most: number, example: string, description: string) =>
  leaf(
    text => {
      const number = readNumber(text);
      if (!number.ok) return number;
      const { value } = number.value;
      return Number.isInteger(value) && value >= 1 && value <= most
        ? reads(value)
        : misreads(`\`${text}\` is not a count`, `write a whole number from 1 to ${most}`);
    },
    'a whole number',
    example,
    description,
  );

const schema = mapping(
  {
    labelwright: recordKind('label-sheet/1'),
    page: mapping(
      {
        width: millimetres('8.5 in', 'Width of the page'),
        height: millimetres('11 in', 'Height of the page'),
      },
      'The page',
    ),
    margin: mapping(
      {
        left: distance('4 mm', 'From the left edge of the page to the first label'),
        top: distance('12.7 mm', 'From the upper edge of the page to the first label'),
      },
      'Where the first label is',
    ),
    rows: count(100, '2', 'Labels below each other'),
    columns: count(100, '2', 'Labels side by side'),
    pitch: z.optional(
      mapping(
        {
          across: z.optional(millimetres('104 mm', 'From the left edge of a label to that of the next')),
          down: z.optional(millimetres('84 mm', 'From the upper edge of a label to that of the next')),
        },
        'Distance of labels; their size where it is left out',
      ),
    ),
    start: z.optional(count(10_000, '1', 'First free place, counted along the rows')),
    copies: z.optional(count(10_000, '4', 'Labels of each lot; without lots and copies the page is filled')),
    lots: z.optional(
      list(line('K2611-01', 'A lot', 40), '[K2611-01, K2611-02]', 'Lots, printed into the window'),
    ),
  },
  'A sheet of labels',
);

/** Reads the description of a sheet of labels; every problem of the file at once. */
export function loadLabelSheet(path: string, env: RecordEnv): Outcome<LabelSheet> {
  const source = readSource(path, env);
  if (!source.ok) return source;
  const parsed = parseYaml(source.value);
  if (!parsed.ok) return parsed;
  const { value, places, warnings } = parsed.value;
  const checked = schema.safeParse(value);
  if (!checked.success) return fail(...warnings, ...findingsOf(checked.error.issues, value, places));
  const { page, margin, rows, columns, pitch, start = 1, copies = null, lots = [] } = checked.data;
  const problems: Diagnostic[] = [];
  if (start > rows * columns)
    problems.push(
      places.finding(
        ['start'],
        'sheet-start',
        `the sheet has ${rows * columns} places, and the first is to be number ${start}`,
        `write a number from 1 to ${rows * columns}`,
      ),
    );
  if (problems.length > 0) return fail(...problems);
  const { across = null, down = null } = pitch ?? {};
  return succeed({ page, margin, rows, columns, pitch: { across, down }, start, copies, lots }, warnings);
}
