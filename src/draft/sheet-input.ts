import type { Classification } from '../classify/classification.ts';
import { classify } from '../classify/engine.ts';
import type { SheetInput, SheetSolution } from '../document/sheet.ts';
import type { CompleteRecord } from '../record/product-record.ts';
import { environmentalBasis } from '../reference/basis.ts';
import { openProperties } from '../reference/properties/ingredient-properties.ts';
import type { Words } from '../words/words.ts';
import { type ClassifiedProduct, sheetElements, sheetMeasures } from './classified-product.ts';
import { draftTransport } from './draft-transport.ts';
import { exposureTable, openReference, regulatoryTable } from './open-reference.ts';
import { sheetFacts } from './sheet-facts.ts';
import { useSolutions } from './use-solutions.ts';

/**
 * What a safety data sheet is made of: the product with the lists that its sections are looked up in.
 * @param date ISO 8601 instant
 */
export async function sheetInput(
  product: ClassifiedProduct & { readonly record: CompleteRecord },
  date: string,
  words: Words,
): Promise<SheetInput> {
  const { record, formula, classification, reference } = product;
  return {
    record,
    formula,
    classification,
    elements: sheetElements(product),
    measures: sheetMeasures(product),
    environment: await environmentOf(product),
    words,
    exposure: exposureTable(),
    properties: openProperties(),
    regulatory: regulatoryTable(),
    transport: sheetTransport(product),
    solutions: sheetSolutions(product),
    thresholds: reference.basis,
    ...sheetFacts(product),
    date,
    revision: record.revision,
    draft: true,
  };
}

/** The mixture under the GHS, where the basis has no classes for the environment; null where it has or no text is held. */
async function environmentOf({
  record,
  formula,
  classification,
}: ClassifiedProduct): Promise<Classification | null> {
  if (classification.unknownAquatic !== null) return null;
  const ghs = await openReference(environmentalBasis, classification.basis.asOf);
  return ghs.ok ? classify(record, formula, ghs.value.basis, ghs.value.lookup) : null;
}

/** How each pack is carried; without a pack, the product. */
export const sheetTransport = (product: ClassifiedProduct): SheetInput['transport'] =>
  product.record.packs.length > 0
    ? product.record.packs.map(pack => ({
        pack: pack.contents.written,
        answer: draftTransport(product, pack),
      }))
    : [{ pack: null, answer: draftTransport(product, null) }];

/** What the user holds after dilution. */
const sheetSolutions = (product: ClassifiedProduct): readonly SheetSolution[] =>
  useSolutions(product, product.reference).solutions.map(({ packs, dilution, solution }) => ({
    packs,
    ratio: dilution.written,
    with: dilution.with,
    use: dilution.use,
    classification: solution.classification,
    elements: sheetElements(solution),
  }));
