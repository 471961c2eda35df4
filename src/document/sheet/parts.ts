import type { SheetKey } from '../../record/sheet-keys.ts';
import { adviceTexts } from './advice.ts';
import { bodyOf, type ItemBody, type ItemSource, nothing, paragraphs } from './content.ts';
import type { SheetInput } from './input.ts';

/** What can stand under a subheading of measures, from the best source to the last. */
export interface Parts {
  /** Place of the sentences of our own, where it has any. */
  readonly place?: string;
  /** Texts of the maker; where they stand, none of our own does. */
  readonly own: SheetKey | readonly string[];
  /** Statements of the label. */
  readonly label?: readonly string[];
  /** What follows from the classification. */
  readonly derived?: readonly string[];
  readonly notes?: readonly string[];
}

/** The maker's text, the statements of the label and, without the former, sentences from hazard and form. */
export function measure(
  input: SheetInput,
  { place, own, label = [], derived = [], notes = [] }: Parts,
): ItemBody {
  const text = typeof own === 'string' ? paragraphs(input.record.sheet[own]) : own;
  const advice =
    place && text.length === 0 ? adviceTexts(input, place, label.length > 0, derived.length > 0) : [];
  const source: ItemSource =
    text.length > 0 ? 'product record' : label.length > 0 ? 'label elements' : 'hazard classes';
  return bodyOf(source, { text, list: [...label, ...derived, ...advice], notes }) ?? nothing;
}
