import Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import { inUnit } from '../quantity/measure.ts';
import type { Pack } from '../record/product-record.ts';
import type { BatchSize } from './batch-size.ts';
import { type Caution, type KeepApart, keepApart, stepCautions } from './cautions.ts';
import { type InContainers, inContainers } from './containers.ts';
import type { BatchMaterial } from './material.ts';
import { orderOfAddition } from './order.ts';
import { type PackYield, packYield } from './yield.ts';

/** An amount in the units of a shop. */
export interface ShopMeasure {
  readonly grams: number;
  readonly kilograms: number;
  readonly pounds: number;
  /** US gallons; null where no density is known. */
  readonly gallons: number | null;
  readonly containers: InContainers | null;
}

/** One material on its way into the tank. */
export interface BatchStep {
  readonly material: BatchMaterial;
  /** Both ends where the formula gives a range. */
  readonly low: ShopMeasure;
  readonly high: ShopMeasure;
  readonly ranged: boolean;
  readonly cautions: readonly Caution[];
}

/** A formula scaled to a batch. */
export interface BatchTicket {
  readonly size: ShopMeasure;
  readonly steps: readonly BatchStep[];
  readonly apart: readonly KeepApart[];
  readonly yields: readonly PackYield[];
}

/** An amount by weight, by volume where a density is known, and in drums or pails. */
export function shopMeasure(grams: Exact, density: Exact | null): ShopMeasure {
  const millilitres = density && Exact.fraction(grams.exact.div(density.exact));
  return {
    grams: grams.value,
    kilograms: inUnit(grams, 'mass', 'kg').value,
    pounds: inUnit(grams, 'mass', 'lb').value,
    gallons: millilitres && inUnit(millilitres, 'volume', 'gal').value,
    containers: millilitres && inContainers(millilitres),
  };
}

/** Grams of a batch; null where its volume is given and the density of the product is not known. */
export function batchGrams(size: BatchSize, density: Exact | null): Exact | null {
  if (size.kind === 'mass') return size.grams;
  return density && Exact.fraction(size.millilitres.exact.mul(density.exact));
}

/**
 * Scales a formula to a batch, with the order of addition, what each step asks to mind, and what the batch fills.
 * @param grams of the batch
 * @param density of the product in g/mL
 * @param asListed keeps the order of the formula
 */
export function batchTicket(
  materials: readonly BatchMaterial[],
  {
    grams,
    density,
    packs,
    asListed,
  }: {
    readonly grams: Exact;
    readonly density: Exact | null;
    readonly packs: readonly Pack[];
    readonly asListed: boolean;
  },
): BatchTicket {
  const ordered = asListed ? materials : orderOfAddition(materials);
  const cautions = stepCautions(ordered);
  const part = (percent: Exact): Exact =>
    Exact.fraction(grams.exact.mul(percent.exact).div(new Fraction(100)));
  return {
    size: shopMeasure(grams, density),
    steps: ordered.map((material, at) => ({
      material,
      low: shopMeasure(part(material.low), material.density),
      high: shopMeasure(part(material.high), material.density),
      ranged: material.low.value !== material.high.value,
      cautions: cautions[at]!,
    })),
    apart: keepApart(ordered),
    yields: packs.map(pack => packYield(grams, density, pack)),
  };
}
