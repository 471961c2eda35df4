import { inTerms } from '../../words/in-terms.ts';
import type { SheetWords } from '../../words/sheet-words.ts';
import { bodyOf, type ItemBody, paragraphs, type SectionBodies } from './content.ts';
import { ingredients } from './disclosure.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';
import { properties } from './properties.ts';
import { dayOf, revisionHistory, revisionTexts } from './revisions.ts';
import { secretsOf } from './secrets.ts';
import { useSolutionsText } from './use-solutions.ts';

/** Section 16 (29 CFR 1910.1200 App. D, Table D.1, 16). */
export function otherInformation(input: SheetInput): SectionBodies {
  const { record } = input;
  const { other: words } = input.words.sheet;
  const own = bodyOf('product record', { text: paragraphs(record.sheet.other) });
  const solutions = useSolutionsText(input);
  const date = dayOf(input);
  return {
    date: {
      text: [fill(record.revised ? words.revised : words.prepared, { date }), ...revisionTexts(input)],
      list: revisionHistory(input),
      source: 'draft',
    },
    sources: sources(input),
    ...(solutions ? { 'use-solutions': solutions } : {}),
    ...(own ? { 'other-information': own } : {}),
    caution: { text: words.caution, source: 'draft' },
  };
}

/** Where the data are from; of ingredients those alone that section 3 discloses. */
function sources(input: SheetInput): ItemBody {
  const { basis } = input.classification;
  const { other: words } = input.words.sheet;
  const secrets = secretsOf(input);
  const figures = figureSources(input);
  const byIngredient = ingredients(input)
    .filter(({ listed, index }) => listed && !secrets.identity.has(index))
    .map(({ classified: { name, data } }) =>
      fill(words.ingredientData, { name, source: input.words.source(data.source) }),
    );
  return {
    list: [
      words.own,
      fill(words.basis, { basis: inTerms(input.words.sheet.terms.bases, basis.title), asOf: basis.asOf }),
      ...byIngredient,
      ...(figures.length > 0 ? [fill(words.figures, { titles: figures.join('; ') })] : []),
      words.lists,
      words.headings,
    ],
    source: 'calculation',
  };
}

/** Full titles of the works whose figures of ingredients section 9 tells. */
function figureSources(input: SheetInput): readonly string[] {
  const values = Object.values(properties(input)).flatMap(body => body.values ?? []);
  const used = new Set(values.filter(({ of }) => of !== null).map(({ source }) => source));
  return Object.values(input.properties.sources)
    .filter(({ short }) => used.has(short))
    .map(({ title }) => title);
}

/** The abbreviations that a text uses. */
export function abbreviations(text: string, { other }: SheetWords): ItemBody | null {
  const used = other.abbreviations.filter(([short]) =>
    new RegExp(`(?<![A-Za-z])${short}s?(?![A-Za-z])`, 'u').test(text),
  );
  const list = used.map(([short, long]) => fill(other.abbreviation, { short: short!, long: long! }));
  return bodyOf('draft', { text: [list.join('; ')] });
}
