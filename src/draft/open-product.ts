import { checkChoices } from '../classify/check-choices.ts';
import type { Formula } from '../formula/constituent.ts';
import { expandFormula } from '../formula/expand.ts';
import type { RecordEnv } from '../record/files.ts';
import { loadRecord, parseRecordValue } from '../record/load.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';

/** A valid record with its formula expanded to constituents. */
export interface Product {
  readonly record: ProductRecord;
  readonly formula: Formula;
}

/** Reads a record file and expands its formula; every problem of a stage is reported at once. */
export const openProduct = (path: string, files: RecordEnv): Outcome<Product> =>
  expand(loadRecord(path, files));

/** As `openProduct`, from a value parsed from JSON. */
export const productOf = (value: unknown, files: RecordEnv): Outcome<Product> =>
  expand(parseRecordValue(value, files));

function expand(loaded: Outcome<ProductRecord>): Outcome<Product> {
  if (!loaded.ok) return loaded;
  const record = loaded.value;
  const formula = expandFormula(record);
  const findings = [...loaded.diagnostics, ...checkChoices(record.choices), ...formula.diagnostics];
  if (!formula.ok || hasErrors(findings)) return fail(...findings);
  return succeed({ record, formula: formula.value }, findings);
}
