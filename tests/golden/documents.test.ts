import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, it } from 'vitest';
import { labelDocument } from '../../src/document/label.ts';
import { sheetDocument } from '../../src/document/sheet.ts';
import { loadTemplate } from '../../src/document/template.ts';
import { draftSheet } from '../../src/draft/draft-sheet.ts';
import { makePacket } from '../../src/draft/packet.ts';
import { purposeOf } from '../../src/draft/purposes/purposes.ts';
import { sheetInput } from '../../src/draft/sheet-input.ts';
import { tryDraftLabel } from '../../src/draft/try-draft-label.ts';
import { readTemplate } from '../../src/environment/package-files.ts';
import { layoutLabel } from '../../src/layout/label/layout-label.ts';
import { layoutSheet } from '../../src/layout/sheet/layout-sheet.ts';
import { loadPressProfile } from '../../src/layout/stock.ts';
import { completeRecord } from '../../src/record/complete.ts';
import { renderText } from '../../src/report/render.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import type { FontLibrary } from '../../src/text/glyph-run.ts';
import { en } from '../../src/words/en/index.ts';
import { wordsOf } from '../../src/words/words-of.ts';
import { compare, nothingElseIn } from './_compare.ts';
import { summary, tagTree, textRuns } from './_frames.ts';
import { htmlText } from './_html-text.ts';
import { json } from './_json.ts';
import { pdfTagTree } from './_pdf-tags.ts';
import { AS_OF, classified, demos, must, nameOf } from './_products.ts';

// Golden dumps of this program's own output: no outside source, they show what a change changes.

const date = `${AS_OF}T00:00:00Z`;
const SUPPLIED = 'templates/demo/descaler.yaml';
let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

describe.each(demos)('%s', path => {
  const name = nameOf(path);

  it('label', async () => {
    const { record, elements } = await classified(path, 'us-hcs');
    const profile = must(await loadPressProfile(readTemplate));
    const template = await loadTemplate(readTemplate, 'labels/us-workplace.hbs');
    for (const pack of record.packs) {
      const input = { record: must(completeRecord(record)), pack, elements, draft: true, date };
      const laidOut = await layoutLabel(labelDocument(input, template), fonts, { die: pack.label!, profile });
      const { frames, root } = must(laidOut);
      const parts = [
        ...frames.flatMap(frame => [textRuns(frame), '', summary(frame), '']),
        tagTree(root, frames),
        '',
        renderText(laidOut.diagnostics),
      ];
      compare(`label/${name}.txt`, parts.join('\n').trimEnd());
    }
  });

  it('label for consumers', async () => {
    const product = await classified(path, 'us-hcs');
    const purpose = purposeOf('us-consumer')!;
    const profile = must(await loadPressProfile(readTemplate));
    const template = await loadTemplate(readTemplate, 'labels/us-consumer.hbs');
    const record = must(completeRecord(product.record));
    for (const pack of record.packs) {
      const { elements, sections, type, findings } = purpose.prepare(product, pack, en);
      const input = { record, pack, elements, draft: true, date, sections, type };
      const laidOut = await layoutLabel(labelDocument(input, template), fonts, { die: pack.label!, profile });
      const frames = laidOut.ok ? laidOut.value.frames : [];
      const parts = [
        ...frames.flatMap(frame => [textRuns(frame), '', summary(frame), '']),
        ...(laidOut.ok ? [tagTree(laidOut.value.root, frames), ''] : []),
        renderText([...findings, ...laidOut.diagnostics]),
      ];
      compare(`label/${name}.us-consumer.txt`, parts.join('\n').trimEnd());
    }
  });

  it('sheet on its pages', async () => {
    const product = await classified(path, 'us-hcs');
    const model = sheetDocument(
      await sheetInput({ ...product, record: must(completeRecord(product.record)) }, date, en),
      await loadTemplate(readTemplate, 'sheets/sheet.hbs'),
    );
    const pages = (['letter', 'a4'] as const).flatMap(paper =>
      layoutSheet(model, fonts, { paper }).frames.flatMap((frame, at) => {
        const runs = textRuns(frame);
        // The text stands in the dump of the tags; of all its places a digest is enough.
        const digest = createHash('sha256').update(runs).digest('hex').slice(0, 16);
        return [
          `${paper}, page ${at + 1}: ${runs.split('\n')[0]}`,
          `text runs: ${digest}`,
          summary(frame),
          '',
        ];
      }),
    );
    compare(`sheet/${name}.pages.txt`, pages.join('\n').trimEnd());
    const { frames, root } = layoutSheet(model, fonts, { paper: 'letter' });
    compare(`sheet/${name}.tags.txt`, tagTree(root, frames));
  });

  it.each(['eu-clp', 'un-ghs'] as const)('sheet of %s', async basis => {
    const product = await classified(path, basis);
    const made = must(await draftSheet(product, { date: AS_OF, paper: 'a4' }, fonts, en));
    const { fingerprint: _, ...sheet } = JSON.parse(made.json);
    compare(`sheet/${name}.${basis}.json`, json(sheet));
    compare(`sheet/${name}.${basis}.pdf-tags.txt`, await pdfTagTree(made.pdf));
  });

  it('packet', async () => {
    const packet = await makePacket(await classified(path, 'us-hcs'), AS_OF, fonts, en);
    const file = (wanted: string) => packet.files.find(({ name: each }) => each === wanted)!.bytes;
    compare(`sheet/${name}.text.txt`, htmlText(file('sds.html') as string));
    // The fingerprint changes with every figure of the law.
    const { fingerprint: _, ...sheet } = JSON.parse(file('sds.json') as string);
    compare(`sheet/${name}.json`, json(sheet));
    compare(`sheet/${name}.pdf-tags.txt`, await pdfTagTree(file('sds.pdf') as Uint8Array));
    const label = packet.files.find(({ name: each }) => each.startsWith('label-'))!;
    compare(`label/${name}.pdf-tags.txt`, await pdfTagTree(label.bytes as Uint8Array));
    const index = [htmlText(file('index.html') as string), '', 'Review', ...packet.review];
    compare(`packet/${name}.txt`, index.join('\n'));
  });
});

/** A supplier in the Union, which the maker of the demo has none of. */
const euSupplier = {
  name: 'Example Import Ltd',
  role: 'importer',
  address: ['1 Sample Street', 'Dublin 2', 'Ireland'],
  telephone: '+353 1 555 0100',
  email: null,
  emergency: [],
};

it('label for supply in the Union', async () => {
  const found = await classified(SUPPLIED, 'eu-clp');
  const maker = { ...found.record.maker!, euSupplier };
  const product = { ...found, record: { ...found.record, maker, ufi: 'N1QV-R02N-J00M-WQD5' } };
  const [pack] = product.record.packs;
  const options = { pack: pack!, purpose: 'eu-supply', date: AS_OF } as const;
  const { document, diagnostics } = await tryDraftLabel(product, options, fonts, en);
  const { frames, root } = document!;
  const parts = [
    ...frames.flatMap(frame => [textRuns(frame), '', summary(frame), '']),
    tagTree(root, frames),
    '',
    renderText(diagnostics),
  ];
  compare(`label/${nameOf(SUPPLIED)}.eu-supply.txt`, parts.join('\n').trimEnd());
});

it('sheet in Spanish', async () => {
  const product = await classified(SUPPLIED, 'eu-clp');
  const made = must(await draftSheet(product, { date: AS_OF, paper: 'a4' }, fonts, await wordsOf('es')));
  const { fingerprint: _, ...sheet } = JSON.parse(made.json);
  compare(`sheet/${nameOf(SUPPLIED)}.eu-clp.es.json`, json(sheet));
  compare(`sheet/${nameOf(SUPPLIED)}.eu-clp.es.pdf-tags.txt`, await pdfTagTree(made.pdf));
});

it.each(['eu-supply', 'us-workplace'] as const)('label in Spanish: %s', async purpose => {
  const found = await classified(SUPPLIED, purpose === 'eu-supply' ? 'eu-clp' : 'us-hcs');
  const maker = { ...found.record.maker!, euSupplier };
  const product = { ...found, record: { ...found.record, maker, ufi: 'N1QV-R02N-J00M-WQD5' } };
  const pack = product.record.packs[0]!;
  const options = { pack, purpose, date: AS_OF, language: 'es' } as const;
  const { document, diagnostics } = await tryDraftLabel(product, options, fonts, en);
  const parts = [
    ...(document ? document.frames.flatMap(frame => [textRuns(frame), '', summary(frame), '']) : []),
    ...(document ? [tagTree(document.root, document.frames), ''] : []),
    renderText(diagnostics),
  ];
  compare(`label/${nameOf(SUPPLIED)}.${purpose}.es.txt`, parts.join('\n').trimEnd());
});

afterAll(() => {
  const named = (folder: string, ends: readonly string[], also: readonly string[] = []) =>
    nothingElseIn(folder, [
      ...demos.flatMap(path => ends.map(end => `${folder}/${nameOf(path)}.${end}`)),
      ...also,
    ]);
  const supplied = ['eu-supply.txt', 'eu-supply.es.txt', 'us-workplace.es.txt'];
  named(
    'label',
    ['txt', 'us-consumer.txt', 'pdf-tags.txt'],
    supplied.map(end => `label/${nameOf(SUPPLIED)}.${end}`),
  );
  named(
    'sheet',
    [
      'pages.txt',
      'tags.txt',
      'text.txt',
      'json',
      'pdf-tags.txt',
      ...['eu-clp', 'un-ghs'].flatMap(basis => [`${basis}.json`, `${basis}.pdf-tags.txt`]),
    ],
    ['json', 'pdf-tags.txt'].map(end => `sheet/${nameOf(SUPPLIED)}.eu-clp.es.${end}`),
  );
  named('packet', ['txt']);
});
