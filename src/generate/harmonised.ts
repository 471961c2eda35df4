import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import {
  type HarmonisedCells,
  harmonisedColumns,
  joinCells,
  LIST_SEPARATOR,
} from '../reference/harmonised/columns.ts';
import { readHazards } from './_annex-vi-hazards.ts';
import { readLimits } from './_annex-vi-limits.ts';
import { membersOf } from './_annex-vi-members.ts';
import { type AnnexViRow, parts, type Unparsed } from './_annex-vi-row.ts';

/** What compiling annex-vi.csv gives. */
export interface CompiledHarmonised {
  /** Text of harmonised.tsv: the names of the columns, then a line for each CAS number, index number and date. */
  readonly tsv: string;
  readonly unparsed: readonly Unparsed[];
  readonly counts: {
    readonly sourceRows: number;
    readonly indexNumbers: number;
    readonly casNumbers: number;
    readonly withoutCas: number;
    readonly lines: number;
  };
}

/** Compiles the table of harmonised classifications to one line for each substance. */
export function compileHarmonised(csv: string): CompiledHarmonised {
  const rows = parse(csv, { columns: true }) as AnnexViRow[];
  const unparsed: Unparsed[] = [];
  const cells = rows.flatMap(row => compileRow(row, unparsed));
  const lines = [...new Set(cells.map(joinCells))].sort(compare);
  const keys = new Set(cells.filter(({ key, index }) => key !== index).map(({ key }) => key));
  return {
    tsv: `${[harmonisedColumns.join('\t'), ...lines].join('\n')}\n`,
    unparsed,
    counts: {
      sourceRows: rows.length,
      indexNumbers: new Set(rows.map(row => row.index_no)).size,
      casNumbers: keys.size,
      withoutCas: cells.filter(({ key, index }) => key === index).length,
      lines: lines.length,
    },
  };
}

function compileRow(row: AnnexViRow, unparsed: Unparsed[]): HarmonisedCells[] {
  const { hazards, flags } = readHazards(row, unparsed);
  const limits = readLimits(row, unparsed);
  const supplemental = parts(row.suppl_codes, ';');
  const notes = parts(row.notes, ';');
  const check = (column: string, texts: readonly string[], pattern: RegExp, message: string) => {
    for (const text of texts)
      if (!pattern.test(text)) unparsed.push({ index: row.index_no, column, text, message });
  };
  check('suppl_codes', supplemental, /^EUH\d{3}A?$/, 'no EUH code');
  check('notes', notes, /^([A-Z]|\d{1,2})$/, 'no note of Annex VI 1.1.3');
  check('applies_from', [row.applies_from], /^\d{4}-\d\d-\d\d$/, 'no date');
  check('celex', [row.celex], /^3\d{4}R\d{4}$/, 'no CELEX number of a regulation');
  return membersOf(row, unparsed).map(({ cas, ec, name }) => ({
    key: cas ?? row.index_no,
    index: row.index_no,
    ec: ec ?? '',
    name,
    hazards: hazards.join(LIST_SEPARATOR),
    limits: limits.limits.join(LIST_SEPARATOR),
    ate: limits.ate.join(LIST_SEPARATOR),
    'm-factors': limits.mFactors.join(LIST_SEPARATOR),
    supplemental: supplemental.join(LIST_SEPARATOR),
    'supplemental-limits': limits.supplementalLimits.join(LIST_SEPARATOR),
    notes: notes.join(LIST_SEPARATOR),
    flags: [...flags, ...limits.flags].join(LIST_SEPARATOR),
    act: row.celex,
    'applies-from': row.applies_from,
  }));
}

/**
 * Writes harmonised.tsv, harmonised.meta.json and unparsed.json from annex-vi.csv.
 * @param hazardData the folder hazard-data
 */
export function generateHarmonised(hazardData: string): CompiledHarmonised {
  const [sources, substances] = [join(hazardData, 'sources', 'substances'), join(hazardData, 'substances')];
  const compiled = compileHarmonised(readFileSync(join(sources, 'annex-vi.csv'), 'utf8'));
  const source = JSON.parse(readFileSync(join(sources, 'annex-vi.source.json'), 'utf8')) as object;
  const write = (name: string, value: unknown) =>
    writeFileSync(join(substances, name), `${JSON.stringify(value, null, 2)}\n`);
  writeFileSync(join(substances, 'harmonised.tsv'), compiled.tsv);
  write('harmonised.meta.json', { ...source, counts: compiled.counts });
  write('unparsed.json', compiled.unparsed);
  return compiled;
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
