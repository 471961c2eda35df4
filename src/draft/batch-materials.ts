import type { BatchMaterial } from '../batch/material.ts';
import { classify } from '../classify/engine.ts';
import { type Resolved, resolve } from '../classify/resolve.ts';
import { expandFormula } from '../formula/expand.ts';
import { WATER_DENSITY_AT } from '../formula/water.ts';
import { weighOut } from '../formula/weigh-out.ts';
import { labelElements } from '../labelling/elements.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import { findClass } from '../notation/classes.ts';
import { hundred } from '../quantity/exact.ts';
import type { Evidence, FormulaLine, ProductRecord } from '../record/product-record.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { labelledProduct } from './labelled-product.ts';

/** A raw material with the label elements that it would bear by itself. */
export interface LabelledMaterial extends BatchMaterial {
  readonly elements: LabelElements;
}

/**
 * The lines of a formula as raw materials, each classified by itself as it is delivered; null for a gas. Physical
 * hazards of a substance that stands alone count as tested; those of ingredients of a mixture are named as untested.
 */
export function batchMaterials({
  record,
  reference,
}: Pick<ClassifiedProduct, 'record' | 'reference'>): readonly LabelledMaterial[] | null {
  const weighed = weighOut(record);
  if (!weighed) return null;
  return record.formula.flatMap((line, at) => {
    const { low, high, density } = weighed.lines[at]!;
    const alone = recordOf(line, record);
    const expanded = expandFormula(alone);
    if (!expanded.ok || high.value <= 0) return [];
    const formula = expanded.value;
    const resolved = formula.constituents.map((constituent, i) =>
      resolve(constituent, i, reference.lookup, record.form),
    );
    const physical = resolved.flatMap(physicalOf);
    const single = formula.constituents.length === 1;
    const evidence = single ? physical.map(hazard => evidenceOf(hazard, line)) : [];
    const tested: ProductRecord = { ...alone, evidence };
    const classification = classify(tested, formula, reference.basis, reference.lookup);
    const elements = labelElements(classification, reference.labelData, labelledProduct(tested));
    return [
      {
        name: alone.name,
        supplier: line.kind === 'raw-material' ? line.material.supplier : null,
        low,
        high,
        density,
        // Water without a density of the record has that of the table.
        densityAt: line.density ? (line.densityAt ?? null) : density && WATER_DENSITY_AT,
        ingredients: formula.constituents.map(({ name, cas, water, high: percent }, i) => ({
          name,
          cas,
          water,
          percent: percent.value,
          data: resolved[i]!.data,
        })),
        statements: elements.hazardStatements.map(({ code }) => code),
        untested: single ? [] : [...new Set(physical.map(({ code }) => code))],
        elements,
      },
    ];
  });
}

const physicalOf = ({ data }: Resolved) =>
  data.hazards.filter(({ hazardClass }) => findClass(hazardClass)?.kind === 'physical');

const evidenceOf = (hazard: Resolved['data']['hazards'][number], { at }: FormulaLine): Evidence => ({
  hazardClass: hazard.hazardClass,
  route: null,
  hazard,
  kind: 'test',
  principle: null,
  method: 'classification of the substance',
  source: 'data of the substance',
  reason: null,
  at,
});

/** One line of a formula as a product of its own. */
function recordOf(line: FormulaLine, record: ProductRecord): ProductRecord {
  const name = line.kind === 'raw-material' ? line.material.name : line.name;
  const whole = { kind: 'percent', low: hundred, high: hundred, written: '100 %' } as const;
  return {
    ...record,
    name,
    use: null,
    properties: { other: {} },
    batch: null,
    formula: [{ ...line, amount: whole }],
    evidence: [],
    reacts: [],
    statements: null,
    packs: [],
  };
}
