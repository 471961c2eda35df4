import { type Resolved, resolve } from '../../classify/resolve.ts';
import { labelQuestions } from '../../draft/label-questions.ts';
import type { Product } from '../../draft/open-product.ts';
import { openReference } from '../../draft/open-reference.ts';
import { show } from '../../quantity/print.ts';
import { renderJson, renderText } from '../../report/render.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exit, type Io } from '../io.ts';
import { open } from '../open.ts';
import { allow, asOf, json, records } from '../options.ts';
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
  options: { json, 'as-of': asOf, allow },
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
      resolve(constituent, i, reference.value.lookup),
    );
    const { open: questions, findings } = labelQuestions(product, reference.value, en);
    if (parsed.flag('json'))
      documents.push({ ...asJson(product, resolved), questions, findings: renderJson(findings) });
    else
      io.out(
        [
          asText(product, resolved),
          ...questions.map(each => `  asks: ${each}\n`),
          findings.length > 0 ? renderText(findings) : '',
        ].join(''),
      );
  }
  if (parsed.flag('json') && documents.length > 0)
    io.out(`${JSON.stringify({ schema: 'labelwright/check/1', products: documents }, null, 2)}\n`);
  return status;
}

const unknownOf = ({ data }: Resolved): string =>
  data.noData ? 'no data at all' : [...data.unknown].join(', ');

function asText({ record, formula }: Product, resolved: readonly Resolved[]): string {
  const rows = formula.constituents.map(({ name, cas, low, high, via }, i) => {
    const percent = low.value === high.value ? show(high.value) : `${show(low.value)} to ${show(high.value)}`;
    const unknown = unknownOf(resolved[i]!);
    const from = via.length > 0 ? `  comes with ${via.join(', ')}` : '';
    return `  ${percent.padStart(18)} %  ${name}${cas ? ` (${cas})` : ''}${from}${unknown ? `  [unknown: ${unknown}]` : ''}`;
  });
  const unknown = resolved.filter(each => unknownOf(each) !== '').length;
  const basis = record.form === 'gas' ? 'by volume' : 'by weight';
  return [
    `${record.name} (${record.code}): ${formula.constituents.length} constituents, 100 % ${basis}`,
    ...rows,
    unknown === 0
      ? '  every constituent has data'
      : `  ${unknown} of ${resolved.length} constituents have unknown endpoints`,
    '',
  ].join('\n');
}

const asJson = ({ record, formula }: Product, resolved: readonly Resolved[]) => ({
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
  })),
});
