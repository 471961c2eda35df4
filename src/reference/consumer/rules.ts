/** A hazard as the law defines it (16 CFR 1500.3(b)(4)(i)(A), (c)). */
export type ConsumerKind =
  | 'highly-toxic'
  | 'toxic'
  | 'corrosive'
  | 'irritant'
  | 'strong-sensitizer'
  | 'extremely-flammable'
  | 'flammable'
  | 'combustible'
  | 'pressure';

/** The word that opens the cautions; `POISON` stands in its place where 16 CFR 1500.129 asks for it. */
export type ConsumerSignal = 'POISON' | 'DANGER' | 'WARNING' | 'CAUTION';

/** How a class of the classification is proposed. */
export interface ClassRow {
  readonly class: string;
  /** Absent where all categories count. */
  readonly categories?: readonly string[];
  readonly effect?: string;
  readonly kind: ConsumerKind;
  /** Id of the statement; `as-classified` takes the words of the classification. */
  readonly statement: string;
  readonly cite: string;
  /** Data that would settle it, by id. */
  readonly settledBy: readonly string[];
}

/** Doses between which a substance is toxic, and highly toxic below. */
export interface DoseRow {
  readonly route: string;
  readonly estimate: 'oral' | 'dermal' | 'gas' | 'mist';
  readonly unit: string;
  /** At most. */
  readonly highlyToxic: number;
  readonly toxic: number;
  /** From the hours of the estimate to those of the law. */
  readonly factor: number;
  readonly fatal: string;
  readonly harmful: string;
  readonly settledBy: readonly string[];
  readonly cites: { readonly highlyToxic: string; readonly toxic: string };
}

/** Words, symbols or a designation that a substance brings from a percent by weight. */
export interface SpecialRule {
  readonly id: string;
  readonly cite: string;
  /** Met at the figure; 0: any amount. */
  readonly limit: number;
  /** Paragraph that spares a thick liquid. */
  readonly thin?: string;
  /** Holds for products of a kind alone. */
  readonly condition?: string;
  readonly signal: ConsumerSignal | null;
  readonly poison?: boolean;
  readonly petroleum?: boolean;
  readonly statements: readonly string[];
  readonly also?: readonly string[];
  /** CAS number to the part of its mass that counts. */
  readonly members: Readonly<Record<string, number>>;
}

/** Degrees Fahrenheit of a closed cup between which a liquid burns easily. */
export interface FlashRules {
  readonly extremelyFlammable: { readonly atMost: number; readonly cite: string };
  readonly flammable: { readonly below: number; readonly cite: string };
  readonly combustible: { readonly atMost: number; readonly cite: string };
  /** By category of Flam. Liq., the worst that its range allows. */
  readonly withoutFlashPoint: Readonly<Record<string, ConsumerKind>>;
}

/** Hazards and statements of the law for consumers. */
export interface ConsumerData {
  readonly doses: readonly DoseRow[];
  /** Categories that are highly toxic, and those that may be, where no estimate decides. */
  readonly byClass: { readonly highlyToxic: readonly string[]; readonly doubt: readonly string[] };
  readonly flash: FlashRules;
  /** Signal words by the kinds that ask for them. */
  readonly signal: Readonly<Record<Exclude<ConsumerSignal, 'POISON'>, readonly string[]>> & {
    readonly cite: string;
  };
  readonly classes: readonly ClassRow[];
  readonly uncovered: readonly {
    readonly classes: readonly string[];
    readonly why: string;
    readonly cite: string;
  }[];
  /** In the order of the label. */
  readonly statements: readonly { readonly id: string; readonly text?: string }[];
  readonly merge: readonly { readonly of: readonly string[]; readonly to: string }[];
  readonly within: Readonly<Record<string, readonly string[]>>;
  readonly also: Readonly<Record<string, { readonly text: string }>>;
  readonly children: string;
  readonly elsewhere: string;
  /** Kinds whose components need no name. */
  readonly nameless: readonly string[];
  /** Statements of the classification that the words of this law say. */
  readonly replaced: readonly string[];
}
