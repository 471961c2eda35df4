import type { Measure } from '../quantity/measure.ts';
import type { Materials } from './_materials.ts';
import type { LineInput, RawMaterialInput } from './formula-schema.ts';
import type { GivenData } from './given-data.ts';
import type { GivenInput } from './given-schema.ts';
import { type Path, type Places, pathText } from './places.ts';
import type { Amount, BatchSize, FormulaLine, RawMaterial } from './product-record.ts';

/** A raw material as validated, with its own raw materials in place. */
export function rawMaterial(
  input: RawMaterialInput,
  places: Places,
  path: Path,
  materials: Materials,
): RawMaterial {
  return {
    file: places.file,
    name: input.name,
    supplier: input.supplier ?? null,
    density: input.density?.base ?? null,
    source: input.source ?? null,
    batch: batchSize(input.batch),
    formula: formulaLines(input.formula, places, [...path, 'formula'], materials),
  };
}

/** Lines as validated, with raw materials in place. Lines whose raw material has findings are left out. */
export function formulaLines(
  lines: readonly LineInput[],
  places: Places,
  base: Path,
  materials: Materials,
): readonly FormulaLine[] {
  return lines.flatMap((line, index): FormulaLine[] => {
    const path = [...base, index];
    const at = places.at(path);
    const common = { amount: amountOf(line), at, path: pathText(path), excerpt: places.excerpt(at) };
    if (line.use === undefined)
      return [
        {
          ...common,
          kind: 'substance',
          density: line.density?.base ?? null,
          name: line.name!,
          cas: line.cas ?? null,
          given: givenData(line),
        },
      ];
    const material =
      typeof line.use === 'string'
        ? materials.find(line.use, places, [...path, 'use'])
        : rawMaterial(line.use, places, [...path, 'use'], materials);
    if (!material) return [];
    return [{ ...common, kind: 'raw-material', density: line.density?.base ?? material.density, material }];
  });
}

function amountOf({ amount, percent }: LineInput): Amount {
  if (amount === 'balance') return { kind: 'balance' };
  if (percent) {
    const [low, high] = [percent[0]!, percent[1]!];
    const written = low.value === high.value ? `${low.value} %` : `${low.value}-${high.value} %`;
    return { kind: 'percent', low, high, written };
  }
  return measuredAmount(amount!);
}

const measuredAmount = ({ kind, base, written }: Measure): BatchSize =>
  kind === 'mass' ? { kind, grams: base, written } : { kind: 'volume', millilitres: base, written };

export const batchSize = (measure: Measure | undefined): BatchSize | null =>
  measure === undefined ? null : measuredAmount(measure);

function givenData(line: GivenInput): GivenData {
  const given: { -readonly [K in keyof GivenData]: GivenData[K] } = {
    unknown: line.unknown ?? [],
    additive: line.additive ?? true,
    relevant: line.relevant ?? false,
    source: line.source ?? null,
  };
  if (line.hazards) given.hazards = line.hazards;
  if (line.limits) given.limits = line.limits;
  if (line.ate) given.ate = line.ate;
  if (line['m-factors']) given.mFactors = line['m-factors'];
  if (line.peroxide)
    given.peroxide = { groups: line.peroxide.groups, molarMass: line.peroxide['molar-mass'].base };
  return given;
}
