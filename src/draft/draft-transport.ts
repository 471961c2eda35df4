import { readPackageFile } from '../environment/package-files.ts';
import { Exact } from '../quantity/exact.ts';
import type { Pack } from '../record/product-record.ts';
import { openTransportData, type TransportData } from '../reference/transport/transport-data.ts';
import type { TransportAnswer } from '../transport/answer.ts';
import { transportInput } from '../transport/from-classification.ts';
import { transport } from '../transport/transport.ts';
import type { ClassifiedProduct } from './classified-product.ts';

let data: TransportData | null = null;

/** Transport data of the package, read once. */
export function transportData(): TransportData {
  data ??= openTransportData(file => readPackageFile('hazard-data', 'us-dot', file));
  return data;
}

/**
 * How a pack of a classified product is carried. Where the record gives the mass of the empty packs, a package that
 * they lift over the gross limit is no limited quantity.
 */
export function draftTransport(product: ClassifiedProduct, pack: Pack | null): TransportAnswer {
  const carried = (each: Pack | null): TransportAnswer =>
    transport(transportInput(product.record, product.formula, product.classification, each), transportData());
  const answer = carried(pack);
  const whole = answer.limitedQuantity?.allowed === true && pack ? withEmptyPacks(pack) : null;
  if (!whole) return answer;
  const weighed = carried(whole);
  return weighed.limitedQuantity?.allowed === false ? weighed : answer;
}

/** A pack whose case weighs as much as case and empty packs together; null where no mass of an empty pack is known. */
function withEmptyPacks(pack: Pack): Pack | null {
  const empty = pack.container?.tareKilograms;
  if (!empty || !pack.case) return null;
  const packs = empty.exact.mul(pack.case.count);
  const tareKilograms = Exact.fraction(pack.case.tareKilograms?.exact.add(packs) ?? packs);
  return { ...pack, case: { ...pack.case, tareKilograms } };
}
