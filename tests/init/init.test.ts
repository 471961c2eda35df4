import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as init } from '../../src/cli/commands/init.ts';
import { formulaOfTable } from '../../src/record/from-table.ts';
import { filesBelow, inProcess, put, workshop } from '../cli/_command.ts';

const empty = (): string => mkdtempSync(join(tmpdir(), 'labelwright-init-'));

describe('init', () => {
  it('writes a maker, a product and a raw material that check reads without a warning', async () => {
    const folder = empty();
    const made = await inProcess(init, [folder]);
    expect(made.status).toBe(0);
    expect(filesBelow(folder)).toEqual(['drums/surfactant.yaml', 'maker.yaml', 'product.yaml']);
    const checked = await inProcess(check, [folder]);
    expect({ status: checked.status, err: checked.err }).toEqual({ status: 0, err: '' });
    expect((await inProcess(init, [folder])).status).toBe(2);
  });

  it('shows every block, and each reads where its comment signs are taken away', async () => {
    const folder = empty();
    await inProcess(init, [folder]);
    const text = readFileSync(join(folder, 'product.yaml'), 'utf8');
    const blocks = [
      'sold-to',
      'reacts',
      'evidence',
      'choices',
      'statements',
      'sds',
      'review',
      'batch',
      'revised',
    ];
    let open = text;
    for (const block of blocks) {
      expect(text).toMatch(new RegExp(`^# ${block}:`, 'm'));
      // A block goes on as long as its lines begin with a comment sign.
      open = open.replace(new RegExp(`^# ${block}:.*\\n(?:#  .*\\n)*`, 'm'), found =>
        found.replace(/^# /gm, ''),
      );
    }
    for (const key of ['dilution', 'roll', 'lot-window', 'origin', 'trade-secret', 'limits', 'ate'])
      open = open.replace(new RegExp(`^( +)# (${key}:.*)$`, 'm'), '$1$2');
    open = open.replace(
      /^( +)# (artwork:.*\n)((?: +# {3}.*\n)*)/m,
      (_, indent, head, rest) => `${indent}${head}${rest.replace(/# /g, '')}`,
    );
    // What reacts is not in the starter's formula.
    open = open.replace(
      '  - name: water\n',
      '  - {name: citric acid, cas: 77-92-9, percent: 2}\n  - {name: caustic soda, cas: 1310-73-2, percent: 1}\n  - name: water\n',
    );
    const { err, status } = await inProcess(check, [put(folder, 'open.yaml', open)]);
    expect(err).not.toMatch(/error/);
    expect(status).toBe(0);
    for (const key of ['sold-to:', 'reacts:', 'artwork:', 'dilution:', 'statements:', 'sds:', 'review:'])
      expect(open).toMatch(new RegExp(`^ *${key}`, 'm'));
  });

  it('writes a raw material by name', async () => {
    const folder = empty();
    const { status, out } = await inProcess(init, [folder, '--raw-material', 'Acid Blend 40 %']);
    expect(status).toBe(0);
    expect(out).toContain('use: drums/acid-blend-40.yaml');
    expect(readFileSync(join(folder, 'drums/acid-blend-40.yaml'), 'utf8')).toContain(
      'name: "Acid Blend 40 %"',
    );
  });

  it('writes no figures of another raw material that would be taken for those of the named one', async () => {
    const folder = empty();
    await inProcess(init, [folder, '--raw-material', 'Bleach 12.5 %']);
    const { status, err } = await inProcess(check, [folder]);
    expect(status).toBe(2);
    expect(err).toContain('neither a composition (`formula`) nor hazards');
    const path = join(folder, 'drums/bleach-12-5.yaml');
    const text = readFileSync(path, 'utf8').replace(
      /^# (?=(?:supplier|sheet|source|formula|density| ))/gm,
      '',
    );
    put(folder, 'drums/bleach-12-5.yaml', text.split('\n\n')[0]!);
    expect((await inProcess(check, [folder])).status).toBe(0);
  });
});

describe('init --from', () => {
  it('reads a column of names under a heading that it does not know, so that no line is lost', async () => {
    const lines = 'Our drum,Supplier,CAS,%\nBleach,A,7681-52-9,40\nSurfactant X,B,,3\nWater,,,balance\n';
    expect(formulaOfTable(lines)!.lines.map(({ name }) => name)).toEqual(['Bleach', 'Surfactant X', 'Water']);
    expect(formulaOfTable(lines.replace('Our drum', 'Item'))!.left).toEqual([]);
  });

  it('leaves out a CAS number that the supplier keeps back, and says so', async () => {
    const folder = empty();
    const file = put(folder, 'f.csv', 'name,cas,percent\nBlend 9,Proprietary,4\nwater,,balance\n');
    const { out } = await inProcess(init, [folder, '--from', file]);
    expect(out).toContain('row 2: "Proprietary" is no CAS number and is left out; give Blend 9 its hazards');
    expect((await inProcess(check, [join(folder, 'f.yaml')])).err).not.toContain('not a CAS number');
  });

  const table = [
    'Degreaser K,,,,',
    'rev 3,,,,',
    'Ingredient,CAS No.,wt %,GHS Classification,Supplier',
    '2-butoxyethanol,111-76-2,5-10,"Acute toxicity, oral (Category 4); Skin Irrit. 2; H315; Eye Irrit. 2",A',
    'sodium carbonate,497-19-8,3,,B',
    'secret blend,n/a,"< 1","Serious eye damage (Category 1)",C',
    ',,,,',
    'water,7732-18-5,balance,,',
    'Total,,100,,',
  ].join('\r\n');

  it('keeps or names every row', async () => {
    const folder = empty();
    const path = put(folder, 'Degreaser K.csv', table);
    const { out, status } = await inProcess(init, [folder, '--from', path]);
    expect(status).toBe(0);
    expect(out).toContain(
      'header in row 3: name from "Ingredient", cas from "CAS No.", percent from "wt %", hazards from "GHS Classification"',
    );
    expect(out).toContain('columns not read: "Supplier"');
    expect(out).toContain('4 lines read');
    expect(out).toMatch(/row 1 not read, it stands above the header: Degreaser K/);
    expect(out).toMatch(/row 9 not read, it is a total: Total, 100/);
    expect(filesBelow(folder)).toEqual(['Degreaser K.csv', 'degreaser-k.yaml', 'maker.yaml']);
    const checked = await inProcess(check, [join(folder, 'degreaser-k.yaml')]);
    expect(checked.err).toBe('');
    expect(checked.out).toContain('5 to 10 %  2-butoxyethanol (111-76-2)');
    expect(checked.out).toContain('secret blend: "Serious eye damage (Category 1)" is read as Eye Dam. 1');
  });

  it("makes a raw material of a supplier's composition, semicolons and decimal commas too", async () => {
    const folder = empty();
    const path = put(
      folder,
      'sheet.csv',
      'Stoff name;CAS;Content\nphosphoric acid;7664-38-2;"12,5"\nwater;;balance\n',
    );
    const { out, status } = await inProcess(init, [folder, '--raw-material', 'Acid', '--from', path]);
    expect(status).toBe(0);
    expect(out).toContain('decimal commas are read as decimal points');
    const made = readFileSync(join(folder, 'drums/acid.yaml'), 'utf8');
    expect(made).toContain('percent: 12.5');
    expect((await inProcess(check, [folder])).status).toBe(0);
  });

  it('leaves what cannot be read in the record, for check to tell', async () => {
    const folder = workshop();
    const path = put(
      folder,
      'odd.csv',
      'name,cas,percent,hazards\nthing,12-34-5,some,very bad\nwater,,balance,\n',
    );
    expect((await inProcess(init, [folder, '--from', path])).status).toBe(0);
    const { err, status } = await inProcess(check, [join(folder, 'odd.yaml')]);
    expect(status).toBe(2);
    for (const text of ['12-34-5', '`some`', 'very bad']) expect(err).toContain(text);
  });

  it('reads amounts with their unit column, and tabs', () => {
    const read = formulaOfTable('Material\tQty\tUnit\tDensity\nacid\t40\tkg\t1.1 g/mL\nwater\t60\tkg\t\n');
    expect(read?.lines).toEqual([
      { row: 2, name: 'acid', amount: '40 kg', density: '1.1 g/mL' },
      { row: 3, name: 'water', amount: '60 kg' },
    ]);
  });

  it('says that a file holds no table', async () => {
    const folder = empty();
    for (const text of ['', 'a letter\nabout nothing\n', 'name,percent\n', '\u0000\u0001']) {
      const { status, err } = await inProcess(init, [folder, '--from', put(folder, 't.csv', text)]);
      expect(status).toBe(2);
      expect(err).not.toBe('');
    }
    expect((await inProcess(init, [folder, '--from', join(folder, 'none.csv')])).status).toBe(2);
  });
});
