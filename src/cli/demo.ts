import { relative } from 'node:path';
import { type ClassifiedProduct, classifyProduct } from '../draft/classified-product.ts';
import { openProduct } from '../draft/open-product.ts';
import { openReference } from '../draft/open-reference.ts';
import { makePacket } from '../draft/packet.ts';
import { packagePath } from '../environment/package-files.ts';
import { usual } from '../reference/basis.ts';
import { hasErrors } from '../report/diagnostic.ts';
import { renderText } from '../report/render.ts';
import { loadFonts } from '../text/font-library.ts';
import { en } from '../words/en/index.ts';
import { contactSheet } from './contact-sheet.ts';
import { store } from './deliver.ts';
import { nodeFiles } from './files.ts';

/** Makes the packets of the three demo products and says what a reviewer must look at. */
async function demo(): Promise<number> {
  const date = new Date().toISOString().slice(0, 10);
  const fonts = await loadFonts();
  const products: ClassifiedProduct[] = [];
  let status = 0;
  for (const name of ['patio-cleaner', 'descaler', 'degreaser']) {
    const path = relative('.', packagePath('templates', 'demo', `${name}.yaml`));
    const [opened, reference] = [openProduct(path, nodeFiles), await openReference(usual, date)];
    if (!opened.ok || !reference.ok) {
      process.stderr.write(renderText([...opened.diagnostics, ...reference.diagnostics]));
      status = 2;
      continue;
    }
    const product = classifyProduct(opened.value, reference.value);
    products.push(product);
    const packet = await makePacket(product, date, fonts, en);
    const { name: title, code } = product.record;
    process.stdout.write(`\n${title} (${code})\n`);
    if (packet.refused || hasErrors(packet.diagnostics)) {
      process.stderr.write(renderText(packet.diagnostics));
      status = 1;
      continue;
    }
    const hazards = product.classification.hazards.map(
      ({ code: hazard, route }) => `${hazard}${route ? ` (${route})` : ''}`,
    );
    const { files, missing } = packet;
    const stored = await store(product, {
      folder: `out/${code}`,
      asOf: date,
      files,
      missing,
      whole: true,
    });
    process.stderr.write(renderText(stored.findings));
    status = Math.max(status, stored.status);
    process.stdout.write(
      `  ${product.elements.signalWord ?? 'no signal word'}: ${hazards.join(', ') || 'no hazard class given'}\n`,
    );
    for (const file of stored.written) process.stdout.write(`  made  ${file}\n`);
    for (const point of packet.review) process.stdout.write(`  look  ${point}\n`);
    for (const { message } of packet.diagnostics) process.stdout.write(`  look  ${message}\n`);
  }
  const page = await contactSheet(
    products,
    ['us-workplace', 'us-consumer', 'eu-supply', 'tank'],
    date,
    fonts,
  );
  process.stdout.write(`\nmade  ${page}, every label in all targets and many sizes\n`);
  process.stdout.write('\nDrafts for qualified review; local codes and licensed practice decide.\n');
  return status;
}

process.exitCode = await demo();
