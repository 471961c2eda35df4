import type { Millimetres } from '../quantity/length.ts';
import specs from './symbol-specs.json' with { type: 'json' };

/** A two-dimensional symbol that carries a GS1 Digital Link. */
export type MatrixName = keyof typeof specs.matrix.symbols;

/** Requirements on a two-dimensional symbol at a point of sale. */
export interface MatrixSpec {
  readonly name: MatrixName;
  /** Name by which the encoder knows it. */
  readonly encoder: string;
  /** On all four sides, in modules. */
  readonly quietZone: number;
  readonly x: { readonly min: Millimetres; readonly target: Millimetres; readonly max: Millimetres };
}

/** The requirements on a two-dimensional symbol. */
export const matrixSpec = (name: MatrixName): MatrixSpec => ({ name, ...specs.matrix.symbols[name] });

/** Level of error correction of a QR Code. */
export const errorLevel: string = specs.matrix.errorLevel;
