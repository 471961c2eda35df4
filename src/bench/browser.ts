import { nodeFiles } from '../cli/files.ts';
import { classifyProduct } from '../draft/classified-product.ts';
import { draftLabel } from '../draft/draft-label.ts';
import { draftSheet } from '../draft/draft-sheet.ts';
import { openProduct } from '../draft/open-product.ts';
import { openReference } from '../draft/open-reference.ts';
import { packagePath } from '../environment/package-files.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import type { Outcome } from '../report/diagnostic.ts';
import { loadFonts } from '../text/font-library.ts';
import { en } from '../words/en/index.ts';
import { openBrowser } from './chromium.ts';
import type { Ratio } from './classification.ts';
import { secondsOfAsync } from './timing.ts';

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('; '));
  return outcome.value;
};

/** The texts of a label as a page for a browser, without its symbols and bars: less than the label holds. */
const asPage = (name: string, { hazardStatements, precautionaryStatements }: LabelElements): string =>
  `<!doctype html><style>@page{size:130mm 120mm;margin:4mm}</style><h1>${name}</h1>${[
    ...hazardStatements,
    ...precautionaryStatements,
  ]
    .map(({ text }) => `<p>${text}</p>`)
    .join('')}`;

/**
 * A sheet and a label, drafted from the classification and read back, against headless Chromium, already open, that
 * prints the same texts. None where the machine has no Chromium.
 */
export async function browserRatios(): Promise<Ratio[]> {
  const browser = await openBrowser();
  if (!browser) return [];
  try {
    const product = classifyProduct(
      must(openProduct(packagePath('templates', 'demo', 'patio-cleaner.yaml'), nodeFiles)),
      must(await openReference('us-hcs', '2026-11-25')),
    );
    const fonts = await loadFonts();
    const date = '2026-11-25';
    const sheet = async () => must(await draftSheet(product, { date, paper: 'letter' }, fonts, en));
    const options = { date, pack: product.record.packs[0]!, purpose: 'us-workplace' } as const;
    const { html } = await sheet();
    const labelPage = asPage(product.record.name, product.elements);
    const sheets = await secondsOfAsync(async () => void (await sheet()));
    const labels = await secondsOfAsync(async () => void must(await draftLabel(product, options, fonts, en)));
    const printedSheets = await secondsOfAsync(async () => void (await browser.print(html)));
    const printedLabels = await secondsOfAsync(async () => void (await browser.print(labelPage)));
    return [
      {
        what: 'headless Chromium, already open, prints the sheet',
        against: 'the sheet drafted as PDF, web page and JSON, and read back',
        ratio: printedSheets / sheets,
      },
      {
        what: 'headless Chromium, already open, prints the texts of the label',
        against: 'the label drafted and read back',
        ratio: printedLabels / labels,
      },
    ];
  } finally {
    await browser.close();
  }
}
