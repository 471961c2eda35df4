import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AllocatedGroup, AllocationFile } from '../reference/label-data/allocation.ts';
import { type EuDifferences, euAllocation } from './_allocation-eu.ts';
import { mergeRow } from './_allocation-merge.ts';
import { type Decisions, plainRow, type ReadingRow, type StatementFields } from './_allocation-readings.ts';
import { allocationReadme } from './_allocation-readme.ts';
import { type UnCorrections, unAllocation } from './_allocation-un.ts';
import { unStatements } from './_un-statements.ts';

/** Generated files of label data, by path inside hazard-data. */
export type AllocationFiles = Readonly<Record<string, string>>;

interface Reading {
  readonly rows: readonly ReadingRow[];
}

/**
 * Merges the two readings of 29 CFR 1910.1200 Appendix C, C.4, and compiles the allocation tables of the three bases.
 * @param hazardData the folder hazard-data
 * @returns the text of every generated file
 */
export function compileAllocations(hazardData: string): AllocationFiles {
  const read = <T>(path: string): T => JSON.parse(readFileSync(join(hazardData, path), 'utf8')) as T;
  const decisions = read<Decisions>('sources/us-hcs/precautions/decisions.json');
  const statements = read<{ precautionary: StatementFields }>('us-hcs/statements.json').precautionary;
  const plain = (path: string) => read<Reading>(path).rows.map(row => plainRow(row, decisions, statements));
  const first = plain('sources/us-hcs/precautions/first-reading.json');
  const second = plain('sources/us-hcs/precautions/second-reading.json');
  const us: AllocationFile = {
    instrument: decisions.instrument,
    cite: decisions.cite,
    checkedOn: decisions.decidedOn,
    conditions: decisions.conditions,
    aliases: decisions.aliases,
    rows: first.map(one => {
      const two = second.find(({ hazard }) => hazard === one.hazard);
      if (!two) throw new Error(`the second reading has no row ${one.hazard}`);
      return mergeRow(one, two, decisions);
    }),
  };
  const eu = euAllocation(
    second,
    read<EuDifferences>('sources/eu-clp/allocation-differences.json'),
    decisions,
  );
  const corrections = read<UnCorrections>('sources/un-ghs/allocation-corrections.json');
  const tsv = readFileSync(join(hazardData, 'sources/un-ghs/ghs-statements-rev11.tsv'), 'utf8');
  const texts = unStatements(
    corrections,
    read('us-hcs/statements.json'),
    read('eu-clp/statements.json'),
    tsv,
  );
  const groupOf = (code: string): AllocatedGroup => {
    const group = texts.precautionary[code]?.group;
    if (!group) throw new Error(`un-ghs/statements.json has no ${code}`);
    return group as AllocatedGroup;
  };
  const un = unAllocation(tsv, corrections, read('hazard-classes.json'), groupOf, us);
  const print = (value: unknown) => `${JSON.stringify(value, null, 1)}\n`;
  return {
    'us-hcs/allocation.json': print(us),
    'sources/us-hcs/precautions/README.md': allocationReadme(us),
    'eu-clp/allocation.json': print(eu),
    'un-ghs/allocation.json': print(un),
    'un-ghs/statements.json': print(texts),
  };
}

/** Writes the generated files of label data into the folder hazard-data. */
export function generateAllocations(hazardData: string): AllocationFiles {
  const files = compileAllocations(hazardData);
  for (const [path, text] of Object.entries(files)) writeFileSync(join(hazardData, path), text);
  return files;
}
