import { nodeFiles } from '../cli/files.ts';
import { labelDocument } from '../document/label.ts';
import { sheetDocument, sheetHtml, sheetJson } from '../document/sheet.ts';
import { loadTemplate } from '../document/template.ts';
import { classifyProduct } from '../draft/classified-product.ts';
import { draftLabel } from '../draft/draft-label.ts';
import { draftSheet } from '../draft/draft-sheet.ts';
import { openProduct } from '../draft/open-product.ts';
import { openReference } from '../draft/open-reference.ts';
import { sheetInput } from '../draft/sheet-input.ts';
import { packagePath, readTemplate } from '../environment/package-files.ts';
import type { Attachment } from '../layout/frame.ts';
import { layoutLabel } from '../layout/label/layout-label.ts';
import { layoutSheet } from '../layout/sheet/layout-sheet.ts';
import { loadPressProfile } from '../layout/stock.ts';
import { writePdf } from '../pdf/write.ts';
import { completeRecord } from '../record/complete.ts';
import type { Outcome } from '../report/diagnostic.ts';
import { loadFonts } from '../text/font-library.ts';
import { en } from '../words/en/index.ts';
import { labelPage } from './label-page.ts';

/** A document of the demo in the ways in which it is measured. */
export interface Drafted {
  readonly name: 'sheet' | 'label';
  /** The same content as a page for a browser. */
  readonly page: string;
  /** From the tree of texts, of which the page is made too, to the bytes of the PDF. */
  setAndWritten(): Promise<Uint8Array>;
  /** What a call of the library drafts, read back and checked. */
  drafted(): Promise<void>;
  /** What `drafted` makes. */
  readonly whole: string;
  /** Arguments of the command line for the same, without the folder for its files. */
  readonly command: readonly string[];
}

const DATE = '2026-11-25';

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('; '));
  return outcome.value;
};

/** Sheet and label of one product of the demo, classified beforehand. */
export async function demoDrafts(): Promise<readonly Drafted[]> {
  const path = packagePath('templates', 'demo', 'patio-cleaner.yaml');
  const product = classifyProduct(
    must(openProduct(path, nodeFiles)),
    must(await openReference('us-hcs', DATE)),
  );
  const record = must(completeRecord(product.record));
  const fonts = await loadFonts();
  const instant = `${DATE}T00:00:00Z`;
  const common = { version: '0' };

  const input = await sheetInput({ ...product, record }, instant, en);
  const sheet = sheetDocument(input, await loadTemplate(readTemplate, 'sheets/sheet.hbs'));
  const attached: Attachment = {
    name: 'sds.json',
    mediaType: 'application/json',
    description: en.sheet.frame.attachment,
    relationship: 'Data',
    bytes: new TextEncoder().encode(JSON.stringify(sheetJson(input), null, 2)),
  };

  const pack = record.packs[0]!;
  const stock = { die: pack.label!, profile: must(await loadPressProfile(readTemplate)) };
  const label = labelDocument(
    { record, pack, elements: product.elements, draft: true, date: instant },
    await loadTemplate(readTemplate, 'labels/us-workplace.hbs'),
  );
  const setLabel = async () => must(await layoutLabel(label, fonts, stock));
  return [
    {
      name: 'sheet',
      page: sheetHtml(sheet),
      setAndWritten: async () =>
        writePdf(layoutSheet(sheet, fonts, { paper: 'letter', attachments: [attached] }), fonts, {
          ...common,
          kind: 'sheet',
        }),
      drafted: async () => void must(await draftSheet(product, { date: DATE, paper: 'letter' }, fonts, en)),
      whole: 'PDF, web page and JSON',
      command: ['sds', path],
    },
    {
      name: 'label',
      page: labelPage(label, (await setLabel()).frames[0]!),
      setAndWritten: async () => writePdf(await setLabel(), fonts, { ...common, kind: 'label' }),
      drafted: async () =>
        void must(
          await draftLabel(
            product,
            { date: DATE, pack: product.record.packs[0]!, purpose: 'us-workplace' },
            fonts,
            en,
          ),
        ),
      whole: 'PDF',
      command: ['label', path],
    },
  ];
}
