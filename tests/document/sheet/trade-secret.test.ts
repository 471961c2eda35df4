import { inflateSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../src/cli/files.ts';
import { sheetJson } from '../../../src/document/sheet.ts';
import { classifyProduct } from '../../../src/draft/classified-product.ts';
import { type DraftSheet, draftSheet } from '../../../src/draft/draft-sheet.ts';
import { productOf } from '../../../src/draft/open-product.ts';
import { openReference } from '../../../src/draft/open-reference.ts';
import type { Outcome } from '../../../src/report/diagnostic.ts';
import { loadFonts } from '../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { en } from '../../../src/words/en/index.ts';
import { extractText, openPdf } from '../../support/render.ts';
import { inputAround, recordAround } from './sheet-input.ts';

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.diagnostics));
  return outcome.value;
};

type Line = Record<string, unknown>;

async function drafted(formula: Line[], more: Record<string, unknown> = {}): Promise<Outcome<DraftSheet>> {
  const product = must(productOf(recordAround({ formula, ...more }), nodeFiles));
  const classified = classifyProduct(product, must(await openReference('us-hcs', '2026-11-25')));
  return draftSheet(classified, { date: '2026-11-25', paper: 'letter' }, fonts, en);
}

const items = async (formula: Line[], section: number) => {
  const found = sheetJson(await inputAround({ formula })).sections[section - 1]!.items;
  return (key: string) => found.find(item => item.key === key)!;
};

/** What a PDF holds: its bytes raw and with every stream inflated, and what a reader is told. */
async function contentsOf(pdf: Uint8Array): Promise<{ readonly bytes: string; readonly told: string }> {
  const bytes = Buffer.from(pdf);
  const parts = [bytes.toString('latin1')];
  for (let at = bytes.indexOf('stream'); at >= 0; at = bytes.indexOf('stream', at + 6)) {
    const start = at + (bytes[at + 6] === 13 ? 8 : 7);
    const end = bytes.indexOf('endstream', start);
    if (end < 0 || bytes.subarray(at - 3, at).toString() === 'end') continue;
    try {
      const data = inflateSync(bytes.subarray(start, end), { finishFlush: 2 });
      parts.push(data.toString('latin1'), data.toString('utf8'));
    } catch {
      parts.push(bytes.subarray(start, end).toString('utf8'));
    }
  }
  const told = [(await extractText(pdf)).join('\n')];
  const document = await openPdf(pdf);
  const files = (await document.getAttachments()) as Record<string, { content: Uint8Array }> | null;
  for (const [name, { content }] of Object.entries(files ?? {}))
    told.push(name, new TextDecoder().decode(content));
  told.push(JSON.stringify(await document.getMetadata()));
  await document.loadingTask.destroy();
  return { bytes: parts.join('\n'), told: told.join('\n') };
}

const water = { name: 'water', amount: 'balance' };
// Odd figures, so that finding one is no chance.
const SECRET = { name: '2-butoxyethanol', cas: '111-76-2', percent: 7.373 };
const formula: Line[] = [
  { ...SECRET, 'trade-secret': ['identity', 'percent'] },
  { name: 'sodium hydroxide', cas: '1310-73-2', percent: 2.419 },
  { name: 'trial builder', percent: 0.617, hazards: [], source: 'test' },
  water,
];

describe('a distribution copy', () => {
  it('holds no withheld name, CAS number, index number or percent in any byte of PDF, HTML and JSON', async () => {
    const { pdf, html, json } = must(await drafted(formula));
    // 603-014-00-0 is the index number of the ingredient in CLP Annex VI, Z-1 names it too.
    const { bytes, told } = await contentsOf(pdf);
    for (const text of [bytes, told, html, json])
      expect(/butoxyethanol|111-76-2|603-014-00-0/iu.exec(text)).toBeNull();
    // The drawing of a page is full of numbers: a percent is sought in what is told.
    for (const text of [told, html, json]) expect(/\b7\.37|\b7\.4 %/u.exec(text)).toBeNull();
  });

  it('is searched in earnest: without the claim all of it is found', async () => {
    const others = formula.slice(1);
    const { pdf, html, json } = must(await drafted([SECRET, ...others]));
    const { told } = await contentsOf(pdf);
    for (const text of [told, html, json])
      for (const word of [/butoxyethanol/iu, /111-76-2/u, /603-014-00-0/u, /\b7\.37/u])
        expect(text).toMatch(word);
  });

  it('holds nothing of an ingredient that section 3 does not disclose', async () => {
    const { pdf, html, json } = must(await drafted(formula));
    const { bytes, told } = await contentsOf(pdf);
    for (const text of [bytes, told, html, json]) expect(/trial builder/u.exec(text)).toBeNull();
    for (const text of [told, html, json]) expect(/\b0\.617/u.exec(text)).toBeNull();
  });

  it('carries its own data alone and says what kind of copy it is', async () => {
    const { pdf, html, json } = must(await drafted(formula));
    const document = await openPdf(pdf);
    const files = (await document.getAttachments()) as Record<string, { content: Uint8Array }>;
    expect(Object.keys(files)).toEqual(['sds.json']);
    expect(new TextDecoder().decode(files['sds.json']!.content)).toBe(json);
    expect((await document.getMetadata()).info).toMatchObject({
      Subject: expect.stringContaining('distribution'),
    });
    await document.loadingTask.destroy();
    expect(JSON.parse(json).copy).toBe('distribution');
    expect(html).toContain(
      '<meta name="description" content="Safety data sheet, draft for qualified review, distribution copy">',
    );
  });

  it('has no word for the reviewer in section 16', async () => {
    const { json } = must(await drafted(formula));
    expect(JSON.stringify(JSON.parse(json).sections[15])).not.toMatch(/reviewer|reading|left off/iu);
  });
});

// 29 CFR 1910.1200(i)(1), text of 20 May 2024, read.
describe('trade-secret claims', () => {
  it('gives the narrowest prescribed range in place of the percent ((i)(1)(iv), (v))', async () => {
    const of = await items([{ ...SECRET, 'trade-secret': 'percent' }, water], 3);
    // (F) from 7 % to 13 % and (E) from 5 % to 10 %: (E) is narrower.
    expect(of('ingredients').table![0]).toMatchObject({
      'Chemical name': '2-butoxyethanol',
      'CAS number': '111-76-2',
      'Concentration, % by weight': '5 to 10',
    });
    expect(of('trade-secret').text).toContain(
      'The exact concentration or concentration range of composition is being withheld as a trade secret',
    );
    expect(of('trade-secret').text).not.toContain('chemical identity');
  });

  it('shows the name of the claim, else a number, in place of the identity ((i)(1)(iii))', async () => {
    const named = { claim: ['identity'], 'shown-as': 'glycol ether' };
    const of = await items([{ ...SECRET, 'trade-secret': named }, water], 3);
    expect(of('ingredients').table![0]).toMatchObject({
      'Chemical name': 'glycol ether',
      'CAS number': 'Withheld as a trade secret',
      'Concentration, % by weight': '7.37',
    });
    const plain = await items([{ ...SECRET, 'trade-secret': 'identity' }, water], 3);
    expect(plain('ingredients').table![0]!['Chemical name']).toBe('Trade secret ingredient 1');
    expect(plain('trade-secret').text).toContain(
      'The specific chemical identity is being withheld as a trade secret',
    );
    // (i)(1)(ii): properties and effects are told all the same.
    expect(plain('ingredients').table![0]!['Classification of the ingredient']).toContain('Acute toxicity');
  });

  it.each([
    // Below (A); across more than two consecutive ranges; above (G) where no single one holds it.
    [{ percent: 0.05 }, /no prescribed range .* holds 0\.05 % 2-butoxyethanol/u],
    [{ percent: '0.2-12' }, /no prescribed range/u],
    [{ percent: '35-90' }, /no prescribed range/u],
  ])('refuses a claim of %j, for which there is no range', async (share, message) => {
    const outcome = await drafted([{ ...SECRET, ...share, 'trade-secret': 'percent' }, water]);
    expect(outcome.ok).toBe(false);
    expect(outcome.diagnostics[0]).toMatchObject({ code: 'trade-secret-range', severity: 'error' });
    expect(outcome.diagnostics[0]!.message).toMatch(message);
  });

  it('refuses a sheet whose own text names what is withheld', async () => {
    const outcome = await drafted(formula, { sds: { spill: 'Rinse off 2-Butoxyethanol with water.' } });
    expect(outcome.diagnostics.map(({ code }) => code)).toContain('trade-secret-told');
    expect(outcome.ok).toBe(false);
  });

  it('tells whose range it is', async () => {
    const drum = { use: { name: 'blend', formula: [{ ...SECRET, percent: '30-40' }, water] }, percent: 20 };
    const supplied = await items(
      [drum, { name: 'sodium hydroxide', cas: '1310-73-2', percent: '1-2' }, water],
      3,
    );
    expect(supplied('concentrations').text).toContain(
      "The range is that of the supplier's data: 2-butoxyethanol.",
    );
    expect(supplied('concentrations').text).toContain(
      'The range shows the variation of the formula from batch to batch: sodium hydroxide.',
    );
  });

  it('does not say that no trade secret is claimed beside an ingredient that its supplier withholds', async () => {
    const drum = {
      use: { name: 'blend 7', hazards: ['Skin Irrit. 2'], source: 'supplier sheet' },
      percent: 20,
    };
    const of = await items([drum, water], 3);
    expect(of('trade-secret').text).toBe('The composition is withheld by its supplier: blend 7.');
    const open = await items([SECRET, water], 3);
    expect(open('trade-secret').text).toBe('No trade secret is claimed.');
  });
});
