import type { Classification } from '../classify/classification.ts';
import { classify } from '../classify/engine.ts';
import { labelElements } from '../labelling/elements.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
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
  const { record, formula, sources } = product;
  const classification = classify(record, formula, reference.basis, reference.lookup);
  const elements = labelElements(classification, reference.labelData, {
    form: record.form,
    choice: id => record.choices.find(({ reading }) => reading === id)?.take ?? null,
    supplementalCodes: classification.supplemental,
  });
  return { record, formula, sources, reference, classification, elements };
}
