import type { Classification } from '../../classify/classification.ts';
import type { Formula } from '../../formula/constituent.ts';
import type { LabelElements } from '../../labelling/label-elements.ts';
import type { CompleteRecord } from '../../record/product-record.ts';
import type { ExposureTable } from '../../reference/exposure/open-exposure.ts';
import type { PropertyTable } from '../../reference/properties/ingredient-properties.ts';
import type { RegulatoryTable } from '../../reference/regulatory/open-regulatory.ts';
import type { Thresholds } from '../../reference/thresholds.ts';
import type { TransportAnswer } from '../../transport/answer.ts';
import type { Words } from '../../words/words.ts';

/** How one pack is carried. */
export interface PackTransport {
  /** Contents as the record writes them; null where the record has no pack. */
  readonly pack: string | null;
  readonly answer: TransportAnswer;
}

/** What a safety data sheet is made of. */
export interface SheetInput {
  readonly record: CompleteRecord;
  readonly formula: Formula;
  readonly classification: Classification;
  readonly elements: LabelElements;
  /** The mixture under the GHS, for section 12, where the basis of the sheet has no environmental classes; else null. */
  readonly environment: Classification | null;
  readonly words: Words;
  /** Workplace limits and carcinogen lists. */
  readonly exposure: ExposureTable;
  /** Properties of common ingredients from reference works. */
  readonly properties: PropertyTable;
  /** Lists of CERCLA, EPCRA and the states. */
  readonly regulatory: RegulatoryTable;
  /** How each pack is carried under 49 CFR 171 to 180. */
  readonly transport: readonly PackTransport[];
  /** Figures of the basis, for the cut-offs from which ingredients are named. */
  readonly thresholds: Thresholds /** ISO 8601 instant. */;
  readonly date: string;
  /** Revision of the sheet; that of the record where null. */
  readonly revision: string | null;
  /** No valid sign-off stands beside the record. */
  readonly draft: boolean;
}
