import type { AllocationRow } from '../../reference/label-data/allocation.ts';
import type { Omission, PrecautionGroup } from '../label-elements.ts';
import type { FieldWords } from '../statement-text.ts';

/** A precautionary statement on its way to the label. */
export interface Precaution {
  /** Codes it is made of, in the order of their texts. */
  readonly parts: readonly string[];
  readonly group: PrecautionGroup;
  /** Options that the rows name, by field. */
  readonly fields: FieldWords;
  /** Rows that call for it. */
  readonly rows: readonly AllocationRow[];
  /** Code by which it is placed, where that is not the first part. */
  readonly place?: string;
  /** Conditions of use that all rows put on it: `unless P260`. */
  readonly unless?: string;
}

/** Precautions with what was left off so far. */
export interface Progress {
  readonly precautions: readonly Precaution[];
  readonly omitted: readonly Omission[];
}

// Asked all the time, and most have one part.
export const codeOf = ({ parts }: Pick<Precaution, 'parts'>): string =>
  parts.length === 1 ? parts[0]! : parts.join('+');

/** Whether every part of a combination `P303+P361` is in the statement. */
export const contains = ({ parts }: Precaution, combination: string): boolean =>
  combination.split('+').every(part => parts.includes(part));
