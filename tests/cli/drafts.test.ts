import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as init } from '../../src/cli/commands/init.ts';
import { run as label } from '../../src/cli/commands/label.ts';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { decode } from '../layout/label/read-back.ts';
import { extractText, openPdf, renderPage } from '../support/render.ts';
import {
  demoWith,
  filesBelow,
  inProcess,
  labelwright,
  put,
  stackTrace,
  TODAY,
  workshop,
} from './_command.ts';

/** Letters alone: line ends and hard spaces of a page are no part of its words. */
const letters = (text: string): string => text.replace(/\s+/g, '');
const bytesOf = (...parts: string[]): Uint8Array => new Uint8Array(readFileSync(join(...parts)));
const millimetres = (points: number): number => (points * 25.4) / 72;

interface Elements {
  readonly signalWord: string;
  readonly hazardStatements: readonly { text: string }[];
  readonly precautionaryStatements: readonly { text: string }[];
  readonly supplemental: readonly { text: string }[];
}

// Titles of the sections: 29 CFR 1910.1200 App. D, Table D.1.
const sections = [
  'Identification',
  'Hazard(s) identification',
  'Composition/information on ingredients',
  'First-aid measures',
  'Fire-fighting measures',
  'Accidental release measures',
  'Handling and storage',
  'Exposure controls/personal protection',
  'Physical and chemical properties',
  'Stability and reactivity',
  'Toxicological information',
  'Ecological information',
  'Disposal considerations',
  'Transport information',
  'Regulatory information',
  'Other information',
];

const products = [
  { file: 'patio-cleaner.yaml', code: 'KP-946', pack: 'bottle-946', gtin: '0614141000418', die: [130, 120] },
  { file: 'descaler.yaml', code: 'LD-1000', pack: null, gtin: null, die: null },
  { file: 'degreaser.yaml', code: 'CD-500', pack: 'bottle-500', gtin: '0614141000432', die: [150, 100] },
] as const;

describe.each(products)('the packet of $file', ({ file, code, pack, gtin, die }) => {
  let out: string;
  let names: string[];
  let elements: Elements;
  const labelName = () => names.find(name => name.startsWith('label-') && !name.includes('us-consumer'))!;

  beforeAll(() => {
    const cwd = workshop();
    const { status, out: said, err } = labelwright(['packet', file, '--as-of', TODAY], { cwd });
    expect(err).not.toMatch(stackTrace);
    expect(status).toBe(0);
    out = join(cwd, 'out', code);
    names = filesBelow(out);
    expect(said.trimEnd().split('\n').sort()).toEqual(names.map(name => `out/${code}/${name}`));
    elements = JSON.parse(readFileSync(join(out, 'classification.json'), 'utf8')) as Elements;
  });

  it('holds every part, and the index names each', () => {
    const ofCases = /^(arrows|case|limited-quantity|pallet)-/;
    // Each demo product has one pack, a limited quantity of a liquid sold in cases; one record says how large the case is.
    expect(names.filter(name => ofCases.test(name)).map(name => name.replace(/bottle-[^.]+/, ''))).toEqual([
      'arrows-.pdf',
      'case-.pdf',
      'limited-quantity-.pdf',
      ...(code === 'KP-946' ? ['pallet-.svg'] : []),
    ]);
    expect(names.filter(name => !name.startsWith('label-') && !ofCases.test(name))).toEqual([
      'classification.json',
      'duties.json',
      'index.html',
      'manifest.json',
      'review.html',
      'sds.html',
      'sds.json',
      'sds.pdf',
      'transport.json',
      'work-sheet.md',
    ]);
    if (pack) expect(names).toContain(`label-${pack}.pdf`);
    const index = readFileSync(join(out, 'index.html'), 'utf8');
    for (const name of names.filter(each => each !== 'index.html')) expect(index).toContain(`href="${name}"`);
    expect(index).toContain('qualified');
  });

  it('has a label of one page of die size with every word of the label elements', async () => {
    const bytes = bytesOf(out, labelName());
    const pdf = await PDFDocument.load(bytes);
    expect(pdf.getPageCount()).toBe(1);
    const trim = pdf.getPage(0).getTrimBox();
    if (die) {
      expect(millimetres(trim.width)).toBeCloseTo(die[0], 2);
      expect(millimetres(trim.height)).toBeCloseTo(die[1], 2);
    }
    const bleed = pdf.getPage(0).getBleedBox();
    expect(bleed.width).toBeGreaterThan(trim.width);
    const page = letters((await extractText(bytes)).join(''));
    const { signalWord, hazardStatements, precautionaryStatements, supplemental } = elements;
    expect(page).toContain(letters(signalWord));
    for (const { text } of [...hazardStatements, ...precautionaryStatements, ...supplemental])
      expect(page).toContain(letters(text));
    expect(page).toContain(letters('DRAFT for qualified review'));
    expect(page).toContain(letters(code));
    expect(page).toMatch(/555/);
  });

  it('has a bar code that a decoder reads from the rendered page', async () => {
    const canvas = await renderPage(bytesOf(out, labelName()), 1, 300);
    const found = (await decode(canvas)).map(({ text }) => text.padStart(13, '0'));
    const record = readFileSync(join(out, '..', '..', file), 'utf8');
    const expected = gtin ?? /^ {4}gtin: "(\d+)"/m.exec(record)?.[1];
    expect(found).toEqual(expected ? [expected] : []);
  });

  // Contract: a copy that may leave the shop carries no record and no reasons.
  it('has a data sheet with sixteen sections in order, tagged, with its own data attached and no more', async () => {
    const bytes = bytesOf(out, 'sds.pdf');
    const pages = await extractText(bytes);
    const text = letters(pages.join(''));
    let from = 0;
    for (const [at, title] of sections.entries()) {
      const found = text.indexOf(letters(`${at + 1}. ${title}`), from);
      expect(found, title).toBeGreaterThanOrEqual(from);
      from = found + 1;
    }
    for (const { text: words } of [...elements.hazardStatements, ...elements.precautionaryStatements])
      expect(text).toContain(letters(words));
    for (const [at, page] of pages.entries())
      expect(letters(page)).toMatch(new RegExp(`(Page)?${at + 1}of${pages.length}`, 'i'));
    const pdf = await openPdf(bytes);
    try {
      expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
      const attached = (await pdf.getAttachments()) as Record<string, { content: Uint8Array }>;
      // A copy that leaves the shop carries the data of its own pages, never the record or the reasons.
      expect(Object.keys(attached)).toEqual(['sds.json']);
      expect(Buffer.from(attached['sds.json']!.content)).toEqual(Buffer.from(bytesOf(out, 'sds.json')));
    } finally {
      await pdf.loadingTask.destroy();
    }
  });

  it('says nowhere that anything is compliant or approved', async () => {
    const texts = names
      .filter(name => !name.endsWith('.pdf'))
      .map(name => readFileSync(join(out, name), 'utf8'));
    const pages = await Promise.all(
      names.filter(name => name.endsWith('.pdf')).map(name => extractText(bytesOf(out, name))),
    );
    expect([...texts, ...pages.flat()].join('\n')).not.toMatch(/\bcompliant\b/i);
    expect([...texts, ...pages.flat()].join('\n')).not.toMatch(/\b(is|are|been|was) approved\b/i);
  });
});

describe('label', () => {
  it('gives the regulated panel alone', async () => {
    const out = join(workshop(), 'out');
    const done = await inProcess(label, [
      'templates/demo/patio-cleaner.yaml',
      '--only',
      'precautions',
      '--out',
      out,
      '--json',
    ]);
    expect(done).toMatchObject({ status: 0 });
    const made = JSON.parse(done.out) as { schema: string; file: string; barCode: unknown };
    expect(made).toMatchObject({ schema: 'labelwright/label/1', barCode: null });
    const bytes = bytesOf(out, made.file);
    const page = letters((await extractText(bytes)).join(''));
    // A panel to drop into artwork has no cut of its own and no bleed.
    const frame = (await PDFDocument.load(bytes)).getPage(0);
    expect(frame.getTrimBox()).toEqual(frame.getMediaBox());
    expect(new TextDecoder('latin1').decode(bytes)).not.toContain('CutContour');
    expect(page).toContain('Danger');
    expect(page).not.toContain(letters('Lifts grime'));
    expect(await decode(await renderPage(bytes, 1, 300))).toEqual([]);
  });

  it.each([
    ['width: 130 mm, height: 120 mm', 'width: 60 mm, height: 40 mm'],
    ['width: 130 mm, height: 120 mm', 'width: 15 mm, height: 200 mm'],
  ])('refuses a die that is too small, says by how much and what would hold it', async (from, to) => {
    const folder = workshop();
    const out = join(folder, 'made');
    const {
      status,
      out: said,
      err,
    } = await inProcess(label, [put(folder, 'small.yaml', demoWith([from, to])), '--out', out]);
    expect({ status, said }).toEqual({ status: 1, said: '' });
    const [, width, height] = /width: (\d+) mm, height: (\d+) mm/.exec(to)!;
    expect(err).toContain(
      `small.yaml:41:5: error: a label of ${width} x ${height} mm does not hold its text`,
    );
    expect(err).toMatch(/lacks \d+ mm of height at this width|at least \d+ % of area/);
    expect(err).toContain('29 CFR 1910.1200(f)(1)');
    expect(err).toMatch(/-> would hold it: .*\d+ x \d+ mm/);
    expect(existsSync(out)).toBe(false);
    // What it offers is true.
    const offered = [...err.split('would hold it:')[1]!.matchAll(/(?:^|; |: )?(\d+) x (\d+) mm/g)][0]!;
    const larger = demoWith([from, `width: ${offered[1]} mm, height: ${offered[2]} mm`]);
    expect(await inProcess(label, [put(folder, 'larger.yaml', larger), '--out', out])).toMatchObject({
      status: 0,
    });
  });
});

describe('packet', () => {
  it('makes the rest where a label cannot be made, and says so', async () => {
    const folder = workshop();
    const path = put(
      folder,
      'p.yaml',
      demoWith(['width: 130 mm, height: 120 mm', 'width: 60 mm, height: 40 mm']),
    );
    const { status, out, err } = await inProcess(packet, [path, '--out', join(folder, 'made')]);
    expect(status).toBe(1);
    expect(err).toContain('a label of 60 x 40 mm does not hold its text');
    const made = filesBelow(join(folder, 'made'));
    expect(out.trimEnd().split('\n').sort()).toEqual(made.map(name => join(folder, 'made', name)));
    expect(made).toEqual([
      'arrows-bottle-946.pdf',
      'case-bottle-946.pdf',
      'classification.json',
      'duties.json',
      'index.html',
      'limited-quantity-bottle-946.pdf',
      'manifest.json',
      'pallet-bottle-946.svg',
      'review.html',
      'sds.html',
      'sds.json',
      'sds.pdf',
      'transport.json',
      'work-sheet.md',
    ]);
    expect(readFileSync(join(folder, 'made', 'index.html'), 'utf8')).toContain('does not hold its text');
  });
});

describe('facts that a draft needs', () => {
  it.each([
    ['label', label],
    ['sds', sds],
    ['packet', packet],
  ] as const)('%s needs the maker', async (_, run) => {
    const folder = workshop();
    const path = put(folder, 'p.yaml', demoWith(['maker: maker.yaml\n', '']));
    const { status, out, err } = await inProcess(run, [path, '--out', join(folder, 'made')]);
    expect({ status, out }).toEqual({ status: 1, out: '' });
    expect(err).toContain('the record gives no maker, which a label and a data sheet must print');
    expect(err).toContain('add `maker: maker.yaml`');
    expect(existsSync(join(folder, 'made'))).toBe(false);
  });

  it('label needs the size of the die', async () => {
    const path = put(
      workshop(),
      'p.yaml',
      demoWith(['    label: {width: 130 mm, height: 120 mm, corner-radius: 3 mm}\n', '']),
    );
    const { status, err } = await inProcess(label, [path]);
    expect(status).toBe(1);
    expect(err).toContain('p.yaml:41:5: error: pack `bottle-946` gives no size of its label');
    expect(err).toContain('label: {width: 130 mm, height: 120 mm');
  });

  it.each([
    ['label', label],
    ['sds', sds],
  ] as const)('%s needs letters that the face has', async (_, run) => {
    const folder = workshop();
    const path = put(folder, 'p.yaml', demoWith(['name: Kerbstone Patio Cleaner', 'name: Kerbstone 清洁剂']));
    const { status, err } = await inProcess(run, [path, '--out', join(folder, 'made')]);
    expect(status).toBe(1);
    expect(err).toContain('清');
    expect(err).toContain('p.yaml');
    expect(err).toContain('replace');
    expect(existsSync(join(folder, 'made'))).toBe(false);
  });
});

describe('sds', () => {
  it.each([
    ['letter', 215.9, 279.4],
    ['a4', 210, 297],
  ])('on %s', async (paper, width, height) => {
    const out = join(workshop(), 'out');
    expect(
      await inProcess(sds, ['templates/demo/descaler.yaml', '--paper', paper, '--out', out]),
    ).toMatchObject({ status: 0 });
    const page = (await PDFDocument.load(bytesOf(out, 'sds.pdf'))).getPage(0);
    expect(millimetres(page.getWidth())).toBeCloseTo(width, 1);
    expect(millimetres(page.getHeight())).toBeCloseTo(height, 1);
  });

  it('gives the same bytes again', async () => {
    const [one, two] = [workshop(), workshop()];
    for (const out of [one, two])
      await inProcess(sds, ['templates/demo/degreaser.yaml', '--out', join(out, 'o')]);
    expect(bytesOf(one, 'o', 'sds.pdf')).toEqual(bytesOf(two, 'o', 'sds.pdf'));
  });
});

describe('init', () => {
  it('writes a record that every command takes as it stands', () => {
    const cwd = workshop();
    const { status, out, err } = labelwright(['init', 'shop'], { cwd });
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('labelwright check shop/product.yaml');
    expect(filesBelow(join(cwd, 'shop'))).toEqual(['drums/surfactant.yaml', 'maker.yaml', 'product.yaml']);
    expect(labelwright(['check', 'shop/product.yaml'], { cwd })).toMatchObject({ status: 0, err: '' });
    const made = labelwright(['packet', 'shop/product.yaml', '--as-of', TODAY], { cwd });
    expect(made.err).not.toMatch(stackTrace);
    expect(made.status).toBe(0);
    expect(filesBelow(join(cwd, 'out', 'MC-1'))).toContain('label-bottle-500.pdf');
  });

  it('overwrites nothing', async () => {
    const folder = workshop();
    const before = readFileSync(join(folder, 'maker.yaml'), 'utf8');
    const { status, err } = await inProcess(init, [folder]);
    expect(status).toBe(2);
    expect(err).toContain('maker.yaml already there; nothing written');
    expect(readFileSync(join(folder, 'maker.yaml'), 'utf8')).toBe(before);
    expect(existsSync(join(folder, 'product.yaml'))).toBe(false);
  });
});

describe('check', () => {
  it('shows the constituents, what is unknown, and writes nothing', () => {
    const cwd = workshop();
    const before = filesBelow(cwd);
    const { status, out, err } = labelwright(['check', 'patio-cleaner.yaml'], { cwd });
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('Kerbstone Patio Cleaner (KP-946): 6 constituents, 100 % by weight');
    // 380 kg of 945 kg at 12.5 %.
    expect(out).toMatch(/5\.02646 % {2}sodium hypochlorite \(7681-52-9\)/);
    expect(out).toContain('2 of 6 constituents have unknown endpoints');
    expect(filesBelow(cwd)).toEqual(before);
  });

  it('as JSON sums to 100', async () => {
    const { status, out } = await inProcess(check, ['templates/demo/patio-cleaner.yaml', '--json']);
    expect(status).toBe(0);
    const { schema, products: found } = JSON.parse(out) as {
      schema: string;
      products: { constituents: { percent: number }[] }[];
    };
    expect(schema).toBe('labelwright/check/1');
    expect(found[0]!.constituents.reduce((sum, { percent }) => sum + percent, 0)).toBeCloseTo(100, 9);
  });
});
