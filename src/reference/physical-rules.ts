import type { PhysicalForm } from '../record/product-record.ts';
import type { CitedPercent } from './thresholds.ts';

/** Mixtures with organic peroxides. */
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
