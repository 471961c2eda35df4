import {
  isGhsSheet,
  listDoubts,
  openNumbers,
  sheetQuestions,
  sheetSections,
  transportQuestions,
} from '../../document/sheet.ts';
import type { Listed, LookUp } from '../../reference/lists/look-up.ts';
import type { Words } from '../../words/words.ts';
import type { ReviewedSheet } from '../draft-sheet.ts';
import { inSection, type PointPlace, type ReviewPoint } from './point.ts';

type Drafted = Pick<ReviewedSheet, 'input' | 'review'>;

/** What a reviewer must look at in a data sheet: items that nobody has searched for, limits and lists to judge, the rest. */
export function sheetPoints(sheet: Drafted, words: Words): readonly ReviewPoint[] {
  return [...openItems(sheet, words), ...lookUps(sheet, words), ...doubts(sheet, words)];
}

/** Items without contents, those that one key of the record answers in one point. */
function openItems({ input }: Drafted, { reviewPage }: Words): readonly ReviewPoint[] {
  const basis = input.classification.basis.id;
  const asked = new Map<
    string,
    { key: string | null; mandatory: boolean; headings: string[]; places: PointPlace[] }
  >();
  for (const { number: section, note, items } of sheetSections(input))
    for (const { key, state, asks, heading, part } of items) {
      if (state !== 'open') continue;
      const id = asks ?? `${section} ${key}`;
      const group = asked.get(id) ?? { key: asks, mandatory: false, headings: [], places: [] };
      group.mandatory ||= note === null;
      group.headings.push(reviewPage.itemName(part ?? null, heading));
      group.places.push({ kind: 'item', basis, section, key });
      asked.set(id, group);
    }
  return [
    ...[...asked.values()].map(
      ({ key, mandatory, headings, places }): ReviewPoint => ({
        group: mandatory ? 'open' : 'open-optional',
        text: reviewPage.openItem(headings, key),
        places,
      }),
    ),
    ...openNumbers(input).map(
      ({ section, headings }): ReviewPoint => ({
        group: 'open',
        text: reviewPage.openItem(headings, null),
        places: [inSection(basis, section)],
      }),
    ),
  ];
}

/** Entries of lists to which an ingredient may belong, rows that were not compared with the law, entries set aside. */
function lookUps({ input }: Drafted, { reviewPage, sheet }: Words): readonly ReviewPoint[] {
  const { classification, exposure, record } = input;
  const basis = classification.basis.id;
  // Limits and lists of the United States stand on its sheet alone.
  if (isGhsSheet(input)) return [];
  const possible = <R extends Listed>(name: string, list: 'limit' | 'carcinogen', { found }: LookUp<R>) =>
    found
      .filter(({ membership, by }) => membership === 'possible' && by !== 'otherwise')
      .map(({ row, group }) => reviewPage.possibleMember(list, name, row.name, group?.title ?? null));
  const ofLists = listDoubts().map(
    ({ list, doubt }): ReviewPoint => ({
      group: 'judgement',
      text: reviewPage.listDoubt(list, doubt),
      places: [inSection(basis, 11)],
    }),
  );
  const ofIngredients = classification.constituents
    .filter(({ water }) => !water)
    .flatMap(({ name, cas }) => {
      const limits = exposure.limits({ name, cas, form: record.form });
      const lists = exposure.carcinogens({ name, cas, form: record.form });
      const told = (section: number, texts: readonly string[]) =>
        texts.map((text): ReviewPoint => ({ group: 'judgement', text, places: [inSection(basis, section)] }));
      const uncompared = limits.found
        .filter(({ row }) => !row.compared)
        .map(({ row }) => reviewPage.notCompared(name, row.name, row.table));
      return [
        ...told(8, [...possible(name, 'limit', limits), ...uncompared]),
        ...told(11, [...possible(name, 'carcinogen', lists), ...sheet.carcinogens.setAside(name, lists)]),
      ];
    });
  return [...ofIngredients, ...ofLists];
}

/** What else the sheet leaves open: transport, ingredients below their cut-offs. */
function doubts({ input, review }: Drafted, words: Words): readonly ReviewPoint[] {
  const { open, belowCutOff } = sheetQuestions(input);
  const items = [true, false].map(mandatory =>
    words.review.unsearched(
      open.filter(item => item.mandatory === mandatory),
      mandatory,
    ),
  );
  const basis = input.classification.basis.id;
  const places = new Map(transportQuestions(input).map(text => [text, [inSection(basis, 14)]]));
  places.set(words.review.belowCutOff(belowCutOff), [inSection(basis, 3)]);
  return review
    .filter(line => !items.includes(line))
    .map(text => ({ group: 'facts', text, places: places.get(text) ?? [] }));
}
