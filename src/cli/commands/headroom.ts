import { copyComment } from '../../document/copy-meta.ts';
import { copyMark } from '../../draft/inputs-of.ts';
import type { Product } from '../../draft/open-product.ts';
import { harmonisedTable, openReference } from '../../draft/open-reference.ts';
import { findConstituent } from '../../headroom/find-constituent.ts';
import { headroom } from '../../headroom/headroom.ts';
import { headroomJson } from '../../headroom/headroom-json.ts';
import { headroomText } from '../../headroom/headroom-text.ts';
import { labelHeadBy } from '../../headroom/label-head.ts';
import { stripChart } from '../../headroom/strip-chart.ts';
import type { Others } from '../../headroom/variation.ts';
import { type BasisId, basisIds } from '../../reference/basis.ts';
import { loadLabelData } from '../../reference/label-data/load-label-data.ts';
import { renderText } from '../../report/render.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { store } from '../deliver.ts';
import { outputFolder, report } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { open } from '../open.ts';

const usage: CommandUsage = {
  usage: `headroom RECORD --of CAS-OR-NAME [--basis ${basisIds.join('|')}] [--others water|scaled] [--replace] [--out DIR] [--json] [--as-of YYYY-MM-DD]`,
  options: {
    of: 'text',
    basis: basisIds,
    others: ['water', 'scaled'],
    replace: 'flag',
    out: 'text',
    json: 'flag',
    'as-of': 'date',
  },
  positional: [1, 1],
};

/** The percents of one constituent at which a hazard, the signal word or a pictogram changes; returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const written = parsed.text('of');
  if (written === null) {
    io.err(`--of is missing: name the constituent\nusage: labelwright ${usage.usage}\n`);
    return exit.badInput;
  }
  const asOf = parsed.text('as-of') ?? io.today;
  const id = (parsed.text('basis') ?? 'us-hcs') as BasisId;
  const reference = await openReference(id, asOf);
  if (!reference.ok) {
    io.err(renderText(reference.diagnostics));
    return exit.badInput;
  }
  const product = open(parsed.positional[0]!, io, reference.value.basis);
  if (!product) return exit.badInput;
  const { record, formula } = product;
  const found = findConstituent(formula, written);
  if (!('index' in found)) {
    io.err(unknownConstituent(product, written, found.near));
    return exit.badInput;
  }
  const choice = (reading: string) => record.choices.find(each => each.reading === reading)?.take ?? null;
  const labelOf = labelHeadBy(await loadLabelData(id), { form: record.form, choice });
  const entriesOf = (cas: string) => harmonisedTable().candidates(cas, asOf);
  const others = (parsed.text('others') ?? defaultOthers(product, found.index)) as Others;
  const result = headroom({ record, formula, ...reference.value, entriesOf, labelOf }, found.index, others);
  if (!result.ok) {
    io.err(renderText(result.diagnostics));
    return exit.badInput;
  }
  const { of } = result.value;
  const mark = copyMark({ ...product, reference: reference.value }, 'review');
  const stored = await store(product, {
    folder: outputFolder(record.code, parsed.text('out')),
    asOf,
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
  if (parsed.flag('json')) io.out(`${JSON.stringify(headroomJson(result.value, record), null, 2)}\n`);
  else io.out(headroomText(result.value));
  if (stored.status === exit.done) io.err(`${stored.written.join('\n')}\n`);
  return stored.status;
}

/** Water where there is some to give way, else all others in proportion. */
const defaultOthers = ({ formula }: Product, index: number): Others =>
  formula.constituents.some(({ water }, i) => water && i !== index) ? 'water' : 'scaled';

function unknownConstituent({ formula }: Product, written: string, near: readonly string[]): string {
  const names = formula.constituents.map(({ name, cas }) => (cas ? `${name} (${cas})` : name));
  const hint = near.length > 0 ? `; did you mean ${near.join(' or ')}?` : '';
  return `no constituent \`${written}\`${hint}\nthe formula holds: ${names.join(', ')}\n`;
}

const fileName = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
