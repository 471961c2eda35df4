import { beforeAll, describe, expect, it } from 'vitest';
import { sheetDocument } from '../../../src/document/sheet.ts';
import type { Template } from '../../../src/document/template.ts';
import type { Attachment, PagedDocument, Tag } from '../../../src/layout/frame.ts';
import { layoutSheet, type PaperName } from '../../../src/layout/sheet/layout-sheet.ts';
import { pdfua1Faults } from '../../../src/pdf/conformance/pdfua1.ts';
import { writePdf } from '../../../src/pdf/write.ts';
import { loadFonts } from '../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import law from '../../document/sheet/appendix-d.json' with { type: 'json' };
import { inputAround, sheetInput, sheetTemplate } from '../../document/sheet/sheet-input.ts';
import { SHEET } from '../../support/paged-documents.ts';
import { extractText, openPdf } from '../../support/render.ts';

let fonts: FontLibrary;
let template: Template;

beforeAll(async () => {
  fonts = await loadFonts();
  template = await sheetTemplate();
});

const attachment: Attachment = {
  name: 'record.json',
  mediaType: 'application/json',
  description: 'Product record',
  relationship: 'Source',
  bytes: new TextEncoder().encode('{"code":"KP-946"}'),
};

interface LaidOut {
  readonly document: PagedDocument;
  readonly bytes: Uint8Array;
}

const known = new Map<string, Promise<LaidOut>>();

/** Laid out once for each record, paper and standing. */
function laidOut(record: string, paper: PaperName = 'letter', draft = true): Promise<LaidOut> {
  const key = `${record} ${paper} ${draft}`;
  const made = known.get(key) ?? layOut(record, paper, draft);
  known.set(key, made);
  return made;
}

async function layOut(record: string, paper: PaperName, draft: boolean): Promise<LaidOut> {
  const input = await sheetInput(`templates/demo/${record}.yaml`, { draft });
  const document = layoutSheet(sheetDocument(input, template), fonts, { paper, attachments: [attachment] });
  return { document, bytes: await writePdf(document, fonts, SHEET) };
}

const all = (tag: Tag): Tag[] => [tag, ...tag.children.flatMap(all)];
const plain = (text: string) => text.replace(/\s+/gu, ' ').toLowerCase();
/** Without spaces, since a line may end after a slash or a hyphen. */
const dense = (text: string) => text.replace(/\s+/gu, '').toLowerCase();

describe('a page', () => {
  it.each(['patio-cleaner', 'degreaser', 'descaler'])(
    'begins with a heading, or one again, so that its first lines belong to something: %s',
    async record => {
      const { bytes } = await laidOut(record);
      const pdf = await openPdf(bytes);
      for (let number = 2; number <= pdf.numPages; number += 1) {
        const { items } = await (await pdf.getPage(number)).getTextContent();
        const texts = items.flatMap(item =>
          'str' in item && item.str.trim() !== '' ? [{ x: item.transform[4], y: item.transform[5] }] : [],
        );
        // 21 mm of margin hold the running head; the subheadings stand at the left margin, texts beside them.
        const body = texts.filter(({ y }) => y < ((279.4 - 21) / 25.4) * 72);
        const top = Math.max(...body.map(({ y }) => y));
        const first = body.filter(({ y }) => y > top - 12);
        expect(Math.min(...first.map(({ x }) => x)), `page ${number}`).toBeLessThan((30 / 25.4) * 72);
      }
      await pdf.loadingTask.destroy();
    },
  );
});

describe.each([
  ['patio-cleaner', 'letter'],
  ['degreaser', 'a4'],
  ['descaler', 'letter'],
] as const)('the pages of %s on %s', (record, paper) => {
  it('show the sixteen headings in order and every subheading of Appendix D', async () => {
    const { bytes } = await laidOut(record, paper);
    const text = dense((await extractText(bytes)).join('\n'));
    const starts = law.sections.map(([heading], at) =>
      text.indexOf(dense(`${at + 1}. ${heading as string}`)),
    );
    expect(starts.every(start => start >= 0)).toBe(true);
    expect([...starts].sort((a, b) => a - b)).toEqual(starts);
    for (const [at, [, words]] of law.sections.entries()) {
      const part = text.slice(starts[at], starts[at + 1]);
      for (const word of words as string[]) expect(part).toContain(dense(word));
    }
  });

  it('count the pages and carry the notice on each', async () => {
    const { bytes } = await laidOut(record, paper);
    const pages = await extractText(bytes);
    expect(pages.length).toBeGreaterThan(3);
    for (const [at, page] of pages.entries()) {
      expect(page).toContain(`Page ${at + 1} of ${pages.length}`);
      expect(page).toContain('DRAFT for qualified review');
      expect(plain(page)).not.toMatch(/undefined|\bnull\b|\[object|compliant|approved/u);
    }
  });

  it('keep everything inside the margins', async () => {
    const { document } = await laidOut(record, paper);
    for (const { items, width, height } of document.frames) {
      for (const item of items) {
        if (item.kind !== 'text') continue;
        const end = item.x + (item.run.advance * item.size * 25.4) / 72_000;
        expect(item.x).toBeGreaterThan(15);
        expect(end, item.run.text).toBeLessThan(width - 15);
        expect(item.y).toBeGreaterThan(8);
        expect(item.y).toBeLessThan(height - 8);
      }
    }
  });
});

// Common practice, no source: a last page with a few lines looks like a mistake. Section 16 of the degreaser has most.
it.each(['patio-cleaner', 'degreaser', 'descaler'])(
  '%s on Letter has no nearly empty last page',
  async record => {
    const { document } = await laidOut(record, 'letter');
    const { items, height } = document.frames.at(-1)!;
    const texts = items.flatMap(item =>
      item.kind === 'text' && typeof item.tag === 'object' ? [item.y] : [],
    );
    expect(height - Math.min(...texts)).toBeGreaterThan(0.25 * height);
  },
);

describe('the structure tree', () => {
  it('holds to the rules of PDF/UA-1 that can be read from it', async () => {
    const { document } = await laidOut('degreaser');
    expect(pdfua1Faults(document)).toEqual([]);
    const types = all(document.root).map(({ type }) => type);
    expect(types.filter(type => type === 'H1')).toHaveLength(1);
    expect(types.filter(type => type === 'H2')).toHaveLength(16);
    expect(types).toEqual(
      expect.arrayContaining(['H3', 'P', 'L', 'LI', 'Table', 'THead', 'TH', 'TD', 'Figure']),
    );
  });

  it('comes back from the file with names for the pictograms and scopes for header cells', async () => {
    const { bytes } = await laidOut('degreaser');
    const pdf = await openPdf(bytes);
    const trees = await Promise.all(
      Array.from({ length: pdf.numPages }, async (_, at) => (await pdf.getPage(at + 1)).getStructTree()),
    );
    const text = JSON.stringify(trees);
    expect(text).toContain('GHS02 flame');
    expect(text).toContain('"role":"H2"');
    expect((await pdf.getMetadata()).info).toMatchObject({
      Title:
        'Safety data sheet: Peelworks Citrus Degreaser, Product code CD-500, Revision 1, Date 2026-11-10',
    });
    await pdf.loadingTask.destroy();
  });

  it('has text for every tag that should hold some', async () => {
    const { document } = await laidOut('patio-cleaner');
    const used = new Set(document.frames.flatMap(({ items }) => items.map(({ tag }) => tag)));
    for (const tag of all(document.root))
      if (['H1', 'H2', 'H3', 'P', 'TH', 'TD', 'LBody', 'Lbl', 'Figure'].includes(tag.type))
        expect(used.has(tag)).toBe(true);
  });

  it('repeats the head of a table that runs over pages, as an artifact only', async () => {
    const names = Array.from({ length: 60 }, (_, at) => `ingredient ${at + 1}`);
    const input = await inputAround({
      formula: [
        ...names.map(name => ({ name, percent: 1, hazards: ['Skin Irrit. 2'], source: 'test' })),
        { name: 'water', amount: 'balance' },
      ],
    });
    const { frames } = layoutSheet(sheetDocument(input, template), fonts, { paper: 'letter' });
    const heads = frames.flatMap(({ items }, page) =>
      items.flatMap(item =>
        item.kind === 'text' && item.run.text === 'CAS number' ? [{ page, tag: item.tag }] : [],
      ),
    );
    expect(heads.length).toBeGreaterThan(1);
    expect(new Set(heads.map(({ page }) => page)).size).toBe(heads.length);
    expect(heads.map(({ tag }) => typeof tag === 'string')).toEqual(heads.map((_, at) => at > 0));
  });
});

describe('the file', () => {
  it('carries the attachments', async () => {
    const { bytes } = await laidOut('patio-cleaner');
    const pdf = await openPdf(bytes);
    const files = (await pdf.getAttachments()) as Record<string, { content: Uint8Array }>;
    expect(new TextDecoder().decode(files['record.json']!.content)).toBe('{"code":"KP-946"}');
    await pdf.loadingTask.destroy();
  });

  it('is the same for the same input', async () => {
    const [one, other] = [await layOut('descaler', 'letter', true), await layOut('descaler', 'letter', true)];
    expect(Buffer.compare(Buffer.from(one.bytes), Buffer.from(other.bytes))).toBe(0);
  });

  it('has the size of its paper', async () => {
    // ANSI/ASME Y14.1 size A, 8.5 in by 11 in; ISO 216 A4.
    const [letter, a4] = [await laidOut('descaler', 'letter'), await laidOut('descaler', 'a4')];
    expect(letter.document.frames[0]).toMatchObject({ width: 215.9, height: 279.4, bleed: 0 });
    expect(a4.document.frames[0]).toMatchObject({ width: 210, height: 297, bleed: 0 });
  });

  it('drops the notice once it is signed', async () => {
    const { bytes } = await laidOut('descaler', 'letter', false);
    for (const page of await extractText(bytes)) expect(page).not.toContain('DRAFT');
  });

  it('sets a name that is wider than the head of the page', async () => {
    const input = await sheetInput('templates/demo/descaler.yaml');
    const name = 'Extraordinarily long product name '.repeat(8).trim();
    const model = sheetDocument({ ...input, record: { ...input.record, name } }, template);
    const { frames } = layoutSheet(model, fonts, { paper: 'letter' });
    const head = frames[1]!.items.find(item => item.kind === 'text' && item.tag === 'header')!;
    expect(head.kind === 'text' && head.run.text.endsWith('…')).toBe(true);
  });
});
