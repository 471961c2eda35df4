import type { Hazard, InhalationForm, Route } from '../notation/hazard.ts';
import type { Exact } from '../quantity/exact.ts';
import type { FlashPoint, PhysicalForm } from '../record/product-record.ts';

/** A class and category of the mixture. */
export interface TransportHazard {
  readonly hazardClass: string;
  readonly category: string;
  readonly route: Route | null;
  readonly form: InhalationForm | null;
  /** Whether it rests on a test or another whole-mixture result. */
  readonly tested: boolean;
}

/** A class of the mixture that lack of data leaves open. */
export interface OpenClass {
  readonly hazardClass: string;
  readonly route: Route | null;
}

export interface TransportConstituent {
  readonly name: string;
  readonly cas: string | null;
  /** Percent by mass, both ends of the range. */
  readonly low: Exact;
  readonly high: Exact;
  readonly hazards: readonly Pick<Hazard, 'hazardClass' | 'category' | 'route'>[];
  readonly water: boolean;
}

/** One pack and the case it stands in. */
export interface TransportPack {
  readonly id: string;
  /** Net contents of one inner packaging. */
  readonly millilitres: number | null;
  readonly grams: number | null;
  readonly written: string;
  readonly count: number | null;
  readonly tareKilograms: number | null;
}

/** Everything about a product that transport asks for. */
export interface TransportInput {
  readonly form: PhysicalForm;
  readonly hazards: readonly TransportHazard[];
  readonly open: readonly OpenClass[];
  /** mg/kg, mg/kg, ppm, mg/L, mg/L for four hours. */
  readonly ateMix: Readonly<Record<'oral' | 'dermal' | InhalationForm, number | null>>;
  /** Null where the record gives none. */
  readonly flashPoint: FlashPoint | null;
  /** Degrees Celsius. */
  readonly initialBoilingPoint: Exact | null;
  readonly pH: Exact | null;
  /** g/mL. */
  readonly density: Exact | null;
  readonly constituents: readonly TransportConstituent[];
  readonly pack: TransportPack | null;
}
