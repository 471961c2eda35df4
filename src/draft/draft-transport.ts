import { readPackageFile } from '../environment/package-files.ts';
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

/** How a pack of a classified product is carried. */
export const draftTransport = (product: ClassifiedProduct, pack: Pack | null): TransportAnswer =>
  transport(transportInput(product.record, product.formula, product.classification, pack), transportData());
