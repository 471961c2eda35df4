import type { OutputProfile } from '../pdf/profile.ts';
import type { Millimetres } from '../quantity/length.ts';
import type { LengthUnit } from '../quantity/length-text.ts';
import type { Pack } from '../record/product-record.ts';

/** Who the label is for; decides the template. */
export type LabelAudience = 'us-workplace';

export interface LabelOptions {
  readonly pack: Pack;
  readonly audience: LabelAudience;
  /** The regulated panel alone, to drop into artwork. */
  readonly only?: 'precautions';
  /** Size of that panel; that of the label where it is left out. */
  readonly size?: { readonly width: Millimetres; readonly height: Millimetres; readonly unit: LengthUnit };
  /** ICC profile of the press and its printing condition: the file is then built to PDF/X-4. */
  readonly output?: OutputProfile;
  /** YYYY-MM-DD */
  readonly date: string;
}
