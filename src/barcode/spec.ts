import type { Millimetres } from '../quantity/length.ts';
import specs from './symbol-specs.json' with { type: 'json' };

export type SymbolName = 'EAN-13' | 'UPC-A' | 'UPC-E' | 'EAN-8' | 'ITF-14' | 'GS1-128';

/** Where a symbol is scanned: at a point of sale, in warehouses too, or on a logistic unit such as a pallet. */
export type Environment = 'retail' | 'general-distribution' | 'logistic-unit';

/** Requirements on one symbol in one scanning environment. */
export interface SymbolSpec {
  readonly name: SymbolName;
  /** Name by which the encoder knows it. */
  readonly encoder: string;
  /** Width of the bars in modules, without quiet zones; 0 before encoding where it depends on the data. */
  readonly modules: number;
  /** In modules. */
  readonly quietZone: { readonly left: number; readonly right: number };
  /** How far guard bars reach below the others, in modules. */
  readonly guardExtension: number;
  readonly x: { readonly min: Millimetres; readonly target: Millimetres; readonly max: Millimetres };
  /** Bar height at the target X-dimension. */
  readonly heightAtTarget: Millimetres;
  /** The height does not change with the X-dimension. */
  readonly fixedHeight: boolean;
}

/** X-dimension that counts as 100 % of EAN/UPC. */
export const NOMINAL_X: Millimetres = specs.nominalX;
export const digitSpec = specs.digits;
export const bearerSpec = specs.bearerBar;
export const wideToNarrow: number = specs.wideToNarrow.target;
/** Least and greatest ratio of wide to narrow elements of ITF-14. */
export const wideToNarrowRange: { readonly min: number; readonly max: number } = specs.wideToNarrow;
/** What a GS1-128 symbol may hold. */
export const gs1128Limits: { readonly dataCharacters: number; readonly width: Millimetres } =
  specs['gs1-128'];
/** By how much bars may be cut short where nothing else is possible, and where that is read. */
export const truncationAdvice: { readonly advised: number; readonly cite: string } = specs.truncation;

/** Least X-dimension of a symbol, printed by a press or on demand by an office or thermal printer. */
export const leastX = ({ name, x }: SymbolSpec, onDemand = false): Millimetres =>
  onDemand && x.min > specs.onDemand.x && specs.onDemand.symbols.includes(name) && x.min < NOMINAL_X
    ? specs.onDemand.x
    : x.min;

interface EnvironmentSpec {
  readonly x: SymbolSpec['x'];
  readonly heightAtTarget: Millimetres;
}

/** The requirements on a symbol, or null where the environment does not use it. */
export function symbolSpec(name: SymbolName, environment: Environment): SymbolSpec | null {
  const { environments, ...spec } = specs.symbols[name];
  const found = (environments as Partial<Record<Environment, EnvironmentSpec>>)[environment];
  if (!found) return null;
  return { name, ...spec, ...found, fixedHeight: specs.fixedHeight.symbols.includes(name) };
}

/** Height of the bars at an X-dimension: in proportion for EAN/UPC, constant for ITF-14. */
export const barHeight = (spec: SymbolSpec, x: Millimetres): Millimetres =>
  spec.fixedHeight ? spec.heightAtTarget : (spec.heightAtTarget * x) / spec.x.target;

/**
 * Largest width of bars that may stand upright side by side round a cylinder.
 * @param diameter in millimetres
 */
export const widestUprightBars = (diameter: Millimetres): Millimetres =>
  (diameter * Math.PI * 2 * specs.curvature.maximumAngle) / 360;

/** Smallest diameter on which bars of a width may stand upright side by side. */
export const smallestDiameter = (barsWidth: Millimetres): Millimetres => barsWidth / widestUprightBars(1);
