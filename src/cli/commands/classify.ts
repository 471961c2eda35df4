import { askedJson } from '../../draft/asked-rows.ts';
import { classificationJson } from '../../draft/classification-json.ts';
import { classifyProduct } from '../../draft/classified-product.ts';
import { openProduct } from '../../draft/open-product.ts';
import { openReference, type Reference } from '../../draft/open-reference.ts';
import { supplierQuestions } from '../../draft/supplier-questions.ts';
import { useSolutions } from '../../draft/use-solutions.ts';
import { workSheetText } from '../../draft/work-sheet.ts';
import type { Dilution } from '../../record/record-blocks.ts';
import { type BasisId, basisIds, usual } from '../../reference/basis.ts';
import { renderJson } from '../../report/render.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments, UsageError } from '../arguments.ts';
import { briefJson, briefText } from '../brief.ts';
import { classifyLines } from '../classify-lines.ts';
import type { Command } from '../command.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, basis, json, records } from '../options.ts';
import { findingsJson, report } from '../report.ts';
import { askedDilution, solutionJson, solutionText } from '../use-solution.ts';

/** The command as data. */
export const command: Command = {
  name: 'classify',
  does: 'classifies the mixture: every class with rule, paragraph and arithmetic',
  place: 30,
  about: [
    'With --json one record gives one document, several give a list in their order; a record that cannot be used stands in the list with its findings.',
    'With --lines each line of standard input is a record in JSON, each line of standard output its result; a line that cannot be used gives {"error": …} and the stream goes on.',
  ],
  argument: { ...records, count: 'any' },
  options: {
    basis: basis(basisIds),
    lines: { kind: 'flag', does: 'reads one JSON record a line from standard input, in place of RECORD' },
    dilution: {
      kind: 'text',
      value: 'RATIO',
      does: 'classifies a use solution too: parts of the product to parts of water, 1:16',
    },
    brief: { kind: 'flag', does: 'leaves the reasons out' },
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    { call: 'classify product.yaml', does: 'the work sheet: what the mixture is, and why' },
    { call: 'classify product.yaml --basis eu-clp --json', does: 'the same under CLP, for a script' },
    { call: 'classify --lines --brief < records.jsonl', does: 'a stream of records, codes alone' },
  ],
  run,
};

/** Classifies records, with reasons for every class. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const reference = await openReference((parsed.text('basis') ?? usual) as BasisId, date);
  if (!reference.ok) {
    report(reference.diagnostics, io);
    return exit.badInput;
  }
  const { positional } = parsed;
  const brief = parsed.flag('brief');
  const asked = askedDilution(parsed.text('dilution'));
  if (parsed.flag('lines')) {
    if (positional.length > 0)
      throw new UsageError('--lines reads records from standard input; give no file');
    return classifyLines(reference.value, brief, io);
  }
  if (positional.length === 0) throw new UsageError('no record given', command);
  return parsed.flag('json')
    ? asDocuments(positional, reference.value, { brief, asked }, io)
    : asTexts(positional, reference.value, { brief, asked }, io);
}

interface Asked {
  readonly brief: boolean;
  readonly asked: readonly Dilution[];
}

async function asTexts(paths: readonly string[], reference: Reference, { brief, asked }: Asked, io: Io) {
  let status: number = exit.done;
  for (const path of paths) {
    const opened = openProduct(path, io.files, reference.basis);
    report(opened.diagnostics, io);
    if (!opened.ok) {
      status = exit.badInput;
      continue;
    }
    const { record, formula, classification, elements } = classifyProduct(opened.value, reference);
    const { solutions, findings } = useSolutions(opened.value, reference, asked);
    const sheet = { record, formula, classification, elements, solutions, words: en };
    report(findings, io);
    const lines = brief ? solutions.map(solutionText) : [];
    await io.out(
      `${[brief ? briefText(record, classification, elements) : workSheetText(sheet), ...lines].join('\n')}\n`,
    );
  }
  return status;
}

async function asDocuments(paths: readonly string[], reference: Reference, { brief, asked }: Asked, io: Io) {
  let status: number = exit.done;
  const documents = paths.map(path => {
    const opened = openProduct(path, io.files, reference.basis);
    report(opened.diagnostics, io);
    if (!opened.ok) {
      status = exit.badInput;
      return paths.length === 1 ? findingsJson(opened.diagnostics) : findingsJson(opened.diagnostics, path);
    }
    const { record, formula, classification, elements } = classifyProduct(opened.value, reference);
    const ask = askedJson(supplierQuestions(classification, formula), classification, en);
    const document = classificationJson(record, classification, elements, en);
    const { solutions, findings: open } = useSolutions(opened.value, reference, asked);
    report(open, io);
    const diagnostics = [...opened.diagnostics, ...open];
    const findings = diagnostics.length > 0 ? { findings: renderJson(diagnostics) } : {};
    const inUse =
      solutions.length > 0 ? { useSolutions: solutions.map(found => solutionJson(found, brief)) } : {};
    return { ...(brief ? briefJson(document) : { ...document, ask }), ...inUse, ...findings };
  });
  await io.out(`${JSON.stringify(paths.length === 1 ? documents[0] : documents, null, 2)}\n`);
  return status;
}
