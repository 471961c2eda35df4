import type { LabelPurpose } from '../labelling/purposes.ts';
import type { PressProfile } from '../layout/stock.ts';
import type { LabelLanguages } from '../notation/languages.ts';
import type { OutputProfile } from '../pdf/profile.ts';
import type { Millimetres } from '../quantity/length.ts';
import type { LengthUnit } from '../quantity/length-text.ts';
import type { Pack } from '../record/product-record.ts';
import type { PressWish } from '../record/record-blocks.ts';

/** What prints a label: a press, or the shop's own roll printer by its dots per inch. */
export type LabelTarget = 'press' | 'printer-203' | 'printer-300' | 'printer-600';

/** What the call says of the press; it goes before the record of the maker. */
export interface PressOptions {
  /** Profile of press and material, in place of that of the package. */
  readonly profile?: PressProfile;
  readonly wish: Partial<PressWish>;
}

export interface LabelOptions {
  readonly pack: Pack;
  /** What the label is for; decides its template, its words and its least sizes. */
  readonly purpose: LabelPurpose;
  /** The regulated panel alone, to drop into artwork. */
  readonly only?: 'precautions';
  /** Size of that panel; that of the label where it is left out. */
  readonly size?: { readonly width: Millimetres; readonly height: Millimetres; readonly unit: LengthUnit };
  /** ICC profile of the press and its printing condition: the file is then built to PDF/X-4. */
  readonly output?: OutputProfile;
  /** What prints it; default the press. */
  readonly target?: LabelTarget;
  /** Crop marks and a line on the job outside the bleed; a press alone has them. */
  readonly marks?: boolean;
  /** English where it is left out. */
  readonly language?: LabelLanguages;
  readonly press?: PressOptions;
  /** YYYY-MM-DD */
  readonly date: string;
}
