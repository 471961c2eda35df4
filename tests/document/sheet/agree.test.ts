import fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { beforeAll, describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../src/cli/files.ts';
import { classificationJson } from '../../../src/draft/classification-json.ts';
import { classifyProduct } from '../../../src/draft/classified-product.ts';
import { productOf } from '../../../src/draft/open-product.ts';
import { openReference } from '../../../src/draft/open-reference.ts';
import { makePacket } from '../../../src/draft/packet.ts';
import type { BasisId } from '../../../src/reference/basis.ts';
import { loadFonts } from '../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { en } from '../../../src/words/en/index.ts';
import { parts } from '../../classify/random-records.ts';
import { extractText } from '../../support/render.ts';
import { recordAround } from './sheet-input.ts';

const TODAY = '2026-11-25';
const europe = {
  name: 'Harbour Row Imports Ltd',
  address: ['7 Harbour Row', 'Dublin, Ireland'],
  telephone: '+353 1 555 0117',
};
const around = (record: Record<string, unknown>) =>
  recordAround({
    ...record,
    maker: {
      name: 'Tallow Lane Batch Works',
      address: ['48 Tallow Lane', 'Sampleton, OH 44000'],
      telephone: '+1 216 555 0142',
      emergency: { telephone: '+1 216 555 0199', hours: '24 hours' },
      'eu-supplier': europe,
    },
    'sold-to': { users: ['workplace'], markets: ['us', 'eu'] },
    packs: [{ id: 'pail', contents: '5 L', label: { width: '300 mm', height: '300 mm' } }],
  });

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

interface Statement {
  readonly code: string;
  readonly text: string;
}

/** Letters and figures alone, since documents break lines and join statements. */
const plain = (text: string): string => text.replace(/[^\p{L}\p{N}]/gu, '').toLowerCase();
const sorted = (statements: readonly Statement[]) =>
  statements.map(({ code, text }) => `${code} ${text}`).sort();

// Statement by statement: 29 CFR 1910.1200(f)(1) and App. D, Table D.1, 2(b); CLP Article 17, REACH Annex II, 2.2.
describe('the documents of one packet', () => {
  it('say the same hazards, statements, signal word and pictograms, over random records', async () => {
    const seen = { hazards: 0, statements: 0, labels: 0 };
    await fc.assert(
      fc.asyncProperty(parts, async given => {
        const opened = productOf(around(given), nodeFiles);
        if (!opened.ok) throw new Error(JSON.stringify(opened.diagnostics));
        const classify = async (basis: BasisId) => {
          const reference = await openReference(basis, TODAY);
          if (!reference.ok) throw new Error('no figures');
          return classifyProduct(opened.value, reference.value);
        };
        const main = await classify('us-hcs');
        const { files } = await makePacket(main, TODAY, fonts, en);
        const bytes = (name: string) => files.find(file => file.name === name)?.bytes;
        for (const [basis, sheet, label] of [
          ['us-hcs', 'sds', 'label-pail'],
          ['eu-clp', 'sds-eu', 'label-pail-eu-supply'],
        ] as const) {
          const { record, classification, elements } = basis === 'us-hcs' ? main : await classify(basis);
          const wanted = classificationJson(record, classification, elements, en);
          const data = JSON.parse(bytes(`${sheet}.json`) as string);
          // Classification to sheet, both as data.
          const codes = (hazards: readonly { code: string; route: string | null }[]) =>
            hazards.map(({ code, route }) => `${code} ${route ?? ''}`).sort();
          expect(codes(data.classification.hazards ?? data.classification)).toEqual(codes(wanted.hazards));
          expect(data.label.signalWord).toBe(wanted.signalWord);
          expect([...data.label.pictograms].sort()).toEqual([...wanted.pictograms].sort());
          expect(sorted(data.label.hazardStatements)).toEqual(sorted(wanted.hazardStatements));
          expect(sorted(data.label.precautionaryStatements)).toEqual(sorted(wanted.precautionaryStatements));
          // Data to page and print.
          const page = new JSDOM(bytes(`${sheet}.html`) as string).window.document;
          const web = plain(page.body.textContent ?? '');
          const print = plain((await extractText(bytes(`${sheet}.pdf`) as Uint8Array)).join(''));
          const all: readonly Statement[] = [
            ...wanted.hazardStatements,
            ...wanted.precautionaryStatements,
            ...wanted.supplemental,
          ];
          for (const { code, text } of all) {
            // A sentence of another rule, such as that of unknown acute toxicity, has no code.
            const said = plain(/^(?:H|P|EUH)\d/u.test(code) ? `${code}${text}` : text);
            expect(web, `${sheet}.html ${code}`).toContain(said);
            expect(print, `${sheet}.pdf ${code}`).toContain(said);
          }
          seen.hazards += wanted.hazards.length;
          seen.statements += all.length;
          // Classification to label, where the die has room for it.
          const pdf = bytes(`${label}.pdf`);
          if (!pdf) continue;
          seen.labels += 1;
          const printed = plain((await extractText(pdf as Uint8Array)).join(''));
          if (wanted.signalWord) expect(printed, label).toContain(plain(wanted.signalWord));
          for (const { code, text } of wanted.hazardStatements)
            expect(printed, `${label}.pdf ${code}`).toContain(plain(text));
        }
      }),
      { numRuns: 6, seed: 11 },
    );
    expect(seen.hazards).toBeGreaterThan(30);
    expect(seen.statements).toBeGreaterThan(150);
    expect(seen.labels).toBeGreaterThan(5);
  }, 180_000);
});
