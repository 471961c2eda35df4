import { type Resolved, resolve } from '../../classify/resolve.ts';
import type { Product } from '../../draft/open-product.ts';
import { harmonisedTable, openReference } from '../../draft/open-reference.ts';
import { show } from '../../quantity/print.ts';
import { synonyms } from '../../reference/harmonised/synonyms.ts';
import { type NameQuestion, nameQuestion } from '../../reference/names/name-question.ts';
import { alike, gatherNames, type SubstanceNames } from '../../reference/names/substance-names.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { renderJson } from '../../report/render.ts';
import { en } from '../../words/en/index.ts';
import { nameQuestionText, tableName } from '../../words/en/name-questions.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { open } from '../open.ts';
import { allow, asOf, json, out, records } from '../options.ts';
import { examineOutputs } from '../outputs.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'check',
  does: 'reads and validates records, expands the formula to constituents that sum to 100 %, reports unknowns',
  place: 20,
  about: [
    'Writes nothing. All that is wrong is said at once, with file, line, column and what would be right.',
  ],
  argument: records,
  options: {
    outputs: {
      kind: 'flag',
      does: 'says whether the files made from the record belong together and to the record as it is now',
    },
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    { call: 'check product.yaml', does: 'what the record makes of the formula, or what is wrong with it' },
  ],
  run,
};

/** Reads, validates and expands records and reports unknowns; writes nothing. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const reference = await openReference('us-hcs', parsed.text('as-of') ?? io.today);
  if (!reference.ok) {
    report(reference.diagnostics, io);
    return exit.badInput;
  }
  let status: number = exit.done;
  const documents: unknown[] = [];
  for (const path of parsed.positional) {
    const product = open(path, io);
    if (!product) {
      status = exit.badInput;
      continue;
    }
    const resolved = product.formula.constituents.map((constituent, i) =>
      resolve(constituent, i, reference.value.lookup, product.record.form),
    );
    const questions = questionsOf(product);
    const folder = outputFolder(product.record.code, parsed.text('out'));
    const against = parsed.flag('outputs') ? examineOutputs(product, folder) : null;
    if (against && against.length > 0) status = Math.max(status, exit.notMet);
    report(against ?? [], io);
    if (parsed.flag('json'))
      documents.push({
        ...asJson(product, resolved, questions),
        ...(against && outputsJson(folder, against)),
      });
    else io.out(asText(product, resolved, questions) + (against ? outputsText(folder, against) : ''));
  }
  if (parsed.flag('json') && documents.length > 0)
    io.out(`${JSON.stringify({ schema: 'labelwright/check/1', products: documents }, null, 2)}\n`);
  return status;
}

const unknownOf = ({ data }: Resolved): string =>
  data.noData ? 'no data at all' : [...data.unknown].join(', ');

let names: SubstanceNames | null = null;

/** What to ask of the names of the constituents; null where there is nothing to ask. */
function questionsOf({ formula }: Product): readonly (NameQuestion | null)[] {
  names ??= gatherNames(harmonisedTable());
  const known = names;
  return formula.constituents.map(({ name, cas, water, undisclosed, tradeSecret }) =>
    water || undisclosed || tradeSecret ? null : nameQuestion(known, name, cas),
  );
}

/** How the table calls a constituent, where the record does otherwise; without the description in brackets. */
function calledOtherwise(name: string, { entry }: Resolved): string {
  if (!entry) return '';
  const [own = entry.name] = entry.name.split(/;\s+\[/);
  return synonyms(own).some(each => alike(each, name)) ? '' : `  [${tableName(own, entry.index)}]`;
}

function asText(
  product: Product,
  resolved: readonly Resolved[],
  questions: readonly (NameQuestion | null)[],
): string {
  const { record, formula } = product;
  const rows = formula.constituents.map(({ name, cas, low, high, via }, i) => {
    const percent = low.value === high.value ? show(high.value) : `${show(low.value)} to ${show(high.value)}`;
    const unknown = unknownOf(resolved[i]!);
    const from = via.length > 0 ? `  comes with ${via.join(', ')}` : '';
    return `  ${percent.padStart(18)} %  ${name}${cas ? ` (${cas})` : ''}${calledOtherwise(name, resolved[i]!)}${from}${unknown ? `  [unknown: ${unknown}]` : ''}`;
  });
  const unknown = resolved.filter(each => unknownOf(each) !== '').length;
  const basis = record.form === 'gas' ? 'by volume' : 'by weight';
  return [
    `${record.name} (${record.code}): ${formula.constituents.length} constituents, 100 % ${basis}`,
    ...rows,
    unknown === 0
      ? '  every constituent has data'
      : `  ${unknown} of ${resolved.length} constituents have unknown endpoints`,
    ...questions.flatMap((question, i) =>
      question ? [`  question: ${nameQuestionText(formula.constituents[i]!.name, question)}`] : [],
    ),
    '',
  ].join('\n');
}

const outputsText = (folder: string, against: readonly Diagnostic[]): string =>
  against.length === 0
    ? `  ${folder}: the files belong together and to the record as it is now\n`
    : `  ${folder}: not a packet of the record as it is now\n`;

const outputsJson = (folder: string, against: readonly Diagnostic[]) => ({
  outputs: { folder, current: against.length === 0, findings: renderJson(against) },
});

const entryJson = ({ entry }: Resolved) => (entry ? { entry: { index: entry.index, name: entry.name } } : {});

const asJson = (
  { record, formula }: Product,
  resolved: readonly Resolved[],
  questions: readonly (NameQuestion | null)[],
) => ({
  product: { name: record.name, code: record.code },
  constituents: formula.constituents.map(({ name, cas, low, high, via }, i) => ({
    name,
    cas,
    percent: high.value,
    ...(low.value === high.value ? {} : { percentRange: [low.value, high.value] }),
    via,
    source: en.source(resolved[i]!.data.source),
    noData: resolved[i]!.data.noData,
    unknown: [...resolved[i]!.data.unknown],
    ...entryJson(resolved[i]!),
    ...(questions[i] && {
      question: { ...questions[i], text: nameQuestionText(name, questions[i]) },
    }),
  })),
});
