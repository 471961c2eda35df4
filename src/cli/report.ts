import type { Diagnostic } from '../report/diagnostic.ts';
import { renderJson, renderText } from '../report/render.ts';
import type { Io } from './io.ts';

/** Says findings on standard error and keeps them for the JSON document of a failure. */
export function report(diagnostics: readonly Diagnostic[], io: Io): void {
  if (diagnostics.length === 0) return;
  io.err(renderText(diagnostics));
  io.found?.(diagnostics);
}

/**
 * What was found, each finding with its file.
 * @param file the record that could not be used, where there are several
 */
export const findingsJson = (diagnostics: readonly Diagnostic[], file?: string) => ({
  schema: 'labelwright/findings/1',
  ...(file === undefined ? {} : { file }),
  findings: renderJson(diagnostics),
});

/** The JSON document of a call that failed. */
export const failedJson = (diagnostics: readonly Diagnostic[]): string =>
  `${JSON.stringify(findingsJson(diagnostics), null, 2)}\n`;
