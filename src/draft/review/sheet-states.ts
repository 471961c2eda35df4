import type { SheetItem, SheetSection } from '../../document/sheet/content.ts';
import { sheetSections } from '../../document/sheet.ts';
import type { Words } from '../../words/words.ts';
import type { ReviewedSheet } from '../draft-sheet.ts';
import { anchorOf } from './anchors.ts';

/** An item of the sheet with its state and what is known of it. */
export interface ItemRow {
  readonly id: string;
  readonly name: string;
  readonly state: SheetItem['state'];
  readonly stateName: string;
  /** From what it is filled, by whom it was searched for, or what answers it. */
  readonly from: string;
  /** What the sheet prints there; empty where it is open. */
  readonly lines: readonly string[];
}

export interface SectionRows {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly note: string | null;
  readonly items: readonly ItemRow[];
  readonly counts: Readonly<Record<SheetItem['state'], number>>;
}

/** The sections of a sheet, each item filled, searched in vain or open. */
export const sectionRows = ({ input }: Pick<ReviewedSheet, 'input'>, words: Words): readonly SectionRows[] =>
  sheetSections(input).map(section => {
    const basis = input.classification.basis.id;
    const items = section.items.map(item => itemRow(section, item, { input }, words));
    const count = (state: SheetItem['state']): number => items.filter(each => each.state === state).length;
    return {
      id: anchorOf({ kind: 'section', basis, section: section.number }),
      number: section.number,
      title: section.title,
      note: section.note,
      items,
      counts: { filled: count('filled'), searched: count('searched'), open: count('open') },
    };
  });

function itemRow(
  { number }: SheetSection,
  item: SheetItem,
  { input }: Pick<ReviewedSheet, 'input'>,
  { reviewPage }: Words,
): ItemRow {
  const { key, state, asks, heading, part, source } = item;
  const own = asks !== null && asks in input.record.sheet && source === 'product record' ? asks : null;
  const from = {
    filled: reviewPage.filledFrom(source, own),
    searched: item.text.join(' '),
    open: reviewPage.answeredBy(asks),
  };
  return {
    id: anchorOf({ kind: 'item', basis: input.classification.basis.id, section: number, key }),
    name: reviewPage.itemName(part ?? null, heading),
    state,
    stateName: reviewPage.states[state] ?? state,
    from: from[state],
    lines: state === 'filled' ? linesOf(item) : [],
  };
}

/** What the sheet prints, a line a paragraph, an entry or a row. */
export const linesOf = ({ figures, text, list, groups, table, notes }: SheetItem): readonly string[] => [
  ...figures.map(({ title }) => title),
  ...text,
  ...list,
  ...groups.flatMap(group => group.list.map(entry => `${group.title}: ${entry}`)),
  ...(table?.rows.map(row => row.filter(Boolean).join(' · ')) ?? []),
  ...notes,
];
