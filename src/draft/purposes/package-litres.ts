import { findUnit } from '../../quantity/units.ts';
import type { Pack, ProductRecord } from '../../record/product-record.ts';

/** Volume that decides the sizes of a label. */
export interface PackageLitres {
  readonly value: number;
  /** Of the container, or of its contents where the record gives no capacity. */
  readonly of: 'container' | 'contents';
}

const MILLILITRES = 1000;

/** Capacity of the package in litres; that of its contents where the record gives none, null where neither is a volume. */
export function packageLitres(
  { properties }: Pick<ProductRecord, 'properties'>,
  { container, contents: { value, unit } }: Pack,
): PackageLitres | null {
  const capacity = container?.capacityMillilitres ?? null;
  if (capacity) return { value: capacity.value / MILLILITRES, of: 'container' };
  const volume = findUnit('volume', unit);
  if (volume) return { value: (value.value * volume.factor.valueOf()) / MILLILITRES, of: 'contents' };
  const mass = findUnit('mass', unit);
  const density = properties.density?.value ?? null;
  if (!mass || !density) return null;
  return { value: (value.value * mass.factor.valueOf()) / density.value / MILLILITRES, of: 'contents' };
}
