import type { BasisId } from '../basis.ts';

/** Paragraph of a rule in each basis. */
export type Cites = Readonly<Record<BasisId, string>>;

/** Which pictogram drops which other one, and the order on the label. */
export interface PictogramRules {
  readonly order: readonly string[];
  readonly once: { readonly cite: string };
  readonly precedence: readonly {
    readonly shown: string;
    /** Classes for which the pictogram must be shown for the rule to apply; without it, any. */
    readonly shownFor?: readonly string[];
    readonly drops: string;
    /** Classes for which the dropped one must be used; null for any. */
    readonly usedFor: readonly string[] | null;
    readonly cite: string;
  }[];
  /** Of several pictograms of one class only that of the most severe category. */
  readonly oneForAClass: { readonly cite: string } | null;
}

/** Rules of a basis on signal word, hazard statements and supplemental text. */
export interface LabelRules {
  readonly signalWord: { readonly cite: string };
  readonly hazardStatements: {
    readonly cite: string;
    readonly conveyedBy: readonly {
      readonly statement: string;
      readonly conveys: string;
      readonly why: string;
      readonly cite: string;
      /** The law leaves open whether the second may go; `keptBy` is the option that shows both. */
      readonly reading?: { readonly id: string; readonly keptBy: string };
    }[];
    /** Where a statement may be left out as inappropriate to the product; null where the basis has no such rule. */
    readonly inappropriate: { readonly cite: string } | null;
    readonly combined: { readonly cite: string };
  };
  readonly unknownAcuteToxicity: {
    readonly code: string;
    readonly one: string;
    /** For some routes with one percentage; each has a statement of its own where absent. */
    readonly several?: string;
    readonly between?: string;
    /** For all routes with one percentage, where the basis has words of its own. */
    readonly all?: string;
    /** Words of the routes; their keys where absent. */
    readonly routes?: Readonly<Record<string, string>>;
    readonly cite: string;
  };
  /** Of the language; a point where absent. */
  readonly decimalMark?: string;
  /** Statement on components whose aquatic hazard is unknown; absent where the basis has none. */
  readonly unknownAquatic?: { readonly code: string; readonly text: string; readonly cite: string };
  /** Line proposed for what the product must not be mixed with in use; left out beside a statement that says more. */
  readonly notToMix: {
    readonly code: string;
    readonly text: string;
    readonly coveredBy: readonly string[];
    /** What stands for `{with}` and `{gives}` in another language, by the English. */
    readonly terms?: Readonly<Record<string, string>>;
    readonly cite: string;
  };
  /** Classes whose label elements may be left off while every trigger is below a percentage. */
  readonly optional: readonly {
    readonly code: string;
    readonly below: number;
    readonly reading: string;
    readonly leftOffBy: string;
    readonly cite: string;
    readonly why: string;
  }[];
  readonly precautionLimit: { readonly most: number; readonly cite: string } | null;
  readonly general: { readonly consumer: readonly string[]; readonly cite: string } | null;
}

export type ProductFact =
  | 'specificTreatment'
  | 'volatile'
  | 'inhalable'
  | 'solid'
  | 'compatibilityGroupS'
  | 'wetting'
  | 'temperature';

/** How precautionary statements of several hazards are put together; the same for every basis but for the cites. */
export interface PrecautionRules {
  readonly cites: Readonly<
    Record<
      | 'mostStringent'
      | 'consolidated'
      | 'medicalResponse'
      | 'medicalCombination'
      | 'choice'
      | 'inappropriate'
      | 'condition',
      Cites
    >
  >;
  readonly overriding: readonly {
    readonly stays: string;
    readonly goes: readonly string[];
    readonly why: string;
  }[];
  readonly rewritten: readonly {
    readonly with: readonly string[];
    readonly from: string;
    readonly to: string | null;
    readonly why: string;
  }[];
  readonly attached: readonly { readonly code: string; readonly route: string }[];
  readonly medical: {
    /** Most urgent first. */
    readonly levels: readonly (readonly string[])[];
    readonly routes: readonly string[];
    readonly sameRoute: Readonly<Record<string, string>>;
    readonly any: string;
    /** From so many routes on, `any` stands for them. */
    readonly anyFrom: number;
    readonly between: string;
    readonly last: string;
    /** With what each condition on a route begins; in English `If `, in any letters. */
    readonly lead?: string;
    /** Routes for which the call goes before the other actions. */
    readonly callFirst: readonly string[];
    readonly why: string;
    /** A call for a route that stays with an action which the same row prints. */
    readonly whole: readonly { readonly route: string; readonly with: string }[];
    /** Actions printed after `any` that join a call for any route, so that the condition is said once. */
    readonly joinsAny: readonly string[];
  };
  readonly air: {
    readonly codes: readonly string[];
    readonly field: string;
    readonly oneWord: string;
    readonly stands: readonly string[];
    readonly byForm: Readonly<Record<'liquid' | 'solid' | 'gas' | 'aerosol', readonly string[]>>;
    /** The word that goes where the product is said not to be sprayed. */
    readonly spray: string;
  };
  readonly conditions: Readonly<Record<string, { readonly needs: ProductFact; readonly why: string }>>;
  /** Conditions that another rule decides, by how their ids begin. */
  readonly otherRule: readonly string[];
  /** Fields whose words only the maker can give: an extinguishing agent right for one hazard is wrong for another. */
  readonly ofMaker: readonly string[];
  readonly order: { readonly response: readonly string[] };
  readonly priority: {
    readonly ranks: readonly (readonly string[])[];
    readonly consumerFirst: readonly string[];
    /** Which prevention speaks for a hazard, the most telling first. */
    readonly cover: readonly string[];
    /** Statements that go together where one of them speaks for a hazard. */
    readonly together: readonly (readonly string[])[];
  };
}
