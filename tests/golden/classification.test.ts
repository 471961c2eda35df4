import { afterAll, describe, it } from 'vitest';
import { classificationJson } from '../../src/draft/classification-json.ts';
import { workSheetMarkdown } from '../../src/draft/work-sheet.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { en } from '../../src/words/en/index.ts';
import { compare, nothingElseIn } from './_compare.ts';
import { json } from './_json.ts';
import { bases, classified, demos, nameOf, records } from './_products.ts';

// Golden dumps of this program's own output: no outside source, they show what a change changes.

const all = [...demos, ...records];
const WATER = 'tests/golden/records/water-only.yaml';

/** What every liquid without any hazard says stands once, in the dump of water; others name only the class. */
async function otherClassesOfWater(basis: BasisId): Promise<ReadonlySet<string>> {
  const { record, classification, elements } = await classified(WATER, basis);
  const { otherClasses } = classificationJson(record, classification, elements, en);
  return new Set(otherClasses.map(other => json(other)));
}

const dumpOf = (path: string, basis: string): string => `classification/${nameOf(path)}.${basis}.json`;

describe.each(bases)('classification under %s', basis => {
  it.each(all)('%s', async path => {
    const { record, classification, elements } = await classified(path, basis);
    const { otherClasses, ...more } = classificationJson(record, classification, elements, en);
    const plain = await otherClassesOfWater(basis);
    const told = otherClasses.map(other => {
      const { class: name, route } = other;
      return path !== WATER && plain.has(json(other))
        ? `${name}${route ? ` (${route})` : ''}: as water-only`
        : other;
    });
    compare(dumpOf(path, basis), json({ ...more, otherClasses: told }));
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
    const { record, formula, classification, elements } = await classified(path, 'us-hcs');
    compare(
      `work-sheet/${nameOf(path)}.md`,
      workSheetMarkdown({ record, formula, classification, elements, words: en }),
    );
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
