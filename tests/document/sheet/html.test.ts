import { describe, expect, it } from 'vitest';
import { sheetDocument, sheetHtml } from '../../../src/document/sheet.ts';
import css from '../../../templates/sheets/sheet-css.json' with { type: 'json' };
import { sheetInput, sheetTemplate } from './sheet-input.ts';

const page = async () =>
  sheetHtml(sheetDocument(await sheetInput('templates/demo/patio-cleaner.yaml'), await sheetTemplate()));

describe('the web page', () => {
  // HTML Living Standard 3.2.6 allows any; HTML 4 and selectors of CSS 2.1 ask for a letter first.
  it('has identifiers that begin with a letter, each once', async () => {
    const ids = [...(await page()).matchAll(/ id="([^"]*)"/gu)].map(([, id]) => id!);
    expect(ids.length).toBeGreaterThan(90);
    expect(ids.filter(id => !/^[a-z][a-z0-9-]*$/u.test(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('parts no CAS or telephone number at the end of a line', async () => {
    const html = await page();
    expect(css.rules.join('\n')).toContain('.whole { white-space: nowrap; }');
    expect(html).toContain('<span class="whole">7681-52-9</span>');
    expect(html).toContain('<span class="whole">+1 216 555 0142</span>');
    const outside = html.replace(/<span class="whole">[^<]*<\/span>/gu, '').replace(/^.*<\/style>/su, '');
    expect(outside).not.toMatch(/\b\d{2,7}-\d{2}-\d\b/u);
  });

  // CSS Paged Media Level 3, 4: margin boxes of a page.
  it('says on every page in print that it is a draft, with product and page', async () => {
    const input = await sheetInput('templates/demo/patio-cleaner.yaml');
    const named = { ...input, record: { ...input.record, code: 'A"</style>\\' } };
    const html = sheetHtml(sheetDocument(named, await sheetTemplate()));
    expect(html).toContain('@top-center { content: "DRAFT for qualified review";');
    expect(html).toMatch(/@bottom-left \{ content: "Product code A\\22 \\3c \/style>\\5c /u);
    expect(html).toContain('counter(page) " / " counter(pages)');
    expect(html.match(/<\/style>/gu)).toHaveLength(1);
  });

  it('parts no EC number either', async () => {
    const input = await sheetInput('templates/demo/degreaser.yaml', {}, 'eu-clp');
    const html = sheetHtml(sheetDocument(input, await sheetTemplate()));
    expect(html).toContain('<span class="whole">227-813-5</span>');
  });

  it('sets no grid, whose rows break over pages in print with text over text', () => {
    expect(css.rules.join('\n')).not.toMatch(/grid/u);
  });
});
