import type { Classification } from '../classify/classification.ts';
import type { Formula } from '../formula/constituent.ts';
import { readMeasure } from '../quantity/measure.ts';
import type { Pack, ProductRecord } from '../record/product-record.ts';
import type { TransportConstituent, TransportInput, TransportPack } from './input.ts';

/** The input of transport from a classified record. Only facts of the classification are read, never its words. */
export function transportInput(
  record: ProductRecord,
  formula: Formula,
  classification: Pick<Classification, 'hazards' | 'otherClasses' | 'ateMix' | 'constituents'>,
  pack: Pack | null,
): TransportInput {
  const { properties, evidence } = record;
  const tested = (hazardClass: string, route: string | null): boolean =>
    evidence.some(
      entry => entry.hazardClass === hazardClass && (entry.route === null || entry.route === route),
    );
  return {
    form: record.form,
    hazards: classification.hazards.map(({ hazardClass, category, route, form }) => ({
      hazardClass,
      category,
      route,
      form,
      tested: tested(hazardClass, route),
    })),
    open: classification.otherClasses
      .filter(({ outcome }) => outcome === 'insufficient-data')
      .map(({ class: hazardClass, route }) => ({ hazardClass, route: route ?? null })),
    ateMix: classification.ateMix,
    flashPoint: properties.flashPoint?.value ?? null,
    initialBoilingPoint: properties.initialBoilingPoint?.value ?? null,
    pH: properties.pH?.value ?? null,
    density: properties.density?.value ?? null,
    constituents: constituentsOf(formula, classification),
    pack: pack && packOf(pack),
  };
}

function constituentsOf(
  formula: Formula,
  classification: Pick<Classification, 'constituents'>,
): readonly TransportConstituent[] {
  return formula.constituents.map(({ name, cas, low, high, water }, i) => ({
    name,
    cas,
    low,
    high,
    water,
    hazards: classification.constituents[i]!.data.hazards,
  }));
}

/** Contents of one inner packaging as volume and as mass; null for what they are not. */
export function packAmounts({ contents }: Pack): Pick<TransportPack, 'millilitres' | 'grams'> {
  const volume = readMeasure(contents.written, 'volume');
  const mass = readMeasure(contents.written, 'mass');
  return {
    millilitres: volume.ok ? volume.value.base.value : null,
    grams: mass.ok ? mass.value.base.value : null,
  };
}

function packOf(pack: Pack): TransportPack {
  const { id, contents, case: box } = pack;
  return {
    id,
    ...packAmounts(pack),
    written: contents.written,
    count: box?.count ?? null,
    tareKilograms: box?.tareKilograms?.value ?? null,
  };
}
