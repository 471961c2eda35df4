import type { Pack } from '../record/product-record.ts';

/** Who the label is for; decides the template. */
export type LabelAudience = 'us-workplace';

/** What prints a label: a press, or the shop's own roll printer by its dots per inch. */
export type LabelTarget = 'press' | 'printer-203' | 'printer-300' | 'printer-600';

export interface LabelOptions {
  readonly pack: Pack;
  readonly audience: LabelAudience;
  /** The regulated panel alone, to drop into artwork. */
  readonly only?: 'precautions';
  /** What prints it; default the press. */
  readonly target?: LabelTarget;
  /** Crop and register marks outside the bleed; a press alone has them. */
  readonly marks?: boolean;
  /** YYYY-MM-DD */
  readonly date: string;
}
