import { copyComment } from '../../document/copy-meta.ts';
import { reasonWriter } from '../../draft/because-json.ts';
import { copyMark } from '../../draft/inputs-of.ts';
import type { Product } from '../../draft/open-product.ts';
import { harmonisedTable, openReference } from '../../draft/open-reference.ts';
import { expandFormula } from '../../formula/expand.ts';
import { weighOut } from '../../formula/weigh-out.ts';
import { findConstituent } from '../../headroom/find-constituent.ts';
import { type Breakpoint, headroom, headroomOfMaterial } from '../../headroom/headroom.ts';
import { headroomJson } from '../../headroom/headroom-json.ts';
import { headroomText } from '../../headroom/headroom-text.ts';
import { labelHeadBy } from '../../headroom/label-head.ts';
import { apart, linesOfMaterial, materialsOf } from '../../headroom/raw-material.ts';
import { stripChart } from '../../headroom/strip-chart.ts';
import type { Others } from '../../headroom/variation.ts';
import type { WholeMaterial } from '../../headroom/whole-material.ts';
import type { ProductRecord, RawMaterialLine } from '../../record/product-record.ts';
import { type BasisId, basisIds, usual } from '../../reference/basis.ts';
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
  does: 'tells how much of one constituent or raw material until a hazard or the label changes',
  place: 40,
  about: ['A chart of it goes to the folder of the product.'],
  argument: oneRecord,
  options: {
    of: {
      kind: 'text',
      value: 'CAS-OR-NAME',
      does: 'the constituent, or a raw material by its file or name, also one inside of another',
      required: true,
    },
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
    {
      call: 'headroom product.yaml --of drums/hypochlorite-12.yaml',
      does: 'pounds and gallons of a whole raw material per batch',
    },
  ],
  run,
};

/** The percents of one constituent or raw material at which a hazard, the signal word or a pictogram changes; returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const written = parsed.text('of')!;
  const date = parsed.text('as-of') ?? io.today;
  const id = (parsed.text('basis') ?? usual) as BasisId;
  const reference = await openReference(id, date);
  if (!reference.ok) {
    report(reference.diagnostics, io);
    return exit.badInput;
  }
  const product = open(parsed.positional[0]!, io, reference.value.basis);
  if (!product) return exit.badInput;
  const { record, formula } = product;
  const asked = subjectOf(product, written);
  if ('code' in asked) {
    report([asked], io);
    return exit.badInput;
  }
  const choice = (reading: string) => record.choices.find(each => each.reading === reading)?.take ?? null;
  const labelOf = labelHeadBy(await loadLabelData(id), { form: record.form, choice });
  const entriesOf = (cas: string) => harmonisedTable().candidates(cas, date);
  const others = (parsed.text('others') ?? (asked.waterBeside ? 'water' : 'scaled')) as Others;
  const input = { record, formula, ...reference.value, entriesOf, labelOf };
  const result =
    'material' in asked
      ? headroomOfMaterial(input, asked.material, others)
      : headroom(input, asked.index, others);
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

type Subject = { readonly waterBeside: boolean } & (
  | { readonly index: number }
  | { readonly material: WholeMaterial }
);

/** What is asked for: a raw material by its file, a constituent, or a raw material by its name. */
function subjectOf(product: Product, written: string): Subject | Diagnostic {
  const { record, formula } = product;
  const byFile = linesOfMaterial(record, written, 'file');
  if (byFile.length > 0) return materialSubject(record, byFile);
  const byName = linesOfMaterial(record, written, 'name');
  const found = findConstituent(formula, written);
  if ('index' in found && (byName.length === 0 || !formula.constituents[found.index]!.undisclosed))
    return {
      index: found.index,
      waterBeside: formula.constituents.some(({ water }, i) => water && i !== found.index),
    };
  if (byName.length > 0) return materialSubject(record, byName);
  return unknownConstituent(product, written, 'near' in found ? found.near : []);
}

function materialSubject(record: ProductRecord, lines: readonly RawMaterialLine[]): Subject | Diagnostic {
  const parts = apart(record, lines);
  if ('code' in parts) return parts;
  const [rest, alone] = [expandFormula(parts.rest), expandFormula(parts.alone)];
  if (!rest.ok) return rest.diagnostics[0]!;
  if (!alone.ok) return alone.diagnostics[0]!;
  const weighed = weighOut(record);
  const densities = new Set(lines.map(({ density }) => density?.value ?? null));
  return {
    waterBeside: rest.value.constituents.some(({ water }) => water),
    material: {
      name: lines[0]!.material.name,
      rest: rest.value,
      alone: alone.value,
      shop: {
        by: weighed ? 'weight' : 'volume',
        batchGrams: weighed && !weighed.assumed ? weighed.grams : null,
        density: densities.size === 1 ? lines[0]!.density : null,
      },
    },
  };
}

function unknownConstituent(
  { record, formula }: Product,
  written: string,
  nearConstituents: readonly string[],
): Diagnostic {
  const materials = materialsOf(record, written);
  const near = [...new Set([...nearConstituents, ...materials.near])];
  const names = formula.constituents.map(({ name, cas }) => (cas ? `${name} (${cas})` : name));
  return {
    code: 'unknown-constituent',
    severity: 'error',
    message: `no constituent or raw material \`${written}\`${near.length > 0 ? `; did you mean ${near.join(' or ')}?` : ''}`,
    hint: `the formula holds: ${names.join(', ')}${materials.names.length > 0 ? `; raw materials: ${materials.names.join(', ')}` : ''}`,
    at: { file: record.file },
  };
}

const fileName = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
