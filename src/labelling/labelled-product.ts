/**
 * Words of the maker for the fields of statements, by statement code and field: option keys or free text. The field
 * `*` is the only one, or the only one that has no words of its own.
 */
export type StatementWords = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

/** What a label needs to know of the product beside its classification. Unknown facts keep a statement. */
export interface LabelledProduct {
  readonly form: 'liquid' | 'solid' | 'gas' | 'aerosol';
  /** What the record takes for a reading; null where it makes no choice. */
  readonly choice?: (readingId: string) => string | null;
  /** Supplied to the general public. */
  readonly consumer?: boolean;
  /** Gives off vapours that can form a hazardous or explosive atmosphere; null or absent where unknown. */
  readonly volatile?: boolean | null;
  /** Inhalable dusts or mists may occur during use; null or absent where unknown. */
  readonly inhalable?: boolean | null;
  /** Applied by spraying; null or absent where unknown. */
  readonly sprayed?: boolean | null;
  /** Names a specific treatment printed on the label (an antidote, a cleansing agent). */
  readonly specificTreatment?: string | null;
  /** Explosives of Division 1.4: compatibility group S in transport packaging. */
  readonly compatibilityGroupS?: boolean | null;
  readonly words?: StatementWords;
  /** Alternatives of a statement that apply, by its code: keys of options. */
  readonly choose?: Readonly<Record<string, readonly string[]>>;
  /** Joins acute toxicity statements of several routes into one. */
  readonly combineHazardStatements?: boolean;
  /** Precautionary statements to keep where a basis limits their number, by code. */
  readonly keep?: readonly string[];
  /** Statements left out, with the reason of the responsible person (C.2.2.2, C.2.4.9). */
  readonly omit?: readonly { readonly code: string; readonly reason: string }[];
  /** Precautionary and supplemental statements that the maker adds, by code. */
  readonly add?: readonly string[];
  /** Supplemental statements that the record adds to those of the classification, with the words for their fields. */
  readonly supplementalCodes?: readonly {
    readonly code: string;
    readonly fields?: Readonly<Record<string, readonly string[]>>;
  }[];
}

/** Where label elements stand: on the label, or in section 2 of the data sheet, which has no optional warning. */
export type Place = 'label' | 'sheet';
