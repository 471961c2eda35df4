import type { InhalationForm } from '../notation/hazard.ts';
import type { BridgingPrinciple, PhysicalForm } from '../record/product-record.ts';

/** Routes and forms of acute toxicity that the law keeps apart; each has limits and a sum of its own. */
export type AcuteKey = 'oral' | 'dermal' | InhalationForm;

/** A figure of the law in percent with its paragraph. */
export interface CitedPercent {
  readonly percent: number;
  readonly cite: string;
}

type ByCategory = Readonly<Record<string, number>>;
type ByKey = Readonly<Record<AcuteKey, ByCategory>> & { readonly cite: string };

export interface AcuteToxicityRules {
  /** Upper bounds of the categories: mg/kg, mg/kg, ppmV, mg/L, mg/L. */
  readonly categories: ByKey;
  /** Point estimates for a category known without a value. */
  readonly conversion: ByKey;
  /** Highest estimate that still enters the sum. */
  readonly countsUpTo: Readonly<Record<AcuteKey, number>> & { readonly cite: string };
  /** Percent from which an ingredient of a category is relevant. */
  readonly relevantFrom: Readonly<Record<string, number | string>> & { readonly cite: string };
  readonly formula: { readonly cite: string };
  readonly sameCategory: { readonly cite: string };
  readonly unknown: { readonly relevantFrom: CitedPercent; readonly correctedAbove: CitedPercent };
  /** Corrosion of the respiratory tract beside toxicity by inhalation. */
  readonly respiratoryTract?: { readonly cite: string };
}

export interface SkinRules {
  readonly relevantFrom: CitedPercent;
  readonly corrosive: CitedPercent;
  readonly irritant: CitedPercent;
  readonly corrosiveWeight: { readonly factor: number; readonly cite: string };
  readonly subCategories: { readonly cite: string };
  readonly notAdditive: { readonly corrosive: number; readonly irritant: number; readonly cite: string };
  readonly extremePh: { readonly acid: number; readonly base: number; readonly cite: string };
  /** Category 3 of the UN text, where the building block is on. */
  readonly mild?: { readonly percent: number; readonly cite: string } | null;
}

export interface EyeRules {
  readonly relevantFrom: CitedPercent;
  readonly damage: CitedPercent;
  readonly irritant: CitedPercent;
  readonly damageWeight: { readonly factor: number; readonly cite: string };
  readonly notAdditive: { readonly damage: number; readonly irritant: number; readonly cite: string };
  readonly extremePh: { readonly acid: number; readonly base: number; readonly cite: string };
  readonly fromSkin: { readonly cite: string };
  /** How the basis writes the irritant category: 2 or 2A. */
  readonly irritantCategory: '2' | '2A';
  readonly mildIrritant: { readonly category: string; readonly cite: string } | null;
}

/** A row of a table "ingredient classified as … triggers classification of the mixture as …". */
export interface CutOffRow {
  readonly ingredient: string;
  readonly result: string;
  readonly from: number;
  /** Percent by volume, where gases have a limit of their own. */
  readonly fromGas?: number;
}

export interface CutOffTable {
  readonly cite: string;
  readonly rows: readonly CutOffRow[];
  readonly labelOptionalBelow?: {
    readonly category: string;
    readonly percent: number;
    readonly cite: string;
  };
  /** Below this percent the category that a Category 1 ingredient gives is disputed. */
  readonly category1DisputedBelow?: CitedPercent;
  /** The law leaves two cut-offs for a category; `rows` have the higher one. */
  readonly twoCutOffs?: boolean;
  /** Date from which mixtures are classified for the class, where it is not that of the instrument. */
  readonly mixturesFrom?: string;
}

export interface AquaticRules {
  readonly relevantFrom: { readonly category1: number; readonly other: number; readonly cite: string };
  readonly sum: number;
  readonly acute: { readonly categories: readonly string[]; readonly cite: string };
  readonly chronic: { readonly categories: readonly string[]; readonly cite: string };
  readonly mFactor: { readonly cite: string };
  readonly unknown: { readonly cite: string };
}

/** From which similar mixtures a result may be taken over, and for which classes as listed. */
export interface BridgingRules {
  readonly cite: string;
  readonly principles: Readonly<
    Record<
      BridgingPrinciple,
      {
        readonly cite: string;
        readonly classes: readonly string[];
        /** Only for results whose category begins so. */
        readonly category?: string;
        /** Only for products of this form. */
        readonly form?: PhysicalForm;
      }
    >
  >;
  /** By class: percent of its ingredients below which a diluted mixture is no longer bridged. */
  readonly dilutedDownTo: Readonly<Record<string, CitedPercent>>;
}

export interface OrganicPeroxideRules {
  readonly cite: string;
  /** Not classified up to this percent of available oxygen while hydrogen peroxide is up to its own; in that order. */
  readonly exempt: readonly {
    readonly availableOxygen: number;
    readonly hydrogenPeroxide: number;
    readonly cite: string;
  }[];
  /** Mass of oxygen that one peroxygen group makes available, g/mol. */
  readonly formula: { readonly oxygen: number; readonly cite: string };
  /** Types A to G, which follow from tests. */
  readonly types: { readonly cite: string };
  readonly hydrogenPeroxide: { readonly cas: string; readonly name: string };
}

/** A physical class that follows from tests. */
export interface PhysicalClassRules {
  /** Its chapter. */
  readonly cite: string;
  /** The paragraph with its criteria. */
  readonly criteria: string;
  /** Where it is not the instrument of physical hazards. */
  readonly instrument?: string;
  readonly forms: readonly PhysicalForm[];
  /** Classes of ingredients that are judged as this one. */
  readonly members?: readonly string[];
  /** Neighbouring classes of ingredients that leave this one open. */
  readonly openedBy?: readonly string[];
  /** Categories that an older text wrote otherwise. */
  readonly renamed?: Readonly<Record<string, string>>;
  /** Percent by volume of ingredients of the class above which a mixture of unknown behaviour is of the class. */
  readonly mixtureAbove?: number;
  /** Why the ingredients cannot show that a product is not of the class. */
  readonly notFromIngredients?: string;
}

export interface AerosolRules {
  readonly cite: string;
  /** Classes of ingredients that are flammable components. */
  readonly flammable: readonly string[];
  /** Above this percent by mass of flammable components an aerosol is tested, or of the category `untested`. */
  readonly above: CitedPercent;
  readonly untested: { readonly category: string; readonly cite: string };
  /** kJ/g; from here an aerosol is tested too, or of the category `untested`. */
  readonly heatOfCombustion: number;
  /** Category of an aerosol below both figures. */
  readonly otherwise: string;
  /** Classes that an aerosol does not have besides. */
  readonly notBeside: { readonly classes: readonly string[]; readonly cite: string };
}

/** The figures of one basis in force on a date. */
export interface Thresholds {
  /** Names the text held: its year and publication, or the date of its consolidation. */
  readonly text: string;
  /** Date from which the figures are known to be in force, YYYY-MM-DD. */
  readonly inForce: string;
  readonly checkedOn: string;
  readonly instrument: string;
  readonly physicalInstrument: string;
  readonly note: string;
  readonly acuteToxicity: AcuteToxicityRules;
  readonly skin: SkinRules;
  readonly eye: EyeRules;
  readonly byIngredient: Readonly<Record<string, CutOffTable>>;
  readonly transientOrganEffects: { readonly relevantFrom: CitedPercent; readonly sum: CitedPercent };
  readonly aspiration: {
    readonly relevantFrom: CitedPercent;
    /** Which physical forms the class is for. */
    readonly forms: { readonly cite: string };
    readonly categories: readonly {
      readonly category: string;
      readonly sum: number;
      readonly viscosity: number;
      readonly cite: string;
    }[];
  };
  readonly flammableLiquids: {
    readonly cite: string;
    readonly flashPoint: {
      readonly extreme: number;
      readonly flammable: number;
      readonly combustible: number | null;
    };
    readonly boilingPoint: { readonly extreme: number };
    readonly combustibleCategory: string | null;
  };
  /** By class of the notation; only those that the basis has. */
  readonly physicalClasses: Readonly<Record<string, PhysicalClassRules>>;
  readonly aerosols: AerosolRules;
  readonly organicPeroxides: OrganicPeroxideRules;
  /** From this percent an ingredient without data, or of a neighbouring class, leaves physical classes undecided. */
  readonly physicalScreening: { readonly relevantFrom: CitedPercent };
  readonly aquatic: AquaticRules | null;
  readonly environmental: Readonly<Record<string, CutOffTable>>;
  readonly specificLimits: { readonly apply: boolean; readonly cite: string };
  readonly carcinogenLists: { readonly cite: string } | null;
  readonly mixtureEvidence: {
    /** Whether evidence on the mixture may lower a class that is judged case by case. */
    readonly mayLower: boolean;
    readonly caseByCase: readonly string[];
    readonly cite: string;
    /** Paragraphs on tests of the mixture and on bridging, by class as listed. */
    readonly byClass: Readonly<Record<string, { readonly test: string; readonly bridging: string }>>;
    readonly bridging: BridgingRules;
  };
  /** Categories that an authority may leave out; only where the basis has such a choice. */
  readonly buildingBlocks?: Readonly<Record<string, boolean>>;
}

/** One basis of classification: its figures on a date. */
export interface Basis extends Thresholds {
  readonly id: 'us-hcs' | 'eu-clp' | 'un-ghs';
  readonly title: string;
  /** Date worked for, YYYY-MM-DD. */
  readonly asOf: string;
}
