import type { CopyKind, CopyMark } from '../../provenance/copy-mark.ts';
import type { ItemState, SheetItem } from './content.ts';
import type { SheetInput } from './input.ts';
import { dayOf, revisionOf } from './other-information.ts';
import { sheetSections } from './sections.ts';

/** A table as JSON: rows as objects by the name of the column. */
export type JsonTable = readonly Readonly<Record<string, string>>[];

export interface SheetJson {
  readonly schema: 'labelwright/sheet/1';
  readonly copy?: CopyKind;
  readonly fingerprint?: string;
  readonly product: { readonly name: string; readonly code: string };
  readonly basis: { readonly id: string; readonly title: string; readonly asOf: string };
  readonly date: string;
  readonly draft: boolean;
  readonly language: string;
  readonly revision: string | null;
  readonly sections: readonly {
    readonly number: number;
    readonly title: string;
    readonly items: readonly SheetJsonItem[];
  }[];
}

export interface SheetJsonItem {
  /** Key of the subheading, the same in every language. */
  readonly key: string;
  readonly state: ItemState;
  readonly heading: string;
  /** Letter in Table D.1 of 29 CFR 1910.1200 App. D. */
  readonly letter?: string;
  readonly text?: string;
  readonly list?: readonly string[];
  readonly table?: JsonTable;
  readonly pictograms?: readonly string[];
  readonly notes?: readonly string[];
  readonly source: string;
}

/** The sheet as structured data; the same texts as the printed one. */
export function sheetJson(input: SheetInput, copy?: CopyMark): SheetJson {
  const { record, classification, draft } = input;
  return {
    schema: 'labelwright/sheet/1',
    ...(copy && { copy: copy.kind, fingerprint: copy.fingerprint }),
    product: { name: record.name, code: record.code },
    basis: classification.basis,
    date: dayOf(input),
    draft,
    language: input.words.language,
    revision: revisionOf(input),
    sections: sheetSections(input).map(({ number, title, items }) => ({
      number,
      title,
      items: items.map(jsonItem),
    })),
  };
}

function jsonItem({
  key,
  state,
  heading,
  letter,
  text,
  list: plain,
  groups,
  table,
  figures,
  notes,
  source,
}: SheetItem): SheetJsonItem {
  const list = [...plain, ...groups.flatMap(group => group.list.map(entry => `${group.title}: ${entry}`))];
  return {
    key,
    state,
    heading,
    ...(letter && { letter }),
    ...(text.length > 0 && { text: text.join('\n') }),
    ...(list.length > 0 && { list }),
    ...(table && {
      table: table.rows.map(row =>
        Object.fromEntries(table.columns.map((column, at) => [column, row[at] ?? ''])),
      ),
    }),
    ...(figures.length > 0 && { pictograms: figures.map(({ code }) => code) }),
    ...(notes.length > 0 && { notes }),
    source,
  };
}
