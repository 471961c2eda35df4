import { readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { beforeAll, describe, expect, it } from 'vitest';
import { nodeFiles } from '../../src/cli/files.ts';
import { type ClassifiedProduct, classifyProduct } from '../../src/draft/classified-product.ts';
import { openProduct, productOf } from '../../src/draft/open-product.ts';
import { openReference } from '../../src/draft/open-reference.ts';
import { makePacket, type Packet, REVIEW_PAGE } from '../../src/draft/packet.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import type { FontLibrary } from '../../src/text/glyph-run.ts';
import { en } from '../../src/words/en/index.ts';
import { recordAround } from '../document/sheet/sheet-input.ts';
import { accessibilityFaults, markupFaults } from '../support/web-page.ts';

const TODAY = '2026-11-25';
const TWO_MARKETS = 'an alkaline cleaner for two markets, its impurities searched for';
const TWO_LABELS = 'a label in the color of its maker that fits, and one that does not';

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

const classified = async (opened: ReturnType<typeof openProduct>): Promise<ClassifiedProduct> => {
  const reference = await openReference('us-hcs', TODAY);
  if (!opened.ok || !reference.ok)
    throw new Error(JSON.stringify([...opened.diagnostics, ...reference.diagnostics]));
  return classifyProduct(opened.value, reference.value);
};

const pack = { id: 'bottle', contents: '1 L', label: { width: '130 mm', height: '120 mm' } };

/** Products of the demo, one for two markets with ranges and lacks, one whose label does not fit. All invented. */
const products: Readonly<Record<string, () => Promise<ClassifiedProduct>>> = {
  'patio cleaner': () => classified(openProduct('templates/demo/patio-cleaner.yaml', nodeFiles)),
  descaler: () => classified(openProduct('templates/demo/descaler.yaml', nodeFiles)),
  degreaser: () => classified(openProduct('templates/demo/degreaser.yaml', nodeFiles)),
  [TWO_MARKETS]: () =>
    classified(
      productOf(
        recordAround({
          'sold-to': { users: ['workplace', 'consumers'], markets: ['us', 'eu'] },
          formula: [
            { name: 'sodium hydroxide', cas: '1310-73-2', percent: '1-3' },
            { name: 'methanol', cas: '67-56-1', percent: 4 },
            { name: 'builder <blend> & "more"', percent: 3 },
            { name: 'water', cas: '7732-18-5', amount: 'balance' },
          ],
          sds: { impurities: { searched: 'A. Sample, the files of the trial shop' } },
          packs: [pack],
        }),
        nodeFiles,
      ),
    ),
  [TWO_LABELS]: () =>
    classified(
      productOf(
        recordAround({
          maker: {
            name: 'Tallow Lane Batch Works',
            address: ['48 Tallow Lane', 'Sampleton, OH 44000'],
            telephone: '+1 216 555 0142',
            emergency: { telephone: '+1 216 555 0199', hours: '24 hours' },
            brand: { color: 'cmyk(0, 20, 90, 0)' },
          },
          properties: { pH: 13 },
          formula: [
            { name: 'sodium hydroxide', cas: '1310-73-2', percent: 3 },
            { name: 'water', cas: '7732-18-5', amount: 'balance' },
          ],
          packs: [pack, { ...pack, id: 'vial', label: { width: '20 mm', height: '15 mm' } }],
        }),
        nodeFiles,
      ),
    ),
};

const plain = (text: string | null | undefined): string => (text ?? '').replace(/\s+/gu, ' ').trim();
const linear = (part: number): number => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
/** Relative luminance, WCAG 2.2. */
const luminance = (color: string): number => {
  const [red, green, blue] = [1, 3, 5].map(at => linear(Number.parseInt(color.slice(at, at + 2), 16) / 255));
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
};

describe.each(Object.keys(products))('the reviewer’s page of %s', name => {
  let packet: Packet;
  let product: ClassifiedProduct;
  let html: string;
  let document: Document;
  const json = (file: string) => JSON.parse(packet.files.find(each => each.name === file)!.bytes as string);
  const sheets = () => packet.files.filter(({ name: file }) => /^sds.*\.json$/.test(file));

  beforeAll(async () => {
    product = await products[name]!();
    packet = await makePacket(product, TODAY, fonts, en);
    html = packet.files.find(file => file.name === REVIEW_PAGE)!.bytes as string;
    document = new JSDOM(html).window.document;
  });

  it('is a review copy, says that all is a draft, and holds no script', () => {
    const meta = (id: string) =>
      document.querySelector(`meta[name="labelwright:${id}"]`)?.getAttribute('content');
    expect(meta('copy')).toBe('review');
    expect(meta('fingerprint')).toBe(json('classification.json').fingerprint);
    expect(packet.files.find(file => file.name === REVIEW_PAGE)!.kind).toBe('review');
    expect(plain(document.querySelector('.draft')?.textContent)).toMatch(/draft for qualified review/i);
    expect(document.querySelectorAll('script, [onclick], link, img')).toHaveLength(0);
    expect(html).not.toMatch(/\b(compliant|approved)\b/i);
  });

  it('names every open item with its key, first in the list and at its place', () => {
    const list = plain(document.querySelector('#check')?.textContent);
    let [items, open] = [0, 0];
    for (const { bytes } of sheets()) {
      const sheet = JSON.parse(bytes as string);
      for (const { number, items: all } of sheet.sections)
        for (const { key, state, heading } of all) {
          items += 1;
          const id = `${sheet.basis.id}-section-${number}-${key}`;
          const row = document.getElementById(id);
          expect(row, id).not.toBeNull();
          expect(row!.className, id).toBe(state);
          if (state !== 'open') continue;
          open += 1;
          expect(list).toContain(plain(heading));
          expect(document.querySelector(`#check a[href="#${id}"]`), id).not.toBeNull();
          expect(plain(row!.textContent)).toMatch(/`sds: |no key of its own/);
        }
    }
    expect(items).toBeGreaterThan(60);
    expect(open).toBeGreaterThan(3);
  });

  it('names every warning, every open class and every reading of the classification', () => {
    const { warnings, readings, hazards, otherClasses } = json('classification.json');
    const list = plain(document.querySelector('#check')?.textContent);
    for (const { text } of warnings) expect(list).toContain(plain(text));
    const taken = plain(document.querySelector('#readings')?.textContent);
    for (const reading of readings) {
      expect(taken).toContain(reading.id);
      expect(taken).toContain(plain(reading.taken));
      expect(taken).toContain(plain(reading.cite));
    }
    const classes = plain(document.getElementById('us-hcs-section-2')?.textContent);
    for (const { because } of [...hazards, ...otherClasses]) {
      expect(classes).toContain(plain(because.working));
      expect(classes).toContain(plain(because.cite));
    }
    for (const { class: of, outcome } of otherClasses)
      if (outcome === 'insufficient-data') expect(list).toContain(of);
  });

  it('names what transport lacks, duties that ask, findings and what could not be made', () => {
    const list = plain(document.querySelector('#check')?.textContent);
    for (const { message } of packet.diagnostics.filter(({ severity }) => severity !== 'error'))
      expect(list).toContain(plain(message));
    for (const { name: file, reason } of packet.missing) {
      expect(list).toContain(file);
      expect(list).toContain(plain(reason));
    }
    for (const { id, state, text, cite } of json('duties.json').duties) {
      if (state !== 'due' && state !== 'open') continue;
      // Rules on packaging that ask the same stand in one line, each with its paragraph.
      if (list.includes(plain(text))) continue;
      expect(id).toBe('child-resistant');
      expect(list).toContain(/\(a\)\(\d+\)$/.exec(cite)![0]);
    }
  });

  it('puts the worst first and numbers the points through', () => {
    const order = [...document.querySelectorAll('#check h3')].map(({ id }) => id.replace('group-', ''));
    const rank = ['blocked', 'classification', 'facts', 'open', 'duty', 'judgement', 'open-optional', 'note'];
    expect(order).toEqual(rank.filter(group => order.includes(group)));
    const points = [...document.querySelectorAll('#check li')].map(({ id }) => id);
    expect(points).toEqual(points.map((_, at) => `point-${at + 1}`));
    if (packet.missing.length > 0) expect(order[0]).toBe('blocked');
  });

  it('shows each label that was made as a drawing', () => {
    const labels = packet.files.filter(({ name: file }) => file.endsWith('.pdf') && !file.startsWith('sds'));
    expect(document.querySelectorAll('#labels svg[role="img"]')).toHaveLength(labels.length);
    for (const use of document.querySelectorAll('#labels use'))
      if (!document.getElementById(use.getAttribute('href')!.slice(1)))
        expect.unreachable('a glyph is missing');
    for (const { name: file } of labels)
      expect(document.querySelector(`#labels a[href="${file}"]`), file).not.toBeNull();
  });

  it('has ids that are there once, and links that lead somewhere', () => {
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[A-Za-z][\w.-]*$/);
    const files = new Set([...packet.files.map(file => file.name), 'index.html']);
    for (const link of document.querySelectorAll('a[href]')) {
      const to = link.getAttribute('href')!;
      if (to.startsWith('#')) expect(ids, to).toContain(to.slice(1));
      else expect(files, to).toContain(to);
    }
  });

  it('is named first by the index, and by no document that may leave the shop', () => {
    const index = packet.files.find(file => file.name === 'index.html')!.bytes as string;
    const [first] = new JSDOM(index).window.document.querySelectorAll('a[href]');
    expect(first!.getAttribute('href')).toBe(REVIEW_PAGE);
    for (const { name: file, bytes, kind } of packet.files)
      if (kind === 'distribution')
        expect(
          Buffer.from(bytes as string)
            .toString('latin1')
            .includes(REVIEW_PAGE),
          file,
        ).toBe(false);
  });
});

describe('the reviewer’s page', () => {
  // Axe-core, an open set of rules for WCAG 2.2: what it can judge without layout. Two sheets, and a label that is missing.
  it.each([TWO_MARKETS, TWO_LABELS])(
    'has no fault that a checker of accessibility finds: %s',
    async name => {
      const packet = await makePacket(await products[name]!(), TODAY, fonts, en);
      const html = packet.files.find(file => file.name === REVIEW_PAGE)!.bytes as string;
      expect(await accessibilityFaults(html)).toEqual([]);
      expect(await markupFaults(html)).toEqual([]);
    },
    60_000,
  );

  it('has colors that stand out 4.5 to 1, WCAG 2.2, 1.4.3', () => {
    const css = readFileSync('templates/packet/review.hbs', 'utf8').split('</style>')[0]!;
    const inks = [...css.matchAll(/[{;]\s*color: (#[0-9a-f]{3,6})/g)].map(([, color]) =>
      color!.length === 4 ? color!.replace(/[0-9a-f]/g, '$&$&') : color!,
    );
    expect(inks.length).toBeGreaterThan(2);
    for (const ink of inks) expect(1.05 / (luminance(ink) + 0.05), ink).toBeGreaterThanOrEqual(4.5);
  });

  it('shows sheets and labels in Spanish beside the English ones, item by item', async () => {
    const packet = await makePacket(await products['patio cleaner']!(), TODAY, fonts, en, {
      languages: ['en', 'es'],
    });
    const text = (name: string) => packet.files.find(file => file.name === name)!.bytes as string;
    const html = text(REVIEW_PAGE);
    const { document } = new JSDOM(html).window;
    const rows = [...document.querySelectorAll('#spoken-0 tbody tr')].map(({ children: [read, said] }) => ({
      language: said!.getAttribute('lang'),
      read: plain(read!.textContent),
      said: plain(said!.textContent),
    }));
    const items = (name: string) =>
      (
        JSON.parse(text(name)) as { sections: { items: { key: string; heading: string; text?: string }[] }[] }
      ).sections.flatMap(section => section.items);
    const [english, spanish] = [items('sds.json'), items('sds-es.json')];
    expect(rows).toHaveLength(english.length);
    for (const [at, row] of rows.entries()) {
      expect(spanish[at]!.key).toBe(english[at]!.key);
      for (const [item, shown] of [
        [english[at]!, row.read],
        [spanish[at]!, row.said],
      ] as const) {
        expect(shown).toContain(plain(item.heading));
        for (const line of (item.text ?? '').split('\n')) expect(shown).toContain(plain(line));
      }
      expect(row.language).toBe('es');
    }
    expect(rows.some(({ said }) => said.includes('Provoca quemaduras graves en la piel'))).toBe(true);
    const labels = [...document.querySelectorAll('#labels figcaption a')].map(link => link.textContent);
    expect(labels.filter(name => name?.endsWith('-es.pdf'))).toHaveLength(1);
    expect(await markupFaults(html)).toEqual([]);
  });

  it('tells who searched, where, in the words of the record', async () => {
    const packet = await makePacket(await products[TWO_MARKETS]!(), TODAY, fonts, en);
    const html = packet.files.find(file => file.name === REVIEW_PAGE)!.bytes as string;
    const row = new JSDOM(html).window.document.getElementById('us-hcs-section-3-impurities');
    expect(row?.className).toBe('searched');
    expect(plain(row?.textContent)).toContain('A. Sample, the files of the trial shop');
    expect(html).toContain('builder &lt;blend&gt; &amp;');
  });
});
