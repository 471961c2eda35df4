import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/commands/catalog.ts';
import { inProcess, put, TODAY, workshop } from './_command.ts';

const record = (code: string, more = '') =>
  `labelwright: product/1
name: Rinse ${code}
code: ${code}
use: Cleaner
form: liquid
maker: maker.yaml
properties: {pH: 7, flash-point: none}
formula:
  - {name: citric acid, cas: 77-92-9, percent: 2}
  - {name: water, amount: balance}
${more}`;

describe('catalog', () => {
  const shop = () => {
    const folder = workshop();
    for (const name of ['patio-cleaner', 'descaler', 'degreaser']) unlinkSync(join(folder, `${name}.yaml`));
    put(folder, 'a.yaml', record('A-1'));
    put(folder, 'b.yaml', record('B-2'));
    const out = join(folder, 'made');
    const call = async (...more: string[]) => {
      const { status, out: said, err } = await inProcess(run, [folder, '--out', out, '--json', ...more]);
      const json = JSON.parse(said);
      return { status, err, json, states: json.products?.map(({ state }: { state: string }) => state) };
    };
    const madeAt = (code: string) => statSync(join(out, code, 'manifest.json')).mtimeMs;
    return { folder, out, call, madeAt };
  };

  it('makes what changed and leaves the rest', async () => {
    const { folder, out, call, madeAt } = shop();
    expect(await call()).toMatchObject({ status: 0, states: ['made', 'made'] });
    const before = [madeAt('A-1'), madeAt('B-2')];
    expect(await call()).toMatchObject({ status: 0, states: ['unchanged', 'unchanged'] });
    put(folder, 'b.yaml', record('B-2').replace('percent: 2', 'percent: 3'));
    expect(await call()).toMatchObject({ status: 0, states: ['unchanged', 'made'] });
    expect(madeAt('A-1')).toBe(before[0]);
    expect(madeAt('B-2')).toBeGreaterThan(before[1]!);
    // A file that went is made again.
    unlinkSync(join(out, 'A-1', 'sds.html'));
    expect(await call()).toMatchObject({ status: 0, states: ['made', 'unchanged'] });
  });

  it('lists documents that may leave the shop, and no others', async () => {
    const { out, call } = shop();
    const { json } = await call();
    const page = readFileSync(join(out, 'catalog.html'), 'utf8');
    const links = [...page.matchAll(/href="([^"]+)"/g)].map(([, to]) => decodeURIComponent(to!));
    expect(links.length).toBeGreaterThan(2);
    for (const to of links) expect(existsSync(join(out, to)), to).toBe(true);
    expect(links.join(' ')).not.toMatch(/work-sheet|classification|manifest/);
    expect(page).toContain('Drafts for qualified review');
    expect(json.products[0]).toMatchObject({ madeFor: TODAY, product: { code: 'A-1' } });
  });

  it('offers each sheet under the name of product and revision, and shows both', async () => {
    const { folder, out, call } = shop();
    put(
      folder,
      'a.yaml',
      record('A-1', 'revision: 3\nrevised: 2026-10-30\n').replace('Rinse A-1', 'Rinse 1/2 "A"'),
    );
    const { json } = await call();
    const page = readFileSync(join(out, 'catalog.html'), 'utf8');
    const link = (to: string) => new RegExp(`<a href="${to}" download="([^"]+)">`).exec(page)?.[1];
    expect(link('A-1/sds.pdf')).toBe('Rinse 1-2 -A- SDS rev 3.pdf');
    expect(link('A-1/sds.html')).toBe('Rinse 1-2 -A- SDS rev 3.html');
    // Where the record names no revision, the date of the sheet stands in its place.
    expect(link('B-2/sds.pdf')).toBe(`Rinse B-2 SDS ${TODAY}.pdf`);
    expect(page).toMatch(/<td>A-1<\/td><td>3<\/td><td>2026-10-30<\/td>/);
    expect(json.products[0].sheet).toEqual({ revision: '3', date: '2026-10-30' });
    const pdf = await PDFDocument.load(readFileSync(join(out, 'A-1', 'sds.pdf')));
    for (const part of ['Rinse 1/2 "A"', 'A-1', 'Revision 3', '2026-10-30'])
      expect(pdf.getTitle()).toContain(part);
  });

  it('goes on past a record that cannot be used, and says so', async () => {
    const { folder, out, call } = shop();
    put(folder, 'c.yaml', record('C-3').replace('percent: 2', 'percent: 200'));
    const { status, states, err } = await call();
    expect([status, states]).toEqual([2, ['made', 'made', 'refused']]);
    expect(err).toMatch(/c\.yaml:\d+:\d+: error/);
    expect(readFileSync(join(out, 'catalog.html'), 'utf8')).toContain('c.yaml');
  });

  it('makes nothing where two products have one code', async () => {
    const { folder, out, call } = shop();
    put(folder, 'b.yaml', record('A-1'));
    expect(await call()).toMatchObject({ status: 2 });
    expect(existsSync(out)).toBe(false);
  });

  it('keeps a page that a person changed', async () => {
    const { out, call } = shop();
    await call();
    const page = join(out, 'catalog.html');
    writeFileSync(page, `${readFileSync(page, 'utf8')}<!-- mine -->`);
    expect(await call()).toMatchObject({ status: 1, json: { page: null } });
    expect(readFileSync(page, 'utf8')).toContain('mine');
    expect(await call('--replace')).toMatchObject({ status: 0 });
    const aside = readdirSync(out).filter(name => name.startsWith('catalog.kept-'));
    expect(aside).toHaveLength(1);
    expect(readFileSync(join(out, aside[0]!), 'utf8')).toContain('mine');
  });

  it('of a folder without records is a wrong call', async () => {
    const folder = workshop();
    mkdirSync(join(folder, 'empty'));
    expect((await inProcess(run, [join(folder, 'empty')])).status).toBe(2);
    for (const none of ['nowhere', 'maker.yaml'])
      expect(await inProcess(run, [join(folder, none)])).toMatchObject({ status: 2, out: '' });
  });
});
