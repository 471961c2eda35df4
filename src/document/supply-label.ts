import type { LabelElements } from '../labelling/label-elements.ts';
import { marked } from '../quantity/print.ts';
import type { Pack } from '../record/product-record.ts';
import type { EuSupplier } from '../record/record-blocks.ts';
import type { LabelSections } from './label.ts';
import { netContents } from './net-contents.ts';
import { unbroken } from './statement-paragraphs.ts';

/** What the label for supply in the Union is filled from. */
export interface SupplyLabelInput {
  readonly supplier: EuSupplier | null;
  /** Names of the substances of the product identifier, as the label may tell them. */
  readonly names: readonly string[];
  /** Unique formula identifier; null where the record gives none. */
  readonly ufi: string | null;
  readonly elements: Pick<LabelElements, 'supplemental'>;
  readonly pack: Pick<Pack, 'contents'>;
  /** BCP 47 */
  readonly language: string;
  readonly decimalMark: string;
  /** An inner packaging that bears the least (CLP Annex I, 1.5.1.2). */
  readonly inner?: boolean;
}

/** The sections of the label for supply in the Union beside the elements (CLP Articles 17, 18(3) and 25). */
export function supplySections({
  supplier,
  names,
  ufi,
  elements,
  pack,
  language,
  decimalMark,
  inner = false,
}: SupplyLabelInput): LabelSections {
  return {
    language,
    inner,
    substances: names,
    supplier: supplier && { ...supplier, telephone: unbroken(supplier.telephone) },
    supplement: (!inner && elements.supplemental.length > 0) || ufi !== null,
    // It is read out over the telephone: no line ends within it.
    ufi: ufi?.replaceAll('-', '\u2011') ?? null,
    // Metric units alone, whatever the record counts in.
    contents: marked(netContents(pack.contents)?.metric ?? pack.contents.written, decimalMark),
  };
}
