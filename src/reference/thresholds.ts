import type { InhalationForm } from '../notation/hazard.ts';
import type { BridgingPrinciple, PhysicalForm } from '../record/product-record.ts';
import type { AerosolRules, OrganicPeroxideRules, PhysicalClassRules } from './physical-rules.ts';

export type { AerosolRules, OrganicPeroxideRules, PhysicalClassRules };

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
  /** Percent, after weighing. */
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

/** The figures of one basis in force on a date. */
export interface Figures {
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
  /** Whether route and effects are letters of the H-code (H350i, H360F); else they go into its words. */
  readonly letteredStatements: boolean;
  /** Whether statements follow from the formula beside those of the classes. */
  readonly supplementalStatements: boolean;
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

/** The figures with the text that they are of. */
export interface Thresholds extends Figures {
  /** Names the text held: its year and publication, or the date of its consolidation. */
  readonly text: string;
  /** Date from which the text is known to be in force, YYYY-MM-DD. */
  readonly inForce: string;
  readonly instrument: string;
  readonly physicalInstrument: string;
}

/** One basis of classification: its figures on a date. */
export interface Basis extends Thresholds {
  readonly id: 'us-hcs' | 'eu-clp' | 'un-ghs';
  readonly title: string;
  /** Date worked for, YYYY-MM-DD. */
  readonly asOf: string;
}
