import { beforeAll, describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../../src/cli/files.ts';
import { classifyProduct } from '../../../../src/draft/classified-product.ts';
import { type DraftSheet, draftSheet } from '../../../../src/draft/draft-sheet.ts';
import { openProduct, productOf } from '../../../../src/draft/open-product.ts';
import { openReference } from '../../../../src/draft/open-reference.ts';
import { makePacket } from '../../../../src/draft/packet.ts';
import { preflight } from '../../../../src/preflight/preflight.ts';
import type { BasisId } from '../../../../src/reference/basis.ts';
import type { Outcome } from '../../../../src/report/diagnostic.ts';
import { loadFonts } from '../../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../../src/text/glyph-run.ts';
import { en } from '../../../../src/words/en/index.ts';
import { extractText, openPdf } from '../../../support/render.ts';
import { recordAround } from '../sheet-input.ts';

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

const DAY = '2026-11-25';
const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.diagnostics));
  return outcome.value;
};
const classified = async (parts: Record<string, unknown>, basis: BasisId) =>
  classifyProduct(must(productOf(recordAround(parts), nodeFiles)), must(await openReference(basis, DAY)));
const drafted = async (parts: Record<string, unknown>, basis: BasisId): Promise<Outcome<DraftSheet>> =>
  draftSheet(await classified(parts, basis), { date: DAY, paper: 'a4' }, fonts, en);
const water = { name: 'water', cas: '7732-18-5', amount: 'balance' };

describe.each(['eu-clp', 'un-ghs'] as const)('a drafted sheet of %s', basis => {
  it('is tagged without a fault, its pages numbered, its data attached and its identifiers valid', async () => {
    const product = must(openProduct('templates/demo/degreaser.yaml', nodeFiles));
    const reference = must(await openReference(basis, DAY));
    const { pdf, html, json } = must(
      await draftSheet(classifyProduct(product, reference), { date: DAY, paper: 'a4' }, fonts, en),
    );
    // Our own reading of ISO 14289-1 (PDF/UA-1), from the bytes.
    expect(await preflight(pdf, { kind: 'sheet' })).toEqual([]);
    const pages = await extractText(pdf);
    for (const [at, text] of pages.entries()) expect(text).toContain(`Page ${at + 1} of ${pages.length}`);
    const document = await openPdf(pdf);
    const attached = (await document.getAttachments()) as Record<string, { content: Uint8Array }>;
    expect(new TextDecoder().decode(Object.values(attached)[0]!.content)).toBe(json);
    await document.loadingTask.destroy();
    const ids = [...html.matchAll(/ id="([^"]*)"/gu)].map(([, id]) => id!);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter(id => !/^[a-z][a-z0-9-]*$/u.test(id))).toEqual([]);
    // No heading is skipped (WCAG 2.1, 1.3.1; HTML Living Standard, 4.3.11).
    const levels = [...html.matchAll(/<h([1-6])/gu)].map(([, level]) => Number(level));
    for (const [at, level] of levels.entries())
      expect(level - (levels[at - 1] ?? 0), `heading ${at}`).toBeLessThanOrEqual(1);
    expect(html).not.toMatch(/undefined|\bnull\b|\[object|NaN|\{[a-z]+\}/u);
  });
});

describe('a trade secret', () => {
  const secret = (claim: unknown, hazards = ['Skin Irrit. 2']) => ({
    formula: [
      { name: 'zingiberol', cas: '64-17-5', percent: 12, hazards, source: 'test', 'trade-secret': claim },
      water,
    ],
  });

  // CLP, Article 24 and Annex I, 1.4.1.
  it('of an identity is refused in the Union without an allowed alternative name', async () => {
    const outcome = await drafted(secret('identity'), 'eu-clp');
    expect(outcome.ok).toBe(false);
    expect(outcome.diagnostics[0]).toMatchObject({ code: 'trade-secret-eu', severity: 'error' });
    expect(outcome.diagnostics[0]!.message).toMatch(/Article 24/u);
  });

  const allowed = {
    claim: ['identity', 'percent'],
    'shown-as': 'root oil',
    'alternative-name': { name: 'terpene alcohol', approval: 'decision of 2026-03-02' },
  };

  it('gives nothing away where the Agency allowed an alternative name', async () => {
    const outcome = await drafted(secret(allowed), 'eu-clp');
    const { html, json, pdf } = must(outcome);
    const text = `${html}${json}${(await extractText(pdf)).join(' ')}`;
    expect(text).not.toMatch(/zingiberol|64-17-5|200-578-6|603-002-00-5|root oil/u);
    expect(text).toContain('terpene alcohol');
    expect(text).toContain('decision of 2026-03-02');
    expect(text).not.toMatch(/CFR|[^0-9]12 %/u);
    expect(outcome.diagnostics.map(({ code, severity }) => [code, severity])).toContainEqual([
      'trade-secret-eu',
      'warning',
    ]);
  });

  it('is refused for a hazard that Annex I, 1.4.1 does not have', async () => {
    const outcome = await drafted(secret(allowed, ['Skin Sens. 1']), 'eu-clp');
    expect(outcome.ok).toBe(false);
    expect(outcome.diagnostics[0]!.message).toMatch(/Skin Sens\. 1.*1\.4\.1/u);
  });

  it('is kept and told on a sheet to the GHS', async () => {
    const outcome = await drafted(secret(allowed), 'un-ghs');
    expect(must(outcome).html).toContain('root oil');
    expect(must(outcome).html).not.toMatch(/zingiberol|64-17-5/u);
    expect(outcome.diagnostics).toContainEqual(expect.objectContaining({ code: 'trade-secret-un' }));
  });
});

describe('the packet', () => {
  const names = async (soldTo: unknown, more: Record<string, unknown> = {}) => {
    const parts = { formula: [water], ...more, ...(soldTo ? { 'sold-to': soldTo } : {}) };
    const packet = await makePacket(await classified(parts, 'us-hcs'), DAY, fonts, en);
    return {
      files: packet.files.map(({ name }) => name).filter(name => name.startsWith('sds')),
      missing: packet.missing.map(({ name }) => name),
      refused: packet.refused,
    };
  };
  const US = ['sds.pdf', 'sds.html', 'sds.json'];
  const EU = ['sds-eu.pdf', 'sds-eu.html', 'sds-eu.json'];

  it('has the sheets of its markets, and that of the United States where none is named', async () => {
    expect((await names(null)).files).toEqual(US);
    expect((await names({ users: 'workplace', markets: ['us', 'eu'] })).files).toEqual([...US, ...EU]);
    expect((await names({ users: 'workplace', markets: 'eu' })).files).toEqual(EU);
  });

  it('says which sheet cannot be made, and stands without it', async () => {
    const formula = [
      {
        name: 'zingiberol',
        percent: 12,
        hazards: ['Skin Irrit. 2'],
        source: 'test',
        'trade-secret': 'identity',
      },
      water,
    ];
    expect(await names({ users: 'workplace', markets: ['us', 'eu'] }, { formula })).toEqual({
      files: US,
      missing: ['sds-eu.pdf'],
      refused: false,
    });
    expect((await names({ users: 'workplace', markets: 'eu' }, { formula })).refused).toBe(true);
  });
});
