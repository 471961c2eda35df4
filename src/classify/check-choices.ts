import type { Choice } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { nearest } from '../report/nearest.ts';
import { type ReadingId, readingEntries, readings } from './readings.ts';

/** Errors on choices that name a reading or an option that does not exist. */
export function checkChoices(choices: readonly Choice[]): Diagnostic[] {
  return choices.flatMap(({ reading, take, at }, i): Diagnostic[] => {
    const wrong = (code: string, message: string, hint: string): Diagnostic[] => [
      { code, severity: 'error', message, hint, at, path: `choices[${i}]` },
    ];
    if (!Object.hasOwn(readings, reading)) {
      const near = nearest(reading, Object.keys(readings));
      const open = readingEntries.filter(([, { options }]) => options.length > 1);
      return wrong(
        'unknown-reading',
        `there is no reading \`${reading}\``,
        near
          ? `did you mean \`${near}\`?`
          : `readings that leave a choice: ${open.map(([id]) => id).join(', ')}`,
      );
    }
    const options: readonly string[] = readings[reading as ReadingId].options;
    if (options.includes(take)) return [];
    return wrong(
      'unknown-option',
      `reading \`${reading}\` cannot take \`${take}\``,
      `one of: ${options.join(', ')}`,
    );
  });
}
