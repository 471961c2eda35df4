import type { Millimetres } from '../quantity/length.ts';
import { bestLayer, type Placed } from './layer.ts';
import data from './pallets.json' with { type: 'json' };

/** A kind of pallet, by its size. */
export type PalletName = keyof typeof data.pallets;

/** A pallet; millimetres and kilograms. */
export interface Pallet {
  readonly name: string;
  readonly length: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
  readonly mass: number;
  /** Safe load. */
  readonly load: number;
  readonly source: string;
}

/** Outside of a case, upright. */
export interface CaseSize {
  readonly length: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
}

/** A loaded pallet; millimetres and kilograms. */
export interface PalletLoad {
  readonly pallet: Pallet;
  readonly perLayer: number;
  readonly layers: number;
  readonly cases: number;
  readonly layer: readonly Placed[];
  /** With the pallet. */
  readonly height: Millimetres;
  /** With the pallet; null where the gross mass of a case is not known. */
  readonly mass: number | null;
  /** Share of the pallet that the layer covers. */
  readonly covers: number;
  /** What keeps a further layer off. */
  readonly limitedBy: 'height' | 'load' | 'asked' | 'too-large';
  readonly maxHeight: { readonly value: Millimetres; readonly source: string | null };
}

export const PALLET_NAMES = Object.keys(data.pallets) as PalletName[];

/**
 * Cases of one size on a pallet, all upright and without overhang.
 * @param caseMass gross kilograms of a case, or null; without it the safe load cannot be watched
 * @param maxHeight of pallet and load together, or null for the usual one
 * @param layers asked for, or null for as many as go
 */
export function palletLoad(
  name: PalletName,
  size: CaseSize,
  caseMass: number | null,
  maxHeight: Millimetres | null,
  layers: number | null,
): PalletLoad {
  const pallet: Pallet = data.pallets[name];
  const layer = bestLayer(pallet, size);
  const perLayer = layer.length;
  const limit = maxHeight ?? data.loadHeight.value;
  const byHeight = Math.max(0, Math.floor((limit - pallet.height) / size.height + 1e-9));
  const byLoad =
    caseMass === null || perLayer === 0
      ? Number.POSITIVE_INFINITY
      : Math.floor(pallet.load / (caseMass * perLayer) + 1e-9);
  const most = perLayer === 0 ? 0 : Math.min(byHeight, byLoad);
  const laid = Math.min(most, layers ?? most);
  const cases = laid * perLayer;
  return {
    pallet,
    perLayer,
    layers: laid,
    cases,
    layer,
    height: pallet.height + laid * size.height,
    mass: caseMass === null ? null : pallet.mass + cases * caseMass,
    covers: (perLayer * size.length * size.width) / (pallet.length * pallet.width),
    limitedBy:
      perLayer === 0
        ? 'too-large'
        : layers !== null && layers <= most
          ? 'asked'
          : byLoad < byHeight
            ? 'load'
            : 'height',
    maxHeight: { value: limit, source: maxHeight === null ? data.loadHeight.source : null },
  };
}
