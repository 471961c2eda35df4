import { checkChoices } from '../classify/check-choices.ts';
import type { Formula } from '../formula/constituent.ts';
import { expandFormula } from '../formula/expand.ts';
import type { RecordEnv } from '../record/files.ts';
import { loadRecord, parseRecordJson, parseRecordValue } from '../record/load.ts';
import type { ProductRecord } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';
import { fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import { evidenceFindings } from './evidence-findings.ts';

/** A valid record with its formula expanded to constituents. */
export interface Product {
  readonly record: ProductRecord;
  readonly formula: Formula;
}

/**
 * Reads a record file and expands its formula; every problem of a stage is reported at once.
 * @param basis where given, evidence that it does not allow is an error too.
 */
export const openProduct = (path: string, files: RecordEnv, basis?: Basis): Outcome<Product> =>
  expand(loadRecord(path, files), basis);

/** As `openProduct`, from a value parsed from JSON. */
export const productOf = (value: unknown, files: RecordEnv, basis?: Basis): Outcome<Product> =>
  expand(parseRecordValue(value, files), basis);

/** As `openProduct`, from a text that is JSON; paths in it start at the current folder. */
export const productOfJson = (text: string, files: RecordEnv, basis?: Basis): Outcome<Product> =>
  expand(parseRecordJson(text, 'record', files), basis);

function expand(loaded: Outcome<ProductRecord>, basis?: Basis): Outcome<Product> {
  if (!loaded.ok) return loaded;
  const record = loaded.value;
  const formula = expandFormula(record);
  const findings = [
    ...loaded.diagnostics,
    ...checkChoices(record.choices),
    ...(basis ? evidenceFindings(record, basis) : []),
    ...formula.diagnostics,
  ];
  if (!formula.ok || hasErrors(findings)) return fail(...findings);
  return succeed({ record, formula: formula.value }, findings);
}
