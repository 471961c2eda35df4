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
import type { ForeignText } from '../foreign.ts';

/** How one pack is carried. */
export interface PackTransport {
  /** Contents as the record writes them; null where the record has no pack. */
  readonly pack: string | null;
  readonly answer: TransportAnswer;
}

/** Numbers by which the harmonised table knows a substance. */
export type SubstanceEntry = { readonly index: string; readonly ec: string | null } | null;
/** A solution that the user makes of the product, with what it is by calculation. */
export interface SheetSolution {
  /** Parts of the product to parts of the diluent, as the record writes them. */
  readonly ratio: string;
  readonly with: string;
  /** What it is for; null where the record does not say. */
  readonly use: string | null;
  readonly packs: readonly string[];
  readonly classification: Classification;
  readonly elements: LabelElements;
}

/** What a safety data sheet is made of. */
export interface SheetInput {
  readonly record: CompleteRecord;
  readonly formula: Formula;
  readonly classification: Classification;
  readonly elements: LabelElements;
  /** The same with every precautionary statement: the sections of measures say also what a label leaves off for its number. */
  readonly measures: LabelElements;
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
  /** Solutions that the user makes; the sheet is of the product as sold and tells of them apart. */
  readonly solutions?: readonly SheetSolution[];
  /** Figures of the basis, for the cut-offs from which ingredients are named. */
  readonly thresholds: Thresholds;
  /** Entry of CLP Annex VI of each constituent, also where the record gives hazards of its own; null where none is. */
  readonly entries: readonly SubstanceEntry[];
  /** Text of a hazard statement by its code; null where the basis has none. */
  readonly statementText: (code: string) => string | null;
  /** ISO 8601 instant. */
  readonly date: string;
  /** Revision of the sheet; that of the record where null. */
  readonly revision: string | null;
  /** Texts in another language than that of the sheet. */
  readonly foreign?: readonly ForeignText[];
  /** No valid sign-off stands beside the record. */
  readonly draft: boolean;
}
