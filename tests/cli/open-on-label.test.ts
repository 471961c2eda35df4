import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { inProcess, put, workshop } from './_command.ts';

// 29 CFR 1910.1200(d)(2): hazards are to be identified; read back with pdf.js.
it('a label of alcohol without a flash point says that the class is not decided', async () => {
  const dir = workshop();
  put(
    dir,
    'maker.yaml',
    'labelwright: maker/1\nname: Quarrygate Works\naddress: 1 Quarry Lane\ntelephone: +1 555 0100\nemergency: {telephone: +1 555 0199, hours: always}\n',
  );
  const path = put(
    dir,
    'p.yaml',
    `labelwright: product/1
name: Window Spirit
code: W-9
use: Glass cleaner
form: liquid
maker: maker.yaml
formula:
  - {name: ethanol, cas: 64-17-5, percent: 90}
  - {name: water, amount: balance}
packs:
  - {id: b, contents: 1 L, label: {width: 130 mm, height: 120 mm, corner-radius: 3 mm}}
`,
  );
  const { err, status } = await inProcess(label, [path, '--out', join(dir, 'o')]);
  expect(status).toBe(0);
  expect(err).toContain('Flam. Liq.: not decided');
  const data = new Uint8Array(readFileSync(join(dir, 'o', 'label-b.pdf')));
  const page = await (await getDocument({ data }).promise).getPage(1);
  const { items } = await page.getTextContent();
  const text = items.map(item => ('str' in item ? item.str : '')).join(' ');
  expect(text).toContain('DRAFT for qualified review. Not decided: Flam. Liq.');
});

// 29 CFR 1910.1200 App. A, A.2.3.3.4: the pH is the criterion for strong acids and bases.
it('a label of a strong base without a pH says that it was not measured, and so does the data sheet', async () => {
  const dir = workshop();
  const path = put(
    dir,
    'p.yaml',
    `labelwright: product/1
name: Plain Stripper
code: W-8
use: Floor stripper
form: liquid
maker: maker.yaml
formula:
  - {name: sodium hydroxide, cas: 1310-73-2, percent: 3}
  - {name: water, amount: balance}
packs:
  - {id: b, contents: 1 L, label: {width: 130 mm, height: 120 mm, corner-radius: 3 mm}}
`,
  );
  await inProcess(label, [path, '--out', join(dir, 'o')]);
  const data = new Uint8Array(readFileSync(join(dir, 'o', 'label-b.pdf')));
  const page = await (await getDocument({ data }).promise).getPage(1);
  const { items } = await page.getTextContent();
  expect(items.map(item => ('str' in item ? item.str : '')).join(' ')).toContain('pH not measured');
  await inProcess(sds, [path, '--out', join(dir, 's')]);
  expect(readFileSync(join(dir, 's', 'sds.html'), 'utf8')).toContain(
    'was not measured: the classification for skin',
  );
});
