import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { run as caseLabels } from '../../src/cli/commands/case.ts';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { run as ship } from '../../src/cli/commands/ship.ts';
import { decodeAll } from '../support/decode.ts';
import { canvasOf, oneBit } from '../support/one-bit.ts';
import { extractText } from '../support/render.ts';
import { demoWith, filesBelow, inProcess, put, type Result, workshop } from './_command.ts';

interface SheetJson {
  readonly sections: readonly {
    readonly number: number;
    readonly items: readonly { readonly key: string; readonly text?: string | readonly string[] }[];
  }[];
}

interface Shipped {
  readonly description: string;
  readonly un: string;
  readonly name: string;
  readonly class: string;
  readonly packingGroup: string;
  readonly limitedQuantity: { readonly allowed: boolean; readonly innerLimit: string };
}

const products = [
  { file: 'patio-cleaner.yaml', pack: 'bottle-946' },
  { file: 'descaler.yaml', pack: 'bottle-1l' },
  { file: 'degreaser.yaml', pack: 'bottle-500' },
] as const;
const answers = new Set<string>();

// One answer of transport, wherever it stands: no outside source, the documents are held against each other.
describe.each(products)('the packet of $file', ({ file, pack }) => {
  const folder = workshop();
  const out = join(folder, 'out');
  const text = async (name: string) =>
    (await extractText(new Uint8Array(readFileSync(join(out, name))))).join(' ');
  const json = <T>(name: string) => JSON.parse(readFileSync(join(out, name), 'utf8')) as T;
  let shipped: Shipped;
  let made: Result;

  beforeAll(async () => {
    made = await inProcess(packet, [join(folder, file), '--out', out]);
    expect(made.status).toBe(0);
    shipped = JSON.parse((await inProcess(ship, [join(folder, file), '--json'])).out);
  });

  it('says in section 14, transport.json, ship and on the case label one number, name, class and group', async () => {
    const { description, un, name, class: division, packingGroup, limitedQuantity } = shipped;
    expect(json<Shipped>('transport.json')).toMatchObject({
      description,
      un,
      name,
      class: division,
      packingGroup,
      limitedQuantity,
    });
    const section = json<SheetJson>('sds.json').sections.find(({ number }) => number === 14)!;
    const item = (key: string) => [section.items.find(each => each.key === key)!.text].flat().join(' ');
    expect({
      un: item('un-number'),
      name: item('shipping-name'),
      class: item('transport-class'),
      packingGroup: item('packing-group'),
    }).toEqual({ un, name, class: division, packingGroup });
    expect(item('special-precautions')).toContain(
      `Limited quantity: ${limitedQuantity.allowed ? 'allowed' : 'not for this pack'}; inner packagings up to ${limitedQuantity.innerLimit}`,
    );
    const label = (await text(`case-${pack}.pdf`)).replace(/\s+/g, ' ');
    expect(label).toContain(`${description}${limitedQuantity.allowed ? ', Limited Quantity' : ''}`);
    expect(description).toBe([un, name, division, packingGroup].join(', '));
    expect(filesBelow(out).includes(`limited-quantity-${pack}.pdf`)).toBe(limitedQuantity.allowed);
    answers.add(description);
  });

  it('has a case label for the printer of the record that a decoder reads, without lot or date', async () => {
    const [, gtin, printer] = /case: \{.*gtin: "(\d+)"(?:.*printer: (\d+))?/.exec(
      readFileSync(join(folder, file), 'utf8'),
    )!;
    const dots = await oneBit(
      new Uint8Array(readFileSync(join(out, `case-${pack}.pdf`))),
      printer === undefined ? 203.2 : Number(printer),
    );
    const found = await decodeAll(canvasOf(dots, 2), ['ITF', 'Code128']);
    expect(found.map(each => each.text)).toEqual([gtin]);
    expect(await text(`case-${pack}.pdf`)).not.toMatch(/Lot|Use by|Made/);
    expect(made.err).toContain(`the case label of ${pack} bears no lot and no date`);
  });

  it('lists the labels of the case in manifest, index and the page of the reviewer', () => {
    const name = `case-${pack}.pdf`;
    const { files } = json<{ files: { name: string; kind: string }[] }>('manifest.json');
    expect(files).toContainEqual(expect.objectContaining({ name, kind: 'distribution' }));
    for (const page of ['index.html', 'review.html'])
      expect(readFileSync(join(out, page), 'utf8')).toContain(`href="${name}"`);
  });
});

it('of the demo products are carried in three ways', () => {
  expect(answers.size).toBe(products.length);
});

describe('a packet', () => {
  const folder = workshop();
  const run = async (name: string, ...changes: (readonly [string, string])[]) => {
    const path = put(folder, `${name}.yaml`, demoWith(...changes));
    const out = join(folder, name);
    const result = await inProcess(packet, [path, '--out', out]);
    return { ...result, names: existsSync(out) ? filesBelow(out) : [], out, path };
  };

  it('tells of a case label that cannot be made, and holds the rest', async () => {
    // Its number stands for a grouping of another pack.
    const { status, err, names, out } = await run('other-item', ['"10614141000415"', '"10614141000422"']);
    expect(status).toBe(1);
    expect(err).toContain('10614141000422 of the case stands for a grouping of 0614141000425');
    expect(names).not.toContain('case-bottle-946.pdf');
    for (const name of ['label-bottle-946.pdf', 'sds.pdf', 'limited-quantity-bottle-946.pdf'])
      expect(names).toContain(name);
    const { missing } = JSON.parse(readFileSync(join(out, 'manifest.json'), 'utf8'));
    expect(missing).toMatchObject([{ name: 'case-bottle-946.pdf' }]);
    expect(readFileSync(join(out, 'review.html'), 'utf8')).toContain('case-bottle-946.pdf could not be made');
  });

  it('has no case label for a pack without a case, and says nothing of it', async () => {
    const { status, names, err } = await run('no-case', [
      '    case: {count: 20, gtin: "10614141000415", tare: 0.9 kg, length: 450 mm, width: 360 mm, height: 280 mm}\n',
      '',
    ]);
    expect(status).toBe(0);
    expect(names.filter(name => /^(case|arrows|limited|pallet)/.test(name))).toEqual([]);
    expect(err).not.toMatch(/case label/);
  });

  it('has number and name in place of the limited quantity mark above its limit', async () => {
    // 49 CFR 173.154(b)(1): packing group II, inner packagings up to 1 L.
    const { names, out } = await run('large', ['contents: 946 mL', 'contents: 1.2 L']);
    expect(names).toContain('shipping-name-bottle-946.pdf');
    expect(names).not.toContain('limited-quantity-bottle-946.pdf');
    const [page] = await extractText(new Uint8Array(readFileSync(join(out, 'case-bottle-946.pdf'))));
    expect(page).toContain('UN1791');
    expect(page).not.toContain('Limited Quantity');
  });

  // 49 CFR 173.154(b): 30 kg gross. 20 x 946 mL x 1.09 g/mL + 20 x 0.5 kg + 0.9 kg = 31.5 kg (arithmetic).
  it('counts the empty packs of the record: over 30 kg there is no limited quantity anywhere', async () => {
    const { status, names, out, path } = await run('heavy', ['tare: 62 g', 'tare: 500 g']);
    expect(status).toBe(0);
    expect(names).toContain('shipping-name-bottle-946.pdf');
    expect(names).not.toContain('limited-quantity-bottle-946.pdf');
    const shipped = JSON.parse((await inProcess(ship, [path, '--json'])).out);
    expect(shipped.limitedQuantity.allowed).toBe(false);
    expect(JSON.stringify(shipped.because)).toContain('31.5');
    expect(readFileSync(join(out, 'sds.json'), 'utf8')).toContain('Limited quantity: not for this pack');
  });

  // 29 CFR 1910.1200(i): what the sheet withholds, no copy that leaves the shop may tell.
  it('leaves number and name off the case label where an identity is claimed as a trade secret', async () => {
    const { out, status, err } = await run('secret', [
      '  - name: sodium hydroxide\n    cas: 1310-73-2\n    percent: 1.5',
      '  - name: sodium hydroxide\n    cas: 1310-73-2\n    percent: 1.5\n    trade-secret: identity',
    ]);
    expect([status, err.includes('defect')]).toEqual([0, false]);
    const [page] = await extractText(new Uint8Array(readFileSync(join(out, 'case-bottle-946.pdf'))));
    expect(page).toMatch(/Class 8, II,\s+Limited Quantity/);
    expect(page).not.toContain('UN1791');
    expect(err).not.toContain('shipping-name-secret');
  });

  // 49 CFR 172.301(b): the outside of a package bears the technical name of a generic entry.
  it('warns where the shipping name on the outside tells a claimed identity', async () => {
    const record = readFileSync('templates/demo/descaler.yaml', 'utf8')
      .replace('    percent: [12, 14]', '    percent: [12, 14]\n    trade-secret: identity')
      .replace('contents: 1 L', 'contents: 6 L');
    const path = put(folder, 'secret-mark.yaml', record);
    const marked = await inProcess(caseLabels, [path, '--out', join(folder, 'secret-mark')]);
    expect(filesBelow(join(folder, 'secret-mark'))).toContain('shipping-name-bottle-1l.pdf');
    expect(marked.err).toMatch(/warning: number and shipping name on the case tell phosphoric acid/);
    const without = await inProcess(caseLabels, [path, '--no-marks', '--out', join(folder, 'no-mark')]);
    expect(without.err).not.toContain('on the case tell');
  });

  it('leaves the case label of a batch beside that of the packet', async () => {
    const { out, path } = await run('batch', ['count: 20', 'count: 20']);
    const made = await inProcess(caseLabels, [path, '--out', out, '--lot', 'L/7']);
    expect(made.status).toBe(0);
    const again = await inProcess(packet, [path, '--out', out]);
    expect(again.status).toBe(0);
    const pages = ['case-bottle-946.pdf', 'case-bottle-946-L_2F7.pdf'].map(
      async name => (await extractText(new Uint8Array(readFileSync(join(out, name)))))[0],
    );
    const [plain, batch] = await Promise.all(pages);
    expect(plain).not.toContain('L/7');
    expect(batch).toContain('L/7');
  });

  it('draws the pallet where the record says how large the case is, and no label without its SSCC', async () => {
    const { names, err, path } = await run('pallet', ['height: 280 mm}', 'height: 280 mm, layers: 3}']);
    expect(names).toContain('pallet-bottle-946.svg');
    expect(names).not.toContain('pallet-bottle-946.pdf');
    expect(err).toContain('each pallet gets an SSCC of its own');
    // The record serves `case` as well.
    const { out } = await inProcess(caseLabels, [path, '--out', join(folder, 'pallet-case'), '--json']);
    expect(JSON.parse(out)).toMatchObject({ load: { layers: 3 }, mass: { emptyPack: 0.062 } });
  });

  it('refuses a printer that there is none of, with its place', async () => {
    const { status, err } = await run('printer', ['height: 280 mm}', 'height: 280 mm, printer: 204}']);
    expect(status).toBe(2);
    expect(err).toMatch(/printer\.yaml:47:\d+: error: `printer` cannot be `204`/);
  });
});
