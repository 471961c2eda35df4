import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/commands/check.ts';
import { inProcess, put, workshop } from '../cli/_command.ts';

const record = (formula: string, more = '') =>
  `labelwright: product/1\nname: Test Wash\ncode: TW-1\nform: liquid\nformula:\n${formula}${more}`;
const water = '  - {name: water, amount: balance}\n';
async function check(text: string, ...args: string[]) {
  const path = put(workshop(), 'test.yaml', text);
  return inProcess(run, [path, ...args]);
}

describe('check asks where a name and a number disagree', () => {
  // CLP Annex VI: sodium hydroxide has index number 011-002-00-6, sodium carbonate 011-005-00-2.
  it('as sodium hydroxide beside the number of soda ash', async () => {
    const { err, status } = await check(
      record(`  - {name: sodium hydroxide, cas: 497-19-8, percent: 3}\n${water}`),
    );
    expect(err).toMatch(
      /warning: `sodium hydroxide` stands beside CAS number 497-19-8, which is that of `sodium carbonate`/,
    );
    expect(err).toContain('1310-73-2');
    expect(status).toBe(0);
  });

  it('and shows the name of the entry where the record has another', async () => {
    const { out, err } = await check(record(`  - {name: soda ash, cas: 497-19-8, percent: 3}\n${water}`));
    expect(out).toContain('soda ash (497-19-8), in the table: sodium carbonate');
    expect(err).not.toContain('stands beside');
  });

  it('and proposes the entry of a name without a number', async () => {
    const { out } = await check(record(`  - {name: isopropyl alcohol, percent: 3}\n${water}`));
    expect(out).toContain('cas: 67-63-0');
  });

  it('and says what to do where the number is withheld', async () => {
    const { err, status } = await check(record(`  - {name: blend, cas: proprietary, percent: 3}\n${water}`));
    expect(err).toContain('leave `cas` out');
    expect(status).toBe(2);
  });
});

describe('check shows', () => {
  it('what was understood where it was written otherwise', async () => {
    const { out } = await check(
      record(
        `  - name: blend\n    percent: 3\n    hazards: ["Serious eye damage (Category 1)"]\n    source: s\n${water}`,
      ),
    );
    expect(out).toContain('blend: "Serious eye damage (Category 1)" is read as Eye Dam. 1');
  });

  // A US gallon is 3.785411784 L and a pound 0.45359237 kg (NIST SP 811, Appendix B.8).
  it('what to weigh out in the units of the shop', async () => {
    const { out } = await check(
      record('  - {name: salt, amount: 10 lb}\n  - {name: water, amount: 1 gal}\n'),
    );
    expect(out).toContain('to weigh out for 8.3145');
    expect(out).toMatch(/4\.536 kg {2}10 lb {2}salt/);
    expect(out).toMatch(/3\.779 kg {2}8\.33 lb {2}1 gal {2}water/);
  });

  it('what the balance is at both ends of a range', async () => {
    const { out } = await check(record(`  - {name: salt, percent: 5-10}\n${water}`, 'batch: 200 kg\n'));
    expect(out).toMatch(/180 to 190 kg.*water/);
  });

  it('what the numbers of packs are for', async () => {
    const packs = (gtin: string, outer: string) =>
      record(
        `  - {name: water, percent: 100}\n`,
        `packs:\n  - {id: a, contents: 1 L, gtin: "${gtin}", case: {count: 12, gtin: "${outer}"}}\n`,
      );
    // GS1 prefixes: 978 books, 040-049 restricted circulation; 10614141000415 is a case of 0614141000418.
    expect((await check(packs('9780306406157', '10614141000415'))).err).toMatch(/begins with 978/);
    const { err } = await check(packs('10614141000415', '10614141000415'));
    expect(err).toMatch(/also that of/);
    expect((await check(packs('0614141000425', '10614141000415'))).err).toMatch(/the pack has 0614141000425/);
    expect((await check(packs('10614141000415', '0614141000418'))).err).toMatch(
      /is that of a case, and stands on a pack/,
    );
    expect((await check(packs('0412345678903', '10614141000415'))).err).toMatch(/restricted circulation/);
  });

  it('a wrong check digit with exit status 1, and other errors with 2', async () => {
    const digit = await check(record(`  - {name: lye, cas: 1310-73-1, percent: 3}\n${water}`));
    expect(digit.status).toBe(1);
    const both = await check(record(`  - {name: lye, cas: 1310-73-1, percent: 300}\n${water}`));
    expect(both.status).toBe(2);
  });

  it('findings as JSON, also where the record cannot be used', async () => {
    const { out } = await check(record(`  - {name: lye, cas: 1310-73-1, percent: 3}\n${water}`), '--json');
    expect(JSON.parse(out)).toMatchObject({
      schema: 'labelwright/findings/1',
      findings: [{ code: 'check-digit', line: 6 }],
    });
  });
});

describe('check of a folder', () => {
  const drum = (date: string) =>
    `labelwright: raw-material/1\nname: acid blend\nsupplier: S\nsheet: {revision: 2, date: ${date}}\nhazards: [Eye Dam. 1]\nsource: SDS 2\n`;
  function shop(): string {
    const folder = join(workshop(), 'shop');
    mkdirSync(join(folder, 'drums'), { recursive: true });
    mkdirSync(join(folder, 'products'));
    put(folder, 'drums/old.yaml', drum('2023-11-24'));
    put(folder, 'drums/new.yaml', drum('2023-11-26'));
    put(folder, 'drums/unused.yaml', drum('2026-01-01').replace('acid blend', 'spare blend'));
    put(
      folder,
      'products/a.yaml',
      record(
        `  - {use: ../drums/old.yaml, percent: 3}\n${water}`,
        'packs: [{id: a, contents: 1 L, gtin: "0614141000418"}]\n',
      ),
    );
    put(folder, 'products/notes.yaml', 'shopping: list\n');
    return folder;
  }

  it('reads products and raw materials, and names sheets older than three years', async () => {
    const folder = shop();
    const { out, status } = await inProcess(run, [folder]);
    expect(status).toBe(0);
    expect(out).toMatch(/acid blend {2}composition not given by its supplier/);
    expect(out).toMatch(
      /drums\/old\.yaml: acid blend; S; sheet 2023-11-24, revision 2 {2}older than 3 years; in TW-1/,
    );
    expect(out).toMatch(/drums\/new\.yaml: acid blend; S; sheet 2023-11-26, revision 2; in no product/);
    expect(out).toContain('1 sheet older than 3 years');
  });

  it('says which products use a raw material', async () => {
    const folder = shop();
    const used = await inProcess(run, [folder, '--uses', join(folder, 'drums/old.yaml')]);
    expect(used.out).toContain('products/a.yaml: Test Wash (TW-1)');
    const spare = await inProcess(run, [folder, '--uses', join(folder, 'drums/unused.yaml')]);
    expect(spare.out).toContain('no product uses');
  });

  it('refuses one number on two products', async () => {
    const folder = shop();
    put(
      folder,
      'products/b.yaml',
      record(
        '  - {name: water, percent: 100}\n',
        'packs: [{id: a, contents: 1 L, gtin: "00614141000418"}]\n',
      ).replace('TW-1', 'TW-2'),
    );
    const { err, status } = await inProcess(run, [folder]);
    expect(err).toMatch(/error: GTIN `00614141000418` is also that of .*a\.yaml/);
    expect(status).toBe(2);
  });

  it('says that a folder holds no record', async () => {
    const folder = shop();
    const { err, status } = await inProcess(run, [join(folder, 'products', '..', 'drums', '..', 'products')]);
    expect(status).toBe(2);
    expect(err).not.toMatch(/defect/);
    mkdirSync(join(folder, 'empty'));
    expect((await inProcess(run, [join(folder, 'empty')])).err).toContain('no product and no raw material');
  });
});

describe('characters that the typeface lacks', () => {
  it('are told at their field', async () => {
    const { err, status } = await check(
      record('  - {name: water, percent: 100}\n', 'copy: {tagline: Cleans 漢, directions: [Wipe Ω.]}\n'),
    );
    expect(err).toMatch(/copy\.tagline: error: the typeface of label and sheet lacks `漢` \(U\+6F22\)/);
    expect(err).not.toContain('directions');
    expect(status).toBe(2);
  });
});

it('parts that fill more than the batch are told', async () => {
  const of = (density: string) =>
    record(
      '  - {name: syrup, percent: 50, density: 1.0 g/mL}\n  - {name: water, amount: balance}\n',
      `properties: {density: ${density}}\nbatch: 100 gal\n`,
    );
  expect((await check(of('1.0 g/mL'))).err).not.toContain('volume that it has');
  expect((await check(of('1.2 g/mL'))).err).toMatch(/have 120 % of the volume/);
});
