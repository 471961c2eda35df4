import { checkChoices } from '../classify/check-choices.ts';
import type { Formula } from '../formula/constituent.ts';
import { expandFormula } from '../formula/expand.ts';
import { type Sources, sha256 } from '../provenance/inputs.ts';
import type { RecordEnv } from '../record/files.ts';
import { type LoadedRecord, loadRecord, parseRecordJson, parseRecordValue } from '../record/load.ts';
import type { ProductRecord } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import { remembered } from './_sources.ts';
import { artFilesOf, type ReadArtFiles } from './art-files.ts';
import { evidenceFindings } from './evidence-findings.ts';
import type { ArtFiles } from './label-art.ts';

/** A valid record with its formula expanded to constituents. */
export interface Product {
  readonly record: ProductRecord;
  readonly formula: Formula;
  /** The files that were read, with their hashes. */
  readonly sources: Sources;
  /** Artwork and logo by their paths, where the record names them and they can be read. */
  readonly art?: ArtFiles;
}

/**
 * Reads a record file and expands its formula; every problem of a stage is reported at once.
 * @param basis where given, evidence that it does not allow is an error too.
 */
export function openProduct(path: string, files: RecordEnv, basis?: Basis): Outcome<Product> {
  const read = remembered(files);
  const loaded = loadRecord(path, read.files);
  const art = loaded.ok ? artFilesOf(loaded.value, read.files) : null;
  return expand(loaded, read.sources(path), art, basis);
}

/** As `openProduct`, from a value parsed from JSON. */
export function productOf(value: unknown, files: RecordEnv, basis?: Basis): Outcome<Product> {
  const read = remembered(files);
  const loaded = parseRecordValue(value, read.files);
  const art = loaded.ok ? artFilesOf(loaded.value, read.files) : null;
  const { included } = read.sources('');
  // Hashed only where it is asked for: a stream of records is classified without.
  const record = {
    path: '',
    get sha256() {
      return sha256(JSON.stringify(value));
    },
  };
  return expand(loaded, { record, included }, art, basis);
}

/** As `openProduct`, from a text that is JSON; paths in it start at the current folder. */
export function productOfJson(text: string, files: RecordEnv, basis?: Basis): Outcome<Product> {
  const read = remembered(files);
  const loaded = parseRecordJson(text, 'record', read.files);
  const art = loaded.ok ? artFilesOf(loaded.value, read.files) : null;
  const { included } = read.sources('');
  // Hashed only where it is asked for: a stream of records is classified without.
  const record = {
    path: '',
    get sha256() {
      return sha256(text);
    },
  };
  return expand(loaded, { record, included }, art, basis);
}

function expand(
  loaded: LoadedRecord,
  sources: Sources,
  art: ReadArtFiles | null,
  basis?: Basis,
): Outcome<Product> {
  if (!loaded.ok) return loaded.rest ? fail(...loaded.diagnostics, ...furtherErrors(loaded.rest)) : loaded;
  const record = loaded.value;
  const formula = expandFormula(record);
  const findings = [
    ...loaded.diagnostics,
    ...(art?.findings ?? []),
    ...checkChoices(record.choices),
    ...(basis ? evidenceFindings(record, basis) : []),
    ...formula.diagnostics,
  ];
  if (!formula.ok || hasErrors(findings)) return fail(...findings);
  const files = art && art.files.size > 0 ? { art: art.files } : {};
  return succeed({ record, formula: formula.value, sources, ...files }, findings);
}

/** What the formula of a record has wrong in it beside what its reader found. */
const furtherErrors = (rest: ProductRecord): readonly Diagnostic[] =>
  [...checkChoices(rest.choices), ...expandFormula(rest).diagnostics].filter(
    ({ severity }) => severity === 'error',
  );
