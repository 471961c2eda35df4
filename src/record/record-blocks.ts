import type { Exact } from '../quantity/exact.ts';
import type { Millimetres } from '../quantity/length.ts';
import type { Position } from '../report/diagnostic.ts';
import type { GivenData } from './given-data.ts';

/** Who buys the product, and where: decides which labels are due. */
export interface SoldTo {
  readonly users: readonly ('workplace' | 'consumers')[];
  readonly markets: readonly ('us' | 'eu')[];
  /** BCP 47; languages of documents, beside English. */
  readonly languages?: readonly string[];
}

/** Facts on which statements depend; null where the record does not say. */
export interface StatementConditions {
  /** Gives off vapours that can form a hazardous atmosphere. */
  readonly volatile: boolean | null;
  /** Inhalable dusts or mists may occur in use. */
  readonly inhalable: boolean | null;
  /** Applied by spraying. */
  readonly sprayed: boolean | null;
  /** A specific treatment that the label names. */
  readonly specificTreatment: string | null;
  /** Explosives of Division 1.4: compatibility group S in transport packaging. */
  readonly compatibilityGroupS: boolean | null;
}

/** What the record says of hazard, precautionary and supplemental statements; codes as `P370+P378`. */
export interface StatementSettings {
  /** Words for the fields of a statement; a single field without a name is `*`. */
  readonly words: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  readonly conditions: StatementConditions;
  /** Alternatives of a statement that apply: `P260: [mist, spray]`. */
  readonly choose: Readonly<Record<string, readonly string[]>>;
  /** Statements that stay where their number is limited. */
  readonly keep: readonly string[];
  /** Statements left out, with the reason (29 CFR 1910.1200 App. C, C.2.4.9). */
  readonly omit: readonly { readonly code: string; readonly reason: string; readonly at: Position }[];
  /** Statements that the maker adds. */
  readonly add: readonly string[];
  /** Signal word that the maker chose for the label for consumers; null where the record leaves it to the proposal. */
  readonly consumerSignal: {
    readonly word: 'WARNING' | 'CAUTION';
    readonly reason: string;
    readonly at: Position;
  } | null;
}

/** What is claimed as a trade secret for a line (29 CFR 1910.1200(i)). */
export interface TradeSecret {
  readonly identity: boolean;
  readonly percent: boolean;
  /** What the sheet prints in place of a withheld name; null where the record gives nothing. */
  readonly shownAs: string | null;
  /** Alternative chemical name that the Agency allowed (Regulation (EC) No 1272/2008, Article 24), with its decision. */
  readonly alternativeName?: { readonly name: string; readonly approval: string } | null;
}

/** A constituent of the formula that a reaction uses up. */
export interface Reactant {
  /** CAS number or name of a constituent. */
  readonly of: string;
  readonly moles: Exact;
  /** g/mol */
  readonly molarMass: Exact;
}

/** What a reaction leaves; water counts. */
export interface ReactionProduct {
  readonly name: string;
  readonly cas: string | null;
  readonly moles: Exact;
  /** g/mol */
  readonly molarMass: Exact;
  readonly given: GivenData;
}

/** A reaction that runs to its end in the batch: what remains is classified. */
export interface Reaction {
  readonly consumes: readonly Reactant[];
  readonly forms: readonly ReactionProduct[];
  readonly source: string | null;
  readonly at: Position;
  /** `reacts[0]` */
  readonly path: string;
}

/** A use solution: parts of the pack's content in parts of the diluent, by volume. */
export interface Dilution {
  readonly with: string;
  readonly product: Exact;
  readonly diluent: Exact;
  /** `1:16` */
  readonly written: string;
  /** What this solution is for. */
  readonly use: string | null;
  readonly at: Position;
}

/** A supplier in the European Union (Regulation (EC) No 1907/2006, Annex II, 1.3 and 1.4). */
export interface EuSupplier {
  readonly name: string;
  readonly role: string | null;
  readonly address: readonly string[];
  readonly telephone: string;
  /** Mail of the competent person for the data sheet. */
  readonly email: string | null;
  readonly emergency: readonly {
    readonly body: string;
    readonly country: string | null;
    readonly telephone: string;
    readonly hours: string;
  }[];
}

/** A color for printing: process parts in percent, a spot ink with parts that look like it, or red, green and blue of 0 to 255. */
export type BrandColor =
  | {
      readonly kind: 'cmyk';
      readonly parts: readonly [number, number, number, number];
      readonly written: string;
    }
  | {
      readonly kind: 'spot';
      readonly name: string;
      readonly parts: readonly [number, number, number, number];
      readonly written: string;
    }
  | { readonly kind: 'rgb'; readonly parts: readonly [number, number, number]; readonly written: string };

/** The maker's look. */
export interface Brand {
  readonly color: BrandColor | null;
  /** Path of the logo, as seen from where the record lies. */
  readonly logo: string | null;
  /** Kept for the logo beside the name; null where it takes what the name leaves free. */
  readonly logoWidth: Millimetres | null;
  /** File in which it is named. */
  readonly file: string;
}

/** How the converter of the labels prints and cuts; null where the record leaves it to the press profile. */
export interface PressWish {
  /** Spot ink of the cut line. */
  readonly dieInk: string | null;
  readonly cut: 'through' | 'kiss' | null;
  readonly barWidthReduction: Millimetres | null;
  /** From the cut. */
  readonly safe: Millimetres | null;
  readonly bleed: Millimetres | null;
}

/** Artwork of the maker under the label, with the areas that the label may print on. */
export interface Artwork {
  /** Path, as seen from where the record lies. */
  readonly file: string;
  /** Of a PDF, from 1; null where it has one page. */
  readonly page: number | null;
  /** Id of the pack that it is for; null for every pack. */
  readonly pack: string | null;
  /** Purposes of the labels that it is for; null for every label of a pack. */
  readonly purposes: readonly string[] | null;
  readonly areas: readonly ArtArea[];
  /** Where the file is named. */
  readonly at: Position;
}

/** An area of the artwork that the label prints on. */
export interface ArtArea {
  readonly holds: 'regulated' | 'identity' | 'directions' | 'bar-code' | 'net-contents' | 'lot';
  /** From the lower left corner of the trim. */
  readonly left: Millimetres;
  readonly bottom: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** What its text stands on. */
  readonly ground: 'white' | 'artwork';
}

/** A qualified person's review, as `sign` writes it. */
export interface Review {
  readonly by: string;
  readonly qualification: string | null;
  /** Year-month-day. */
  readonly date: string;
  /** What was reviewed: `classification`, `label bottle-946`, `sheet`. */
  readonly of: readonly string[];
  /** Fingerprint of the inputs that were reviewed. */
  readonly fingerprint: string;
  readonly note: string | null;
}

/** What the data sheet needs of one ingredient and calculation cannot know. */
export interface SheetIngredient {
  /** CAS number or name of a constituent. */
  readonly of: string;
  readonly limits: readonly {
    readonly list: string;
    readonly value: string;
    /** Year-month-day or year; null where not given. */
    readonly date: string | null;
    /** A workplace limit of the European Union. */
    readonly union?: boolean;
  }[];
  /** EC number, where the harmonised entry has none or another. */
  readonly ec?: string | null;
  /** REACH registration number. */
  readonly registration?: string | null;
  /** Why it is PBT, vPvB, PMT or vPvM; null where the record does not say that it is. */
  readonly pbt?: string | null;
  readonly endocrine?: string | null;
  readonly candidateList?: string | null;
  readonly synonyms: readonly string[];
  readonly impurities: string | null;
  readonly toxicity: string | null;
  readonly ecotoxicity: string | null;
  readonly persistence: string | null;
  readonly bioaccumulation: string | null;
  readonly mobility: string | null;
  readonly source: string | null;
  /** Listed in section 3 although it is below its cut-off. */
  readonly list: boolean;
  readonly at: Position;
}

/** What a record says of volatile organic compounds. */
export interface Voc {
  /** Category of 40 CFR 59 Subpart C, Table 1; `none` where none fits, null where nothing is said. */
  readonly category: string | null;
  readonly counted: readonly {
    /** Name or CAS number of a constituent. */
    readonly of: string;
    readonly as: 'voc' | 'low-vapor-pressure' | 'exempt' | 'not-organic' | 'fragrance';
    readonly source: string;
  }[];
}

/** A revision of the data sheet. */
export interface Revision {
  readonly revision: string;
  /** Year-month-day. */
  readonly date: string;
  /** What changed against the one before. */
  readonly changes: string | null;
}
