import { copyComment } from '../../document/copy-meta.ts';
import { reasonWriter } from '../../draft/because-json.ts';
import { copyMark } from '../../draft/inputs-of.ts';
import type { Product } from '../../draft/open-product.ts';
import { harmonisedTable, openReference } from '../../draft/open-reference.ts';
import { findConstituent } from '../../headroom/find-constituent.ts';
import { type Breakpoint, headroom } from '../../headroom/headroom.ts';
import { headroomJson } from '../../headroom/headroom-json.ts';
import { headroomText } from '../../headroom/headroom-text.ts';
import { labelHeadBy } from '../../headroom/label-head.ts';
import { stripChart } from '../../headroom/strip-chart.ts';
import type { Others } from '../../headroom/variation.ts';
import { type BasisId, basisIds } from '../../reference/basis.ts';
import { loadLabelData } from '../../reference/label-data/load-label-data.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { store } from '../deliver.ts';
import { outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { open } from '../open.ts';
import { allow, asOf, basis, json, record as oneRecord, out, replace } from '../options.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'headroom',
  does: 'tells how much of one constituent until a hazard or the label changes',
  place: 40,
  about: ['A chart of it goes to the folder of the product.'],
  argument: oneRecord,
  options: {
    of: { kind: 'text', value: 'CAS-OR-NAME', does: 'the constituent', required: true },
    basis: basis(basisIds),
    others: {
      kind: ['water', 'scaled'],
      does: 'what gives way: water, where there is some, or all others in proportion',
    },
    replace,
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    {
      call: 'headroom product.yaml --of 1310-73-2',
      does: 'room for more sodium hydroxide in place of water',
    },
  ],
  run,
};

/** The percents of one constituent at which a hazard, the signal word or a pictogram changes; returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const written = parsed.text('of')!;
  const date = parsed.text('as-of') ?? io.today;
  const id = (parsed.text('basis') ?? 'us-hcs') as BasisId;
  const reference = await openReference(id, date);
  if (!reference.ok) {
    report(reference.diagnostics, io);
    return exit.badInput;
  }
  const product = open(parsed.positional[0]!, io, reference.value.basis);
  if (!product) return exit.badInput;
  const { record, formula } = product;
  const found = findConstituent(formula, written);
  if (!('index' in found)) {
    report([unknownConstituent(product, written, found.near)], io);
    return exit.badInput;
  }
  const choice = (reading: string) => record.choices.find(each => each.reading === reading)?.take ?? null;
  const labelOf = labelHeadBy(await loadLabelData(id), { form: record.form, choice });
  const entriesOf = (cas: string) => harmonisedTable().candidates(cas, date);
  const others = (parsed.text('others') ?? defaultOthers(product, found.index)) as Others;
  const result = headroom({ record, formula, ...reference.value, entriesOf, labelOf }, found.index, others);
  if (!result.ok) {
    report(result.diagnostics, io);
    return exit.badInput;
  }
  const { of } = result.value;
  const mark = copyMark({ ...product, reference: reference.value }, 'review');
  const stored = await store(product, {
    folder: outputFolder(record.code, parsed.text('out')),
    asOf: date,
    files: [
      {
        name: `headroom-${fileName(of.cas ?? of.name)}.svg`,
        kind: 'review',
        bytes: `${stripChart(result.value, record.name).trimEnd()}\n${copyComment(mark)}\n`,
      },
    ],
    replace: parsed.flag('replace'),
  });
  report(stored.findings, io);
  if (parsed.flag('json')) {
    const writerOf = (breakpoint: Breakpoint) => reasonWriter(breakpoint, en).because;
    io.out(`${JSON.stringify(headroomJson(result.value, record, writerOf), null, 2)}\n`);
  } else io.out(headroomText(result.value, en));
  if (stored.status === exit.done) io.err(`${stored.written.join('\n')}\n`);
  return stored.status;
}

/** Water where there is some to give way, else all others in proportion. */
const defaultOthers = ({ formula }: Product, index: number): Others =>
  formula.constituents.some(({ water }, i) => water && i !== index) ? 'water' : 'scaled';

function unknownConstituent(
  { record, formula }: Product,
  written: string,
  near: readonly string[],
): Diagnostic {
  const names = formula.constituents.map(({ name, cas }) => (cas ? `${name} (${cas})` : name));
  return {
    code: 'unknown-constituent',
    severity: 'error',
    message: `no constituent \`${written}\`${near.length > 0 ? `; did you mean ${near.join(' or ')}?` : ''}`,
    hint: `the formula holds: ${names.join(', ')}`,
    at: { file: record.file },
  };
}

const fileName = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
