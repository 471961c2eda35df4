import type { LabelPurpose } from '../labelling/purposes.ts';
import type { Pack } from '../record/product-record.ts';

export interface LabelOptions {
  readonly pack: Pack;
  /** What the label is for; decides its template, its words and its least sizes. */
  readonly purpose: LabelPurpose;
  /** The regulated panel alone, to drop into artwork. */
  readonly only?: 'precautions';
  /** YYYY-MM-DD */
  readonly date: string;
}
