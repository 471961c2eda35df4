import { classificationJson } from '../draft/classification-json.ts';
import { classifyProduct } from '../draft/classified-product.ts';
import { productOfJson } from '../draft/open-product.ts';
import type { Reference } from '../draft/open-reference.ts';
import type { RecordEnv } from '../record/files.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { en } from '../words/en/index.ts';
import { briefJson } from './brief.ts';
import { exit, type Io } from './io.ts';
import { LONGEST_LINE } from './read-lines.ts';

/**
 * One JSON record a line in, one JSON result a line out, in order; an error line for a record that cannot be used. A
 * defect of labelwright costs its line and not those after it. Waits for the reader of the results, so that memory stays
 * what one record takes. Returns the exit status.
 */
export async function classifyLines(reference: Reference, brief: boolean, io: Io): Promise<number> {
  let status: number = exit.done;
  for await (const line of io.lines()) {
    if (line.trim() === '') continue;
    let result: object;
    try {
      result = resultOf(line, reference, brief, io.files);
      if ('error' in result) status = Math.max(status, exit.badInput);
    } catch (error) {
      const { message, stack } = error as Error;
      io.err(`a defect in labelwright: ${stack ?? message}\n`);
      result = { error: { message: `a defect in labelwright: ${message}`, path: '' } };
      status = exit.defect;
    }
    const behind = io.out(`${JSON.stringify(result)}\n`);
    if (behind) await behind;
  }
  return status;
}

function resultOf(line: string, reference: Reference, brief: boolean, files: RecordEnv): object {
  if (line.length > LONGEST_LINE)
    return { error: { message: `the line has more than ${LONGEST_LINE} characters`, path: '' } };
  try {
    JSON.parse(line.replace(/^\ufeff/, ''));
  } catch (error) {
    return { error: { message: `not JSON: ${(error as Error).message}`, path: '' } };
  }
  const product = productOfJson(line, files, reference.basis);
  if (!product.ok) return lineError(product.diagnostics);
  const { record, classification, elements } = classifyProduct(product.value, reference);
  const document = classificationJson(record, classification, elements, en);
  return brief ? briefJson(document) : document;
}

function lineError(diagnostics: readonly Diagnostic[]) {
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  const [first] = errors;
  const words = errors.map(
    ({ message, hint, path }) => `${path ? `${path}: ` : ''}${message}${hint ? ` (${hint})` : ''}`,
  );
  return { error: { message: words.join('; '), path: first?.path ?? '' } };
}
