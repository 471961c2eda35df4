import type { Hazard } from '../notation/hazard.ts';
import type { Bound } from '../quantity/bound.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Position } from '../report/diagnostic.ts';
import type { BatchSize, FormulaLine } from './formula-lines.ts';
import type { Pack } from './pack.ts';
import type {
  Artwork,
  Brand,
  EuSupplier,
  PressWish,
  Reaction,
  Review,
  Revision,
  SheetIngredient,
  SoldTo,
  StatementSettings,
  Voc,
} from './record-blocks.ts';
import type { SheetKey } from './sheet-keys.ts';
import type { Translation } from './translation.ts';

export type {
  Amount,
  BatchSize,
  FormulaLine,
  RawMaterial,
  RawMaterialLine,
  SubstanceLine,
} from './formula-lines.ts';
export type { Pack, Quantity } from './pack.ts';

export type PhysicalForm = 'liquid' | 'solid' | 'gas' | 'aerosol';

/** A measured property with what is known of the measurement. */
export interface Measured<T> {
  readonly value: T;
  /** The value as written in the record, with its unit. */
  readonly written: string;
  readonly method: string | null;
  readonly source: string | null;
  /**
   * Set where the record gives a side of a limit alone, such as `> 93 C`. The value is then the worse end of what is
   * possible: the limit itself, or the least that any liquid can have.
   */
  readonly bound?: Bound;
  /** Revision or day of the formula that was measured. */
  readonly measuredOn?: string | null;
  /** Constituents that bear on it, by name or CAS number, with their percents in the formula that was measured. */
  readonly measuredFormula?: readonly MeasuredPart[];
}

/** A constituent of the formula that was measured. */
export interface MeasuredPart {
  readonly name: string;
  readonly low: Exact;
  readonly high: Exact;
}

/** Flash point: a temperature, or none where a test found none. */
export type FlashPoint =
  | { readonly kind: 'none' }
  | { readonly kind: 'temperature'; readonly celsius: Exact; readonly cup: 'closed' | 'open' | null };

/** Properties measured on the finished product; absent where the record gives none. */
export interface Properties {
  readonly pH?: Measured<Exact>;
  /** g/mL; the text names its temperature where the record does. */
  readonly density?: Measured<Exact>;
  readonly flashPoint?: Measured<FlashPoint>;
  /** Degrees Celsius. */
  readonly initialBoilingPoint?: Measured<Exact>;
  /** mm2/s at 40 C. */
  readonly kinematicViscosity40C?: Measured<Exact>;
  /** Properties that only the data sheet prints, by their key in the record (`vapor-pressure`, `solubility`). */
  readonly other: Readonly<Record<string, Measured<string>>>;
}

export interface Maker {
  readonly name: string;
  /** Address, a line each. */
  readonly address: readonly string[];
  readonly telephone: string;
  readonly emergency: { readonly telephone: string; readonly hours: string };
  readonly email: string | null;
  readonly website: string | null;
  readonly brand?: Brand | null;
  /** Supplier in the European Union; null where the record gives none. */
  readonly euSupplier?: EuSupplier | null;
  readonly press?: PressWish | null;
}

/** By which rule a result is taken over from a similar tested mixture. */
export type BridgingPrinciple =
  | 'dilution'
  | 'batching'
  | 'concentration'
  | 'interpolation'
  | 'substantially-similar'
  | 'aerosols';

/** A whole-mixture result that replaces a calculation. */
export interface Evidence {
  /** Class abbreviation that it speaks of: `Met. Corr.`, `Skin Corr.`, `Acute Tox.`. */
  readonly hazardClass: string;
  readonly route: 'oral' | 'dermal' | 'inhalation' | null;
  /** Hazard found, in the notation of the contract; null where the result is "not classified". */
  readonly hazard: Hazard | null;
  /** `test` on the whole mixture, `bridging` from a similar tested mixture, `reserve` for acid/alkali reserve. */
  readonly kind: 'test' | 'bridging' | 'reserve';
  /** Set where the kind is `bridging`. */
  readonly principle: BridgingPrinciple | null;
  readonly method: string;
  readonly source: string;
  readonly reason: string | null;
  readonly at: Position;
}

/** A choice among readings of the law, with the reviewer's reason. */
export interface Choice {
  readonly reading: string;
  readonly take: string;
  readonly reason: string;
  readonly at: Position;
}

/** The maker's own words for the label; never rewritten. */
export interface Copy {
  readonly tagline: string | null;
  readonly directions: readonly string[];
  readonly origin?: string | null;
  readonly note?: string | null;
  readonly artwork?: Artwork | null;
  /** Place of each word of these texts, of the name and the use, by path: `copy.directions[0]`, `name`. */
  readonly at?: Readonly<Record<string, readonly Position[]>>;
}

/**
 * The maker's texts for sections of the data sheet that no calculation gives, by the key of the record; a group
 * has dots in its keys: `spill`, `ppe.hands`, `fire.suitable-media`.
 */
export type SheetTexts = Readonly<Partial<Record<SheetKey, string>>>;

/** A product record, read, validated and in fixed units. */
export interface ProductRecord {
  readonly file: string;
  readonly name: string;
  readonly code: string;
  /** Unique formula identifier, `N1QV-R02N-J00M-WQD5`; null where the record gives none. */
  readonly ufi: string | null;
  /** Recommended use; null where the record gives none. */
  readonly use: string | null;
  readonly advisedAgainst: readonly string[];
  readonly form: PhysicalForm;
  readonly appearance: {
    readonly color: string | null;
    readonly odor: string | null;
    readonly physicalState: string | null;
  };
  /** Null where the record names none: enough to classify, not to print a label or a data sheet. */
  readonly maker: Maker | null;
  readonly properties: Properties;
  readonly formula: readonly FormulaLine[];
  readonly batch: BatchSize | null;
  readonly evidence: readonly Evidence[];
  readonly choices: readonly Choice[];
  readonly packs: readonly Pack[];
  readonly copy: Copy;
  readonly sheet: SheetTexts;
  /** What was searched for and not found, by the key of the record: by whom and where. */
  readonly sheetSearched: SheetTexts;
  /** Where the texts of `sds:` stand, by their key. */
  readonly sheetAt?: Readonly<Partial<Record<SheetKey, Position>>>;
  readonly sheetIngredients: readonly SheetIngredient[];
  readonly soldTo: SoldTo | null;
  readonly voc?: Voc | null;
  readonly statements: StatementSettings | null;
  readonly reacts: readonly Reaction[];
  readonly reviews: readonly Review[];
  readonly revision: string | null;
  /** Year-month-day. */
  readonly revised: string | null;
  /** BCP 47; in which the maker's texts are written. */
  readonly language?: string;
  /** The maker's texts in other languages, by language. */
  readonly translations?: Readonly<Record<string, Translation>>;
  /** Names of constituents in the language of a document, by CAS number or name. */
  readonly spokenNames?: Readonly<Record<string, string>>;
  /** Revisions of the data sheet, the first one first; the present one may be among them. */
  readonly revisions: readonly Revision[];
  /** The record as parsed, for attaching to documents. */
  readonly raw: unknown;
}

/** A record with every fact that a label or a data sheet must print. */
export type CompleteRecord = ProductRecord & { readonly maker: Maker; readonly use: string };
