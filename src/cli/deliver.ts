import { basename, dirname, join } from 'node:path';
import { inputsOf } from '../draft/inputs-of.ts';
import type { Product } from '../draft/open-product.ts';
import { nodeEnvironment } from '../environment/node.ts';
import type { Diagnostic, Severity } from '../report/diagnostic.ts';
import { renderJson } from '../report/render.ts';
import { type Delivered, deliver } from '../store/deliver.ts';
import type { OutputFile } from '../store/delivery.ts';
import type { OutputFact } from '../store/facts.ts';
import { markOutOfDate, packetsBelow } from '../store/mark-out-of-date.ts';
import { OutputError } from '../store/output-error.ts';
import { putOnce } from '../store/put-once.ts';
import { outputWords } from '../words/en/outputs.ts';
import { reviewForm } from '../words/en/review-form.ts';
import { exit, type Io } from './io.ts';

/** The folder of all output folders that the user does not name; see `outputFolder`. */
const OUTPUTS = 'out';

/** What a command has to write. */
export interface Made {
  readonly folder: string;
  /** YYYY-MM-DD */
  readonly asOf: string;
  readonly files: readonly OutputFile[];
  readonly whole?: boolean;
  readonly missing?: readonly { readonly name: string; readonly reason: string }[];
  readonly replace?: boolean;
}

/**
 * Writes the documents of a product into its folder.
 * @returns what happened, as findings.
 * @throws OutputError where the folder cannot be written
 */
export async function store(
  product: Product,
  { folder, asOf, files, whole = false, missing = [], replace = false }: Made,
): Promise<Delivered & { readonly findings: readonly Diagnostic[]; readonly status: number }> {
  const { name, code } = product.record;
  const inputs = inputsOf(product, asOf);
  let delivered: Delivered;
  try {
    delivered = await deliver(
      { folder, product: { name, code }, inputs, asOf, files, whole, missing, replace },
      nodeEnvironment,
    );
  } catch (error) {
    // Where another run writes, that one says what stands there.
    if (error instanceof OutputError && error.code !== 'ELOCKED')
      await mark(folder, product.record.file, `the last run failed: ${error.message}`);
    throw error;
  }
  const { refused, told } = delivered;
  const findings = [
    ...refused.map(fact => finding(fact, folder, 'error')),
    ...told.map(fact => finding(fact, folder, 'note')),
  ];
  return { ...delivered, findings, status: statusOf(refused) };
}

/** A folder of another record is a wrong call; a file of a person is a requirement that is not met. */
const statusOf = (refused: readonly OutputFact[]): number => {
  if (refused.length === 0) return exit.done;
  return refused.some(({ id }) => id === 'other-record') ? exit.badInput : exit.notMet;
};

/** A fact about an output folder as a finding. */
export const finding = (fact: OutputFact, folder: string, severity: Severity): Diagnostic => ({
  code: fact.id,
  severity,
  ...outputWords(fact),
  at: { file: folder },
});

/** Prints where files were written, as text or as JSON with what was found and more. */
export const printWritten = (
  written: readonly string[],
  findings: readonly Diagnostic[],
  json: boolean,
  io: Io,
  more: Readonly<Record<string, unknown>> = {},
) =>
  io.out(
    json
      ? `${JSON.stringify({ schema: 'labelwright/files/1', files: written, findings: renderJson(findings), ...more }, null, 2)}\n`
      : `${written.join('\n')}\n`,
  );

/**
 * Marks the packets that a refused run leaves behind: in the folder that was named, or in any folder below `out`.
 * @param now fingerprint of the inputs of that run, where it got so far.
 * @returns findings where a packet could not be marked.
 */
export async function leaveBehind(
  record: string,
  named: string | null,
  reason: string,
  now: string | null = null,
): Promise<readonly Diagnostic[]> {
  const folders = named === null ? packetsBelow(OUTPUTS, record, nodeEnvironment) : [named];
  const found = await Promise.all(
    folders.map(folder => mark(folder, record, `the last run was refused: ${reason}`, now)),
  );
  return found.flat();
}

/**
 * Marks packets made from a record under an earlier code, which stand in folders of their own.
 * @param folder of the packet that is current.
 */
export async function leaveOtherCodes(record: string, folder: string): Promise<readonly Diagnostic[]> {
  const { files } = nodeEnvironment;
  const others = packetsBelow(OUTPUTS, record, nodeEnvironment).filter(
    other => files.realPath(other) !== files.realPath(folder),
  );
  const found = await Promise.all(
    others.map(other => mark(other, record, `a newer packet of this record is in ${folder}`)),
  );
  return found.flat();
}

async function mark(
  folder: string,
  record: string,
  reason: string,
  now: string | null = null,
): Promise<readonly Diagnostic[]> {
  try {
    await markOutOfDate(folder, record, reason, nodeEnvironment, now);
    return [];
  } catch (error) {
    return [notWritten(error, 'the packet left behind could not be marked as out of date', folder)];
  }
}

/**
 * Writes the form for the review beside the record, once.
 * @returns a finding where it was written, or could not be.
 */
export function putReviewForm({ record }: Product): readonly Diagnostic[] {
  const { file, name, code } = record;
  const path = join(dirname(file), `${basename(file).replace(/\.(ya?ml|json)$/i, '')}.review.yaml`);
  try {
    if (!putOnce(path, reviewForm({ name, code }, basename(file)), nodeEnvironment)) return [];
    const message = 'a form for the review was written; it is yours to fill in';
    return [{ code: 'review-form', severity: 'note', message, at: { file: path } }];
  } catch (error) {
    return [notWritten(error, 'the form for the review could not be written', path)];
  }
}

function notWritten(error: unknown, what: string, path: string): Diagnostic {
  if (!(error instanceof OutputError)) throw error;
  return {
    code: 'not-written',
    severity: 'warning',
    message: `${what}: ${error.message}`,
    at: { file: path },
  };
}
