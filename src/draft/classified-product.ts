import type { Classification } from '../classify/classification.ts';
import { classify } from '../classify/engine.ts';
import { labelElements, withEveryPrecaution } from '../labelling/elements.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import { labelledProduct } from './labelled-product.ts';
import type { Product } from './open-product.ts';
import type { Reference } from './open-reference.ts';

/** A product with its classification and label elements under one basis. */
export interface ClassifiedProduct extends Product {
  readonly reference: Reference;
  readonly classification: Classification;
  readonly elements: LabelElements;
}

/** Classifies a product and derives its label elements. */
export function classifyProduct(product: Product, reference: Reference): ClassifiedProduct {
  const { record, formula, sources, art } = product;
  const classification = classify(record, formula, reference.basis, reference.lookup);
  const elements = labelElements(classification, reference.labelData, labelledProduct(record));
  return { record, formula, sources, ...(art && { art }), reference, classification, elements };
}

/** Elements of section 2 of the sheet, with what is optional on the label. */
export const sheetElements = ({ record, classification, reference }: ClassifiedProduct): LabelElements =>
  labelElements(classification, reference.labelData, labelledProduct(record), 'sheet');

/** The same with every precautionary statement, also those beyond the number for a label (CLP Article 28(3)). */
export const sheetMeasures = ({ record, classification, reference }: ClassifiedProduct): LabelElements =>
  labelElements(classification, withEveryPrecaution(reference.labelData), labelledProduct(record), 'sheet');
