import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

interface Packed {
  readonly filename: string;
  readonly unpackedSize: number;
  readonly files: readonly { readonly path: string; readonly mode: number }[];
}

const TODAY = '2026-11-25';
const folder = mkdtempSync(join(tmpdir(), 'labelwright-package-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(command: string, args: readonly string[], cwd: string) {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8', maxBuffer: 1 << 28 });
  return { status, out: stdout, err: stderr };
}

let packed: Packed;
const shop = join(folder, 'shop');
/** The command as npm puts it into the folder of a user. */
const installed = join(shop, 'node_modules', '.bin', 'labelwright');
const engine = process.env.ENGINE;
const labelwright = (...args: string[]) =>
  engine ? run(engine, [installed, ...args], shop) : run(installed, args, shop);

// As a user gets it: packed, then installed in an empty folder, offline, since it brings all that it needs.
beforeAll(() => {
  // The build was made before the tests; making it again would pull it from under the others.
  const made = run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], '.');
  expect(made.status, made.err).toBe(0);
  const parsed = JSON.parse(made.out);
  packed = (Array.isArray(parsed) ? parsed[0] : Object.values(parsed)[0]) as Packed;
  mkdirSync(shop);
  const args = ['install', '--offline', '--no-audit', '--no-fund', join(folder, packed.filename)];
  const got = run('npm', args, shop);
  expect(got.status, got.err).toBe(0);
});

describe('the package', () => {
  it('unpacks to at most 4 MB', () => {
    expect(packed.unpackedSize).toBeLessThanOrEqual(4_000_000);
  });

  it('holds what runs, with its data, and nothing that it was made from', () => {
    const paths = packed.files.map(({ path }) => path);
    for (const path of ['README.md', 'LICENSE', 'out/dist/NOTICES.txt', 'out/dist/cli/main.js'])
      expect(paths).toContain(path);
    const made = /\.map$|\.compiled$|\.csv$|^src\/|^tests\/|^hazard-data\/sources\/|(?<!\.d)\.ts$/;
    expect(paths.filter(path => made.test(path))).toEqual([]);
  });

  it('brings no other package', () => {
    const { packages } = JSON.parse(
      readFileSync(join(shop, 'node_modules', '.package-lock.json'), 'utf8'),
    ) as { packages: Record<string, unknown> };
    expect(Object.keys(packages)).toEqual(['node_modules/labelwright']);
  });

  it('names every package whose code is in the bundle, with its licence', () => {
    const { outputs } = JSON.parse(readFileSync('out/tools/bundle.json', 'utf8')) as {
      outputs: Record<string, { inputs: Record<string, object> }>;
    };
    const inputs = Object.values(outputs).flatMap(output => Object.keys(output.inputs));
    const names = new Set(
      inputs.flatMap(path => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? []),
    );
    expect(names.size).toBeGreaterThan(10);
    const notices = readFileSync(join(shop, 'node_modules/labelwright/out/dist/NOTICES.txt'), 'utf8');
    for (const name of [...names, '@expo-google-fonts/roboto-condensed']) {
      const { version } = JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8'));
      expect(notices).toContain(`\n${name} ${version} (`);
    }
    expect(notices).toContain('SIL OPEN FONT LICENSE');
    expect(notices).toContain('WITHOUT WARRANTY OF ANY KIND');
  });

  it('is built before it is packed, and when a checkout is installed', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
    for (const name of ['prepack', 'prepare']) expect(scripts[name]).toContain('run --silent build');
  });
});

describe('installed in an empty folder', () => {
  it('does the main job: starter record, check, packet', async () => {
    expect(labelwright('init', 'my-product')).toMatchObject({ status: 0, err: '' });
    expect(labelwright('check', 'my-product/product.yaml')).toMatchObject({ status: 0, err: '' });
    const packet = labelwright('packet', 'my-product/product.yaml', '--as-of', TODAY, '--out', 'made');
    expect(packet.status, packet.err).toBe(0);
    for (const name of ['sds.html', 'sds.json', 'classification.json', 'index.html'])
      expect(existsSync(join(shop, 'made', name)), name).toBe(true);
    for (const name of ['sds.pdf', 'label-bottle-500.pdf']) {
      const pdf = await PDFDocument.load(readFileSync(join(shop, 'made', name)));
      expect(pdf.getPageCount()).toBeGreaterThan(0);
    }
  });

  it.each(['us-hcs', 'eu-clp', 'un-ghs'])('gives the classification of the tree: %s', basis => {
    const demo = resolve('templates/demo/patio-cleaner.yaml');
    const args = ['classify', demo, '--basis', basis, '--json', '--as-of', TODAY];
    const here = labelwright(...args);
    expect(here.status, here.err).toBe(0);
    expect(here.out).toBe(run(process.execPath, ['out/dist/cli/main.js', ...args], '.').out);
  });

  it('has every other command', () => {
    expect(labelwright('headroom', 'my-product/product.yaml', '--of', 'water').status).toBe(0);
    expect(labelwright('gtin', '0614141000418').status).toBe(0);
    expect(labelwright('help', 'x-height').out).toMatch(/^x-height\n/);
    expect(labelwright('completion', 'bash').status).toBe(0);
  });

  it('is a library with types that a strict program can be written against', () => {
    const program = `import { classifyProduct, headroom, nodeFiles, openProduct, openReference } from 'labelwright';
import type { Because, Constituent, Headroom, Pack, ProductRecord } from 'labelwright';
const opened = openProduct('my-product/product.yaml', nodeFiles);
const reference = await openReference('us-hcs', '${TODAY}');
if (!opened.ok || !reference.ok) throw new Error('the starter record is not read');
const product = classifyProduct(opened.value, reference.value);
const record: ProductRecord = product.record;
const packs: readonly Pack[] = record.packs;
const constituents: readonly Constituent[] = opened.value.formula.constituents;
const reasons: readonly Because[] = product.classification.otherClasses.map(({ because }) => because);
const found: Headroom['steps'] | null = null;
console.log(typeof headroom, packs.length > 0, constituents.length > 0, reasons.length > 0, found);
`;
    writeFileSync(join(shop, 'program.ts'), program);
    const strict = { strict: true, noEmit: true, skipLibCheck: false, types: [], lib: ['es2023', 'dom'] };
    writeFileSync(
      join(shop, 'tsconfig.json'),
      JSON.stringify({
        compilerOptions: { ...strict, target: 'es2022', module: 'nodenext', moduleDetection: 'force' },
        files: ['program.ts'],
      }),
    );
    writeFileSync(join(shop, 'package.json'), '{"type": "module"}');
    const checked = run(process.execPath, [resolve('node_modules/typescript/bin/tsc'), '-p', '.'], shop);
    expect(checked, checked.out).toMatchObject({ status: 0, out: '' });
    // The same without its types, for an engine that runs JavaScript alone.
    const plain = program.replace(/^import type.*\n/m, '').replace(/(const \w+): [^=]+=/g, '$1 =');
    writeFileSync(join(shop, 'program.js'), plain);
    const ran = run(engine ?? process.execPath, ['program.js'], shop);
    expect(ran).toEqual({ status: 0, out: 'function true true true null\n', err: '' });
  });
});
