import { afterAll, describe, it } from 'vitest';
import { classificationJson } from '../../src/draft/classification-json.ts';
import { workSheetMarkdown } from '../../src/draft/work-sheet.ts';
import { compare, nothingElseIn } from './_compare.ts';
import { json } from './_json.ts';
import { bases, classified, demos, nameOf, records } from './_products.ts';

// Golden dumps of this program's own output: no outside source, they show what a change changes.

const all = [...demos, ...records];
const dumpOf = (path: string, basis: string): string => `classification/${nameOf(path)}.${basis}.json`;

describe.each(bases)('classification under %s', basis => {
  it.each(all)('%s', async path => {
    const { record, classification, elements } = await classified(path, basis);
    compare(dumpOf(path, basis), json(classificationJson(record, classification, elements)));
  });
});

const worked = [
  ...demos,
  ...['acute-unknown', 'aquatic', 'cmr', 'evidence', 'flam-2'].map(
    name => `tests/golden/records/${name}.yaml`,
  ),
];

describe('work sheet', () => {
  it.each(worked)('%s', async path => {
    const { record, classification, elements } = await classified(path, 'us-hcs');
    compare(`work-sheet/${nameOf(path)}.md`, workSheetMarkdown(record, classification, elements));
  });
});

afterAll(() => {
  nothingElseIn(
    'classification',
    bases.flatMap(basis => all.map(path => dumpOf(path, basis))),
  );
  nothingElseIn(
    'work-sheet',
    worked.map(path => `work-sheet/${nameOf(path)}.md`),
  );
});
