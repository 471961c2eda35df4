import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { CompleteRecord, ProductRecord } from './product-record.ts';

/**
 * The record as a label or data sheet needs it: with its maker (29 CFR 1910.1200(f)(1)(vi), App. C, C.1.1;
 * App. D, section 1(d)) and its recommended use (App. D, section 1(c)).
 * @returns an error for each fact that is missing.
 */
export function completeRecord(record: ProductRecord): Outcome<CompleteRecord> {
  const { maker, use } = record;
  if (maker && use) return succeed({ ...record, maker, use });
  const missing = (key: string, what: string, hint: string) => ({
    code: 'fact-missing',
    severity: 'error' as const,
    message: `the record gives no ${what}, which a label and a data sheet must print`,
    hint,
    at: { file: record.file },
    path: key,
    cite: '29 CFR 1910.1200 App. C, C.1.1; App. D, section 1',
  });
  return fail(
    ...(maker ? [] : [missing('maker', 'maker', 'add `maker: maker.yaml`')]),
    ...(use ? [] : [missing('use', 'recommended use', 'add `use: …`')]),
  );
}
