import { classificationJson } from '../../draft/classification-json.ts';
import { classifyProduct } from '../../draft/classified-product.ts';
import { productOfJson } from '../../draft/open-product.ts';
import { openReference, type Reference } from '../../draft/open-reference.ts';
import { workSheetText } from '../../draft/work-sheet.ts';
import { type BasisId, basisIds } from '../../reference/basis.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { renderText } from '../../report/render.ts';
import { type CommandUsage, parseArguments, UsageError } from '../arguments.ts';
import { nodeFiles } from '../files.ts';
import { exit, type Io } from '../io.ts';
import { open } from '../open.ts';

const usage: CommandUsage = {
  usage: `classify RECORD… [--basis ${basisIds.join('|')}] [--lines] [--json] [--as-of YYYY-MM-DD]`,
  options: { basis: basisIds, lines: 'flag', json: 'flag', 'as-of': 'date' },
  positional: [0, Number.POSITIVE_INFINITY],
};

/** Classifies records, with reasons for every class. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const asOf = parsed.text('as-of') ?? io.today;
  const reference = await openReference((parsed.text('basis') ?? 'us-hcs') as BasisId, asOf);
  if (!reference.ok) {
    io.err(renderText(reference.diagnostics));
    return exit.badInput;
  }
  const { positional } = parsed;
  if (parsed.flag('lines')) {
    if (positional.length > 0)
      throw new UsageError('--lines reads records from standard input; give no file');
    return classifyLines(reference.value, io);
  }
  if (positional.length === 0) throw new UsageError(`no record given\nusage: labelwright ${usage.usage}`);

  let status: number = exit.done;
  const documents: unknown[] = [];
  for (const path of positional) {
    const product = open(path, io, reference.value.basis);
    if (!product) {
      status = exit.badInput;
      continue;
    }
    const { record, classification, elements } = classifyProduct(product, reference.value);
    if (parsed.flag('json')) documents.push(classificationJson(record, classification, elements));
    else io.out(`${workSheetText(record, classification, elements)}\n`);
  }
  if (parsed.flag('json') && documents.length > 0)
    io.out(`${JSON.stringify(documents.length === 1 ? documents[0] : documents, null, 2)}\n`);
  return status;
}

/**
 * One JSON record a line in, one JSON result a line out, in order; an error line for a record that cannot be used. A
 * defect of ours costs its line and not those after it.
 */
async function classifyLines(reference: Reference, io: Io): Promise<number> {
  let status: number = exit.done;
  for await (const line of io.lines()) {
    if (line.trim() === '') continue;
    let result: object;
    try {
      result = resultOf(line, reference, io);
      if ('error' in result) status = Math.max(status, exit.badInput);
    } catch (error) {
      const { message, stack } = error as Error;
      io.err(`a defect in labelwright: ${stack ?? message}\n`);
      result = { error: { message: `a defect in labelwright: ${message}`, path: '' } };
      status = exit.defect;
    }
    io.out(`${JSON.stringify(result)}\n`);
  }
  return status;
}

function resultOf(line: string, reference: Reference, io: Io) {
  try {
    JSON.parse(line.replace(/^\ufeff/, ''));
  } catch (error) {
    return { error: { message: `not JSON: ${(error as Error).message}`, path: '' } };
  }
  const product = productOfJson(line, io.files ?? nodeFiles, reference.basis);
  if (!product.ok) return lineError(product.diagnostics);
  const { record, classification, elements } = classifyProduct(product.value, reference);
  return classificationJson(record, classification, elements);
}

function lineError(diagnostics: readonly Diagnostic[]) {
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  const [first] = errors;
  const words = errors.map(
    ({ message, hint, path }) => `${path ? `${path}: ` : ''}${message}${hint ? ` (${hint})` : ''}`,
  );
  return { error: { message: words.join('; '), path: first?.path ?? '' } };
}
