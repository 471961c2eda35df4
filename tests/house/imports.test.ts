import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import { describe, expect, it } from 'vitest';
import { circle, filesOf, folderOf, type Import, importsOf } from './_tree.ts';

const sources = filesOf('src', /\.ts$/);
const imports = sources.flatMap(importsOf);
const inside = imports.filter(({ relative, to }) => relative && to.startsWith('src/'));
const crossing = inside.filter(({ from, to }) => folderOf(from) !== folderOf(to));

/** Everything may be imported, also what runs. */
const all = [
  'artwork',
  'barcode',
  'batch',
  'classify',
  'document',
  'draft',
  'duties',
  'environment',
  'formula',
  'headroom',
  'labelling',
  'layout',
  'logistics',
  'notation',
  'pdf',
  'picture',
  'preflight',
  'provenance',
  'quantity',
  'record',
  'reference',
  'report',
  'roll',
  'store',
  'text',
  'transport',
  'version.ts',
  'words',
];

/**
 * Which folder may import which: [what runs, types alone]. The pipeline runs from record to preflight; a folder
 * sees what stands before it, and of its neighbour the types that are handed over.
 */
const may: Readonly<Record<string, readonly [readonly string[], readonly string[]]>> = {
  report: [[], []],
  // What a document was made from, and who may read it: a mark that every writer of documents sets.
  provenance: [[], []],
  // What the machine lends: clock, chance, locks, output files as arguments; files of the package.
  environment: [[], []],
  // Output folders: knows files and hashes, and nothing of what stands in them.
  store: [['environment', 'provenance'], []],
  quantity: [['report'], []],
  // CLP Annex VI notation, shared by those who read records and those who read the table.
  notation: [['quantity', 'report'], []],
  record: [['notation', 'quantity', 'report'], []],
  formula: [['notation', 'quantity', 'report'], ['record']],
  // The physical form of a record is a word of the figures.
  reference: [['environment', 'notation', 'provenance', 'quantity', 'report'], ['record']],
  classify: [
    ['reference', 'notation', 'quantity', 'report'],
    ['record', 'formula'],
  ],
  labelling: [['classify', 'reference', 'notation', 'quantity', 'report'], []],
  // Duties around the label: what is claimed, and what else the law asks of a pack.
  duties: [
    ['labelling', 'reference', 'notation', 'quantity', 'report'],
    ['classify', 'record'],
  ],
  // A formula as it is weighed: what meets in the tank is asked of the reactive groups of classification.
  batch: [['classify', 'quantity', 'report'], ['record']],
  // Facts to text: the only home of sentences about a result.
  words: [
    ['barcode', 'classify', 'notation', 'quantity', 'report'],
    ['batch', 'duties', 'labelling', 'logistics', 'record', 'reference', 'roll', 'store', 'transport'],
  ],
  text: [['environment', 'quantity', 'report'], []],
  barcode: [['quantity', 'report'], []],
  // Beside labelling: classification and record as types, hazard notation and figures as values.
  transport: [
    ['reference', 'notation', 'quantity', 'report'],
    ['classify', 'formula', 'record'],
  ],
  // Section 3 of the sheet states percents: it takes the formula and prints numbers.
  document: [
    ['classify', 'labelling', 'notation', 'provenance', 'quantity', 'report', 'words'],
    ['formula', 'record', 'reference', 'transport'],
  ],
  // Arithmetic of rolls, and of cases and pallets: facts of a pack, no words and no page.
  roll: [['quantity', 'report'], ['record']],
  logistics: [['barcode', 'quantity', 'report'], ['record']],
  // `document/template.ts` gives the text of a node; the symbol of a pictogram is named by labelling.
  layout: [
    ['document', 'text', 'barcode', 'quantity', 'report'],
    ['artwork', 'labelling'],
  ],
  pdf: [
    ['provenance', 'quantity', 'report'],
    ['artwork', 'layout', 'roll', 'text'],
  ],
  // Frames as pictures: it lays nothing out.
  picture: [
    ['quantity', 'report'],
    ['layout', 'text'],
  ],
  // Artwork of the maker: what a page of it holds is asked of preflight.
  artwork: [['preflight', 'quantity', 'report'], []],
  // Reads bytes alone and never sees the writer.
  preflight: [['quantity', 'report'], []],
  // Asks the classifier again and again; knows no page.
  headroom: [
    ['classify', 'labelling', 'reference', 'notation', 'quantity', 'report', 'words'],
    ['formula', 'record'],
  ],
  // One product from record to packet: joins the stages, and adds none.
  draft: [all.filter(name => !['draft', 'headroom', 'store'].includes(name)), []],
  cli: [all, []],
  // Measures parts by themselves, with the files of this computer.
  bench: [[...all, 'cli'], []],
  // Compiles hazard-data, the schema of the record and the list of commands.
  generate: [
    ['cli', 'classify', 'environment', 'notation', 'quantity', 'record', 'reference', 'report', 'words'],
    [],
  ],
  // The public interface re-exports, and lends out the files of this computer.
  'index.ts': [[...all, 'cli', 'public-types.ts'], []],
  'public-types.ts': [[], all],
  'version.ts': [[], []],
};

const line = ({ from, to, typesOnly }: Import): string => `${from} -> ${to}${typesOnly ? ' (types)' : ''}`;

describe('imports', () => {
  it('are read: every relative one leads to a file', () => {
    expect(imports.length).toBeGreaterThan(sources.length);
    expect(imports.filter(({ relative, to }) => relative && !existsSync(to)).map(line)).toEqual([]);
  });

  it('every folder stands in the table', () => {
    expect([...new Set(sources.map(folderOf))].filter(name => !may[name])).toEqual([]);
  });

  it('point one way', () => {
    const wrong = crossing.filter(({ from, to, typesOnly }) => {
      const [values, types] = may[folderOf(from)] ?? [[], []];
      return !values.includes(folderOf(to)) && !(typesOnly && types.includes(folderOf(to)));
    });
    expect(wrong.map(line)).toEqual([]);
  });

  it('the table itself allows no circle', () => {
    const graph = new Map(
      Object.entries(may).map(([name, [values, types]]) => [name, new Set([...values, ...types])]),
    );
    expect(circle(graph)).toBeNull();
  });

  it('make no circle of folders', () => {
    const graph = new Map<string, Set<string>>();
    for (const { from, to } of crossing)
      graph.set(folderOf(from), (graph.get(folderOf(from)) ?? new Set()).add(folderOf(to)));
    expect(circle(graph)).toBeNull();
  });

  it('make no circle of files that run', () => {
    const graph = new Map<string, Set<string>>();
    for (const { from, to, typesOnly } of inside)
      if (!typesOnly) graph.set(from, (graph.get(from) ?? new Set()).add(to));
    expect(circle(graph)).toBeNull();
  });

  it('the command line lends out nothing but its files, and what lists the commands', () => {
    const lent = ['src/cli/files.ts', 'src/cli/command.ts', 'src/cli/help.ts'];
    const borrowed = crossing.filter(({ to }) => folderOf(to) === 'cli').map(({ to }) => to);
    expect([...new Set(borrowed)].filter(path => !lent.includes(path))).toEqual([]);
  });

  it('a file whose name begins with _ is imported in its folder alone', () => {
    const stray = inside.filter(
      ({ from, to }) =>
        /\/_[^/]+$/.test(to) && dirname(from) !== dirname(to) && from !== 'src/public-types.ts',
    );
    expect(stray.map(line)).toEqual([]);
  });
});

describe('libraries', () => {
  // Where each may be known; bench measures against them.
  const known: Readonly<Record<string, RegExp>> = {
    fontkit: /^src\/(text\/|pdf\/font\.ts|bench\/)/,
    '@expo-google-fonts/roboto-condensed': /^src\/text\//,
    'pdf-lib': /^src\/(pdf|preflight|bench)\//,
    '@napi-rs/canvas': /^src\/picture\//,
    saxes: /^src\/artwork\/read-drawing\.ts/,
    svgpath: /^src\/artwork\/_svg-shape\.ts/,
    'fast-png': /^src\/artwork\/read-picture\.ts/,
    'bwip-js': /^src\/barcode\/symbols\.ts/,
    handlebars: /^src\/document\/template\.ts/,
    yaml: /^src\/record\//,
    'zod/mini': /^src\/(record|generate)\/|^src\/(layout\/stock|store\/manifest)\.ts/,
    'proper-lockfile': /^src\/environment\/node\.ts/,
    'zod/locales': /^src\/layout\/stock\.ts/,
    'fraction.js': /^src\/(quantity|formula|classify|headroom|logistics|batch)\/|^src\/public-types\.ts/,
    'fastest-levenshtein': /^src\/(report|notation)\//,
    // Tables: those that data are made from, and formulas that a user exports from a spreadsheet.
    'csv-parse/sync': /^src\/(generate\/|record\/from-table\.ts)/,
  };

  const foreign = imports.filter(({ relative, to }) => !relative && !to.startsWith('node:'));

  it('are known in their place alone', () => {
    expect(foreign.filter(({ from, to }) => !known[to]?.test(from)).map(line)).toEqual([]);
  });

  it('are those that the table names', () => {
    const used = new Set(foreign.map(({ to }) => to));
    for (const name of ['fontkit', 'pdf-lib', 'bwip-js', 'handlebars', 'yaml', 'zod/mini'])
      expect(used).toContain(name);
  });
});
