import type { Exact } from '../quantity/exact.ts';
import type { Millimetres } from '../quantity/length.ts';
import type { Position } from '../report/diagnostic.ts';
import type { Dilution } from './record-blocks.ts';

export interface Quantity {
  readonly value: Exact;
  /** `mL`, `L`, `fl oz`, `gal`, `g`, `kg`, `oz`, `lb`, `mm` … as written. */
  readonly unit: string;
  readonly written: string;
}

/** How the GTIN of a pack is to be printed. */
export interface BarCodeWish {
  readonly symbol: 'UPC-A' | 'UPC-E' | 'EAN-13' | 'EAN-8' | 'QR' | 'Data Matrix' | null;
  /** Percent. */
  readonly magnification: number | null;
  /** Of bars cut short. */
  readonly height: Millimetres | null;
  /** Of the GS1 Digital Link, with its scheme. */
  readonly domain: string | null;
}

/** A square set at a point, from the lower left corner of the label to its left and its lower corner. */
export interface PlacedSquare {
  readonly left: Millimetres;
  readonly bottom: Millimetres;
  readonly side: Millimetres;
}

/** A solid rectangle, from the lower left corner of the label. */
export interface EyeMark {
  readonly left: Millimetres;
  readonly bottom: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
}

/** One pack in which the product is sold. */
export interface Pack {
  readonly id: string;
  readonly contents: Quantity;
  /** GTIN with a right check digit, as written. */
  readonly gtin: string | null;
  readonly barCode?: BarCodeWish | null;
  readonly container: {
    readonly shape: 'cylinder' | 'rectangular' | 'other';
    readonly diameter: Millimetres | null;
    /** Where it tapers: at the top of the label panel. */
    readonly diameterAtTop?: Millimetres | null;
    readonly labelPanelHeight: Millimetres | null;
    readonly childResistant: boolean | null;
    readonly width?: Millimetres | null;
    readonly depth?: Millimetres | null;
    readonly height?: Millimetres | null;
    readonly capacityMillilitres?: Exact | null;
    /** Of the empty container with its closure. */
    readonly tareKilograms?: Exact | null;
    readonly material?: string | null;
    readonly closure?: string | null;
    readonly tactileWarning?: boolean | null;
  } | null;
  readonly label: {
    /** Of all panels together where the label folds out. */
    readonly width: Millimetres;
    readonly height: Millimetres;
    readonly cornerRadius: Millimetres;
    readonly shape: 'rectangle' | 'oval';
    /** Strip at the right edge that the other end of a wrap-around label covers. */
    readonly overlap: Millimetres;
    readonly panels: number;
    /** In which the size was written. */
    readonly unit: 'mm' | 'in';
    /** Preprinted on the stock of the shop's own printer. */
    readonly redFrames?: readonly PlacedSquare[];
    /** That the eye of the labeler looks for. */
    readonly eyeMark?: EyeMark | null;
  } | null;
  readonly roll: {
    readonly core: Millimetres;
    readonly maxDiameter: Millimetres;
    readonly gap: Millimetres;
    readonly linerAndFace: Millimetres;
    readonly unwind: string;
    readonly across?: number | null;
    readonly labels?: number | null;
  } | null;
  readonly case: {
    readonly count: number;
    readonly gtin: string | null;
    readonly tareKilograms: Exact | null;
    readonly length?: Millimetres | null;
    readonly width?: Millimetres | null;
    readonly height?: Millimetres | null;
    readonly perLayer?: number | null;
    readonly layers?: number | null;
    /** Dots per inch of the printer of its label, as people name it. */
    readonly printer?: '203' | '300' | '600' | null;
  } | null;
  /** Use solutions that the user makes of it. */
  readonly dilutions?: readonly Dilution[];
  /** Space on the label that the coder prints lot and date into; null where the layout may choose its size. */
  readonly lotWindow: { readonly width: Millimetres; readonly height: Millimetres } | 'none' | null;
  /** Labelled by 29 CFR 1910.1200(f)(12): the small container itself, or its outer package. */
  readonly smallContainer?: {
    readonly part: 'container' | 'outer-package';
    readonly reason: string | null;
  } | null;
  /** Labelled for the Union by CLP Article 29: without some statements, or with the least. */
  readonly smallPackage?: { readonly take: 'reduced' | 'inner'; readonly reason: string };
  readonly at: Position;
}
