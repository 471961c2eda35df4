import type { Pack } from '../record/product-record.ts';

/** Who the label is for; decides the template. */
export type LabelAudience = 'us-workplace';

export interface LabelOptions {
  readonly pack: Pack;
  readonly audience: LabelAudience;
  /** The regulated panel alone, to drop into artwork. */
  readonly only?: 'precautions';
  /** YYYY-MM-DD */
  readonly date: string;
}
