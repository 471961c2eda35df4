import type { PrecautionGroup } from '../labelling/label-elements.ts';

/** Fixed words of a label, beside what the law and the maker say. */
export interface LabelWords {
  readonly draft: string;
  readonly subject: { readonly draft: string; readonly final: string };
  title(name: string, pack: string): string;
  /** Headings of the groups of precautionary statements; that of general ones has none. */
  readonly groups: Readonly<Record<Exclude<PrecautionGroup, 'general'>, string>>;
  readonly directions: string;
  readonly contains: string;
  readonly telephone: string;
  readonly emergency: string;
  readonly productCode: string;
  readonly lot: string;
  readonly barCode: string;
  /** Name of the language in itself, over a text that is added in it. */
  readonly translation: string;
}
