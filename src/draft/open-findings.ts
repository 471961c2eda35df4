import type { WarningId } from '../classify/facts/warning.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { tellAll } from '../words/telling.ts';
import type { Words } from '../words/words.ts';
import type { ClassifiedProduct } from './classified-product.ts';

/** Warnings without which a label or a sheet would read as if nothing were open. */
const told: readonly WarningId[] = ['undecided-with-cause', 'stale-measurement'];

/** What a label or a sheet leaves open, for whoever makes it. */
export function openFindings(
  { record, classification }: Pick<ClassifiedProduct, 'record' | 'classification'>,
  words: Words,
): Diagnostic[] {
  const telling = tellAll(classification);
  return classification.warnings
    .filter(({ id }) => told.includes(id))
    .map(warning => ({
      code: warning.id,
      severity: 'warning',
      message: words.warning(warning, telling),
      cite: words.cites(warning.cites),
      at: { file: record.file },
    }));
}
