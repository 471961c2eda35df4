import type { PackagedProduct } from '../../duties/child-resistant.ts';
import type { ConsumerProduct } from '../../labelling/consumer/facts.ts';
import { findUnit } from '../../quantity/units.ts';
import type { Pack, ProductRecord } from '../../record/product-record.ts';
import type { ClassifiedProduct } from '../classified-product.ts';

/** What the record says for the law for consumers. */
export function consumerProduct({ form, properties, statements }: ProductRecord): ConsumerProduct {
  const flash = properties.flashPoint?.value ?? null;
  const { inhalable = null, sprayed = null } = statements?.conditions ?? {};
  return {
    form,
    flashPoint: flash === null ? null : flash.kind === 'none' ? 'none' : flash,
    viscosity: properties.kinematicViscosity40C?.value ?? null,
    inhalable: sprayed ? true : inhalable,
    signal: statements?.consumerSignal?.word ?? null,
  };
}

/** Product and pack as the rules on child-resistant packaging ask for them; it is packaged for households here. */
export function packagedProduct(
  { record, classification }: Pick<ClassifiedProduct, 'record' | 'classification'>,
  { contents: { value, unit } }: Pack,
): PackagedProduct {
  const density = record.properties.density?.value ?? null;
  const mass = findUnit('mass', unit);
  const volume = findUnit('volume', unit);
  const grams = mass
    ? value.value * mass.factor.valueOf()
    : volume && density
      ? value.value * volume.factor.valueOf() * density.value
      : null;
  return {
    form: record.form,
    constituents: classification.constituents,
    viscosity: record.properties.kinematicViscosity40C?.value ?? null,
    density,
    grams,
    household: true,
  };
}
