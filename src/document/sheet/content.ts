import type { PictogramCode } from '../../labelling/label-elements.ts';

/** Rows of texts; the first cell of a row names it. */
export interface SheetTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A number that a text tells, apart from it. */
export interface SheetValue {
  /** What is measured, as `flashPoint`. */
  readonly property: string;
  /** The ingredient it is of; null for the product. */
  readonly of: string | null;
  readonly value: number;
  /** The value is a bound: `>` stands before it. */
  readonly bound?: string;
  readonly unit: string | null;
  readonly method?: string | null;
  readonly source: string | null;
}

/** What stands under one subheading, before layout. */
export interface ItemBody {
  readonly figures?: readonly { readonly code: PictogramCode; readonly title: string }[];
  /** Paragraphs. */
  readonly text?: readonly string[];
  readonly list?: readonly string[];
  /** Lists with a title each. */
  readonly groups?: readonly { readonly title: string; readonly list: readonly string[] }[];
  readonly table?: SheetTable | null;
  /** The numbers of the text, for those who read data. */
  readonly values?: readonly SheetValue[];
  /** Remarks on what is above, set smaller. */
  readonly notes?: readonly string[];
  readonly source: ItemSource;
}

/** Where the contents of an item are from. */
export type ItemSource =
  | 'product record'
  | 'calculation'
  | 'label elements'
  | 'hazard classes'
  | 'physical form'
  | 'reference tables'
  | 'law'
  | 'draft'
  | 'none';

/** Bodies of a section by the key of the subheading. */
export type SectionBodies = Readonly<Record<string, ItemBody>>;

/** Whether an item has its contents, was searched for in vain, or is still to be searched for. */
export type ItemState = 'filled' | 'searched' | 'open';

export interface SheetItem extends Required<ItemBody> {
  readonly key: string;
  readonly state: ItemState;
  /** Key under `sds:` of the record that fills it or says where it was searched for; null where the record has none. */
  readonly asks: string | null;
  /** What one look-up or one measurement answers for several items; null where the item is asked for by itself. */
  readonly question: string | null;
  /** Letter in Table D.1, as `(a)`; empty where it has none. */
  readonly letter: string;
  readonly heading: string;
  /** Number and heading of the sub-section that the item is a part of, `9.1. …`; absent where it has none. */
  readonly part?: string;
}

export interface SheetSection {
  readonly number: number;
  /** Number and title as the law sets them, where it is not `1. …`. */
  readonly head?: string;
  readonly title: string;
  /** Headings and texts beside each other in one table. */
  readonly pairs: boolean;
  readonly note: string | null;
  readonly items: readonly SheetItem[];
}

const filled = (texts: readonly (string | null | undefined)[]): string[] =>
  texts.filter((text): text is string => Boolean(text?.trim()));

/** Paragraphs of a text of the record. */
export const paragraphs = (text: string | null | undefined): string[] => filled(text?.split(/\n+/u) ?? []);

/** A body of the parts that are there; null where there is none. */
export function bodyOf(source: ItemSource, parts: Omit<ItemBody, 'source'>): ItemBody | null {
  const text = filled(parts.text ?? []);
  const list = filled(parts.list ?? []);
  const some =
    text.length +
      list.length +
      (parts.figures?.length ?? 0) +
      (parts.table?.rows.length ?? 0) +
      (parts.groups?.length ?? 0) >
    0;
  return some ? { ...parts, text, list, source } : null;
}

/** Nothing is known: `sections.ts` says whether it was searched for. */
export const nothing: ItemBody = { source: 'none' };

/** One sentence that stands of itself. */
export const said = (source: ItemSource, ...text: readonly string[]): ItemBody => ({ text, source });

/** The first body that is there. */
export const firstBody = (...bodies: readonly (ItemBody | null)[]): ItemBody =>
  bodies.find(body => body !== null) ?? nothing;
