import { nodeFiles } from '../cli/files.ts';
import { labelDocument } from '../document/label.ts';
import { loadTemplate } from '../document/template.ts';
import { classifyProduct } from '../draft/classified-product.ts';
import { openProduct } from '../draft/open-product.ts';
import { openReference } from '../draft/open-reference.ts';
import { packagePath, readTemplate } from '../environment/package-files.ts';
import { layoutLabel } from '../layout/label/layout-label.ts';
import { loadPressProfile } from '../layout/stock.ts';
import { writePdf } from '../pdf/write.ts';
import { completeRecord } from '../record/complete.ts';
import type { Outcome } from '../report/diagnostic.ts';
import { loadFonts } from '../text/font-library.ts';
import { barePage } from './bare-page.ts';
import type { Ratio } from './classification.ts';
import { secondsOfAsync } from './timing.ts';

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('; '));
  return outcome.value;
};

/** A label, laid out and written, against a bare page with the same fonts and as many drawing calls. */
export async function labelRatios(): Promise<Ratio[]> {
  const product = must(openProduct(packagePath('templates', 'demo', 'patio-cleaner.yaml'), nodeFiles));
  const { record, elements } = classifyProduct(product, must(await openReference('us-hcs', '2026-11-25')));
  const fonts = await loadFonts();
  const template = await loadTemplate(readTemplate, 'labels/us-workplace.hbs');
  const profile = must(await loadPressProfile(readTemplate));
  const pack = record.packs[0]!;
  const stock = { die: pack.label!, profile };
  const date = '2026-11-25T00:00:00Z';
  const model = labelDocument(
    { record: must(completeRecord(record)), pack, elements, draft: true, date },
    template,
  );
  const laidOut = must(await layoutLabel(model, fonts, stock));
  const { items } = laidOut.frames[0]!;
  const bare = await secondsOfAsync(() => barePage(fonts, items));
  const written = await secondsOfAsync(
    async () => void (await writePdf(laidOut, fonts, { kind: 'label', version: '0' })),
  );
  const whole = await secondsOfAsync(async () => {
    const page = must(await layoutLabel(model, fonts, stock));
    await writePdf(page, fonts, { kind: 'label', version: '0' });
  });
  const against = `bare page with the same fonts and ${items.length} drawing calls`;
  return [
    { what: 'label PDF, written', against, ratio: written / bare },
    { what: 'label PDF, laid out and written', against, ratio: whole / bare },
  ];
}
