import type { CopyKind, CopyMark } from '../../provenance/copy-mark.ts';
import type { ItemState, SheetItem, SheetValue } from './content.ts';
import type { SheetInput } from './input.ts';
import { type JsonIngredient, jsonIngredients } from './json-ingredients.ts';
import { dayOf, revisionOf, superseded } from './revisions.ts';
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
  /** The revision that this one takes the place of. */
  readonly supersedes: { readonly revision: string; readonly date: string } | null;
  /** Who answers for the sheet. */
  readonly maker: {
    readonly name: string;
    readonly address: readonly string[];
    readonly telephone: string;
    readonly emergency: { readonly telephone: string; readonly hours: string };
    readonly email: string | null;
    readonly website: string | null;
  };
  /** Classes of the mixture under the basis. */
  readonly classification: readonly {
    readonly code: string;
    readonly class: string;
    readonly category: string | null;
    readonly route: string | null;
    readonly statements: readonly string[];
  }[];
  /** Elements of section 2 with their codes apart from their texts. */
  readonly label: {
    readonly signalWord: string | null;
    readonly pictograms: readonly string[];
    readonly hazardStatements: readonly JsonStatement[];
    readonly precautionaryStatements: readonly JsonStatement[];
    readonly supplemental: readonly JsonStatement[];
  };
  /** What section 3 lists. */
  readonly ingredients: readonly JsonIngredient[];
  readonly sections: readonly {
    readonly number: number;
    readonly title: string;
    readonly items: readonly SheetJsonItem[];
  }[];
}

export interface JsonStatement {
  readonly code: string;
  readonly text: string;
  /** Group of a precautionary statement. */
  readonly group?: string;
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
  readonly groups?: readonly { readonly title: string; readonly list: readonly string[] }[];
  readonly table?: JsonTable;
  /** The numbers of the item, apart from its text. */
  readonly values?: readonly SheetValue[];
  readonly pictograms?: readonly string[];
  readonly notes?: readonly string[];
  readonly source: string;
}

/** The sheet as structured data; the same texts as the printed one. */
export function sheetJson(input: SheetInput, copy?: CopyMark): SheetJson {
  const { record, classification, elements, draft } = input;
  const { maker } = record;
  const former = superseded(input);
  return {
    schema: 'labelwright/sheet/1',
    ...(copy && { copy: copy.kind, fingerprint: copy.fingerprint }),
    product: { name: record.name, code: record.code },
    basis: classification.basis,
    date: dayOf(input),
    draft,
    language: input.words.language,
    revision: revisionOf(input),
    supersedes: former && { revision: former.revision, date: former.date },
    maker: {
      name: maker.name,
      address: maker.address,
      telephone: maker.telephone,
      emergency: maker.emergency,
      email: maker.email,
      website: maker.website,
    },
    classification: classification.hazards.map(({ code, hazardClass, category, route, statements }) => ({
      code,
      class: hazardClass,
      category: category === '' ? null : category,
      route,
      statements,
    })),
    label: {
      signalWord: elements.signalWord,
      pictograms: elements.pictograms,
      hazardStatements: elements.hazardStatements.map(jsonStatement),
      precautionaryStatements: elements.precautionaryStatements.map(each => ({
        ...jsonStatement(each),
        group: each.group,
      })),
      supplemental: elements.supplemental.map(jsonStatement),
    },
    ingredients: jsonIngredients(input),
    sections: sheetSections(input).map(({ number, title, items }) => ({
      number,
      title,
      items: items.map(jsonItem),
    })),
  };
}

const jsonStatement = ({ code, text }: JsonStatement): JsonStatement => ({ code, text });

function jsonItem({
  key,
  state,
  heading,
  letter,
  text,
  list,
  groups,
  table,
  values,
  figures,
  notes,
  source,
}: SheetItem): SheetJsonItem {
  return {
    key,
    state,
    heading,
    ...(letter && { letter }),
    ...(text.length > 0 && { text: text.join('\n') }),
    ...(list.length > 0 && { list }),
    ...(groups.length > 0 && { groups }),
    ...(table && {
      table: table.rows.map(row =>
        Object.fromEntries(table.columns.map((column, at) => [column, row[at] ?? ''])),
      ),
    }),
    ...(values.length > 0 && { values }),
    ...(figures.length > 0 && { pictograms: figures.map(({ code }) => code) }),
    ...(notes.length > 0 && { notes }),
    source,
  };
}
