import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { packagePath } from '../../environment/package-files.ts';
import { formulaOfTable, type TableFormula } from '../../record/from-table.ts';
import { linesOfTable, recordText } from '../../record/write-record.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { fileName, tableText } from '../init-from-table.ts';
import { exit, type Io } from '../io.ts';
import { type OutputFile, writeFiles } from '../write-files.ts';

/** The command as data. */
export const command: Command = {
  name: 'init',
  does: 'writes starter records with comments',
  place: 10,
  about: [
    'Overwrites nothing.',
    'A table has a header with names such as: ingredient, CAS, percent (or amount and unit), hazards, density. What was not read is said.',
    'A raw material of a name is a form: check refuses it until its composition or its hazards are in.',
  ],
  argument: {
    name: 'DIR',
    does: 'folder for the records; this one where it is left out',
    count: 'optional',
    completes: 'folder',
  },
  options: {
    'raw-material': { kind: 'text', value: 'NAME', does: 'writes one raw material alone' },
    from: {
      kind: 'text',
      value: 'TABLE.csv',
      does: 'reads the formula from a table exported from a spreadsheet',
      completes: 'file',
    },
  },
  examples: [
    { call: 'init my-product', does: 'a maker, a product and a raw material, ready to be edited' },
    { call: 'init . --from formula.csv', does: 'a product with the formula of a spreadsheet' },
  ],
  run,
};

/**
 * Writes starter records with comments: a maker, a product and a raw material; or a raw material by itself; or either
 * with the formula of a table. Overwrites nothing. Returns the exit status.
 * @throws OutputError where the folder cannot be written
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const [folder = '.'] = parsed.positional;
  const [material, from] = [parsed.text('raw-material'), parsed.text('from')];
  const table = from === null ? null : readTable(from, io);
  if (from !== null && table === null) return exit.badInput;
  const files = table
    ? recordsOfTable(table, from!, material, folder)
    : material === null
      ? starters()
      : [rawMaterialStarter(material)];
  const present = files.filter(({ name }) => existsSync(join(folder, name)));
  if (present.length > 0) {
    io.err(`${present.map(({ name }) => join(folder, name)).join(', ')} already there; nothing written\n`);
    return exit.badInput;
  }
  const written = writeFiles(folder, files);
  const said = table ? tableText(table) : [];
  const record = join(folder, files.find(({ name }) => !name.startsWith('maker'))!.name);
  const next =
    material === null
      ? `edit these, then: labelwright check ${table ? record : join(folder, 'product.yaml')}`
      : `edit it, name it in a product with \`use: ${files[0]!.name}\`, then: labelwright check ${folder}`;
  io.out(`${[...said, ...written, next].join('\n')}\n`);
  return exit.done;
}

const starter = (name: string): string => readFileSync(packagePath('templates', 'starter', name), 'utf8');

const starters = (): OutputFile[] =>
  readdirSync(packagePath('templates', 'starter'), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(({ parentPath, name }) =>
      join(parentPath, name).slice(packagePath('templates', 'starter').length + 1),
    )
    .sort((a, b) => a.split('/').length - b.split('/').length || (a < b ? -1 : 1))
    .map(name => ({ name, bytes: starter(name) }));

/** A raw material to be filled in: figures of another would be taken for its own, so they stand as comments. */
const rawMaterialStarter = (name: string): OutputFile => {
  const stem = fileName(name);
  const text = starter('drums/surfactant.yaml')
    .replaceAll('drums/surfactant.yaml', `drums/${stem}.yaml`)
    .replaceAll('surfactant.pdf', `${stem}.pdf`)
    .replace('The figures below are invented; take yours', 'Take the figures');
  const [head = '', ...rest] = text.split(/^name: .*\n/m);
  const asked = rest.join('').replace(/^(?=[^#\n])/gm, '# ');
  return { name: `drums/${stem}.yaml`, bytes: `${head}name: ${JSON.stringify(name)}\n${asked}` };
};

function readTable(path: string, io: Io): TableFormula | null {
  let text: string;
  try {
    text = decoded(readFileSync(path));
  } catch (error) {
    io.err(`${path} cannot be read: ${(error as Error).message}\n`);
    return null;
  }
  let table: TableFormula | null;
  try {
    table = formulaOfTable(text);
  } catch (error) {
    io.err(`${path} is not a table: ${(error as Error).message}\n`);
    return null;
  }
  if (table && table.lines.length > 0) return table;
  io.err(
    table
      ? `${path}: no line stands below its header in row ${table.headerRow}\n`
      : `${path}: no header found\n  -> give the columns headings such as name, CAS, percent, hazards; export the sheet as CSV\n`,
  );
  return null;
}

/** Spreadsheets export UTF-8 or, in older ones, the code page of Western Windows. */
function decoded(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

function recordsOfTable(
  table: TableFormula,
  path: string,
  material: string | null,
  folder: string,
): OutputFile[] {
  const source = basename(path);
  const formula = linesOfTable(table.lines, source);
  const read = `Read from ${source}.\n${tableText(table).join('\n')}`;
  if (material !== null)
    return [
      {
        name: `drums/${fileName(material)}.yaml`,
        bytes: recordText(`${read}\nAdd supplier, sheet (revision, date) and density.`, {
          labelwright: 'raw-material/1',
          name: material,
          source,
          formula,
        }),
      },
    ];
  const name = source.replace(/\.[^.]*$/, '');
  const product = {
    name: `${fileName(name)}.yaml`,
    bytes: recordText(
      `${read}\nAdd use, properties and packs; \`labelwright init\` in an empty folder shows them.`,
      {
        labelwright: 'product/1',
        name,
        code: fileName(name),
        form: 'liquid',
        maker: 'maker.yaml',
        formula,
      },
    ),
  };
  return existsSync(join(folder, 'maker.yaml'))
    ? [product]
    : [{ name: 'maker.yaml', bytes: starter('maker.yaml') }, product];
}
