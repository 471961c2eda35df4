import { hundred } from '../quantity/exact.ts';
import type { Measure } from '../quantity/measure.ts';
import type { DensityMeasure } from './_amounts.ts';
import type { Materials } from './_materials.ts';
import type { LineInput, RawMaterialInput } from './formula-schema.ts';
import type { GivenData } from './given-data.ts';
import type { GivenInput } from './given-schema.ts';
import { type Path, type Places, pathText } from './places.ts';
import type { Amount, BatchSize, FormulaLine, RawMaterial } from './product-record.ts';
import { namesFigure, namesStrength } from './strength-in-name.ts';

/** A raw material as validated, with its own raw materials in place. */
export function rawMaterial(
  input: RawMaterialInput,
  places: Places,
  path: Path,
  materials: Materials,
): RawMaterial {
  const { name, supplier, sheet, strength, density, source, formula } = input;
  return {
    file: places.file,
    name,
    supplier: supplier ?? null,
    sheet: sheet
      ? {
          revision: sheet.revision ?? null,
          date: sheet.date ?? null,
          file:
            sheet.file === undefined
              ? null
              : materials.sheetFile(sheet.file, places, [...path, 'sheet', 'file']),
        }
      : null,
    strength: strength ?? null,
    density: density?.base ?? null,
    ...densityAt(density),
    source: source ?? null,
    batch: batchSize(input.batch),
    formula: formula
      ? formulaLines(formula, places, [...path, 'formula'], materials, source ?? null)
      : [asOne(input, places, path, materials)],
  };
}

/** The temperature of a density, where one is named. */
const densityAt = (density: DensityMeasure | undefined): { readonly densityAt?: string } =>
  temperature(density?.at);

const temperature = (at: string | null | undefined): { readonly densityAt?: string } =>
  at ? { densityAt: at } : {};

/** A raw material of which the hazards are known and not the composition: one constituent of its name. */
function asOne(input: RawMaterialInput, places: Places, path: Path, materials: Materials): FormulaLine {
  const at = places.at([...path, 'name']);
  warnOfSource(input, places, path, materials);
  return {
    kind: 'substance',
    name: input.name,
    cas: null,
    amount: { kind: 'percent', low: hundred, high: hundred, written: '100 %' },
    density: input.density?.base ?? null,
    ...densityAt(input.density),
    given: givenData(input),
    tradeSecret: null,
    undisclosed: true,
    at,
    path: pathText(path),
    excerpt: places.excerpt(at),
  };
}

// Hazards typed from a sheet replace the entry of the table; a reviewer must be able to look them up.
function warnOfSource(line: GivenInput, places: Places, path: Path, materials: Materials): void {
  if (!line.hazards || line.source !== undefined) return;
  materials.warn(
    places.finding(
      [...path, 'hazards'],
      'source-missing',
      '`hazards` are given without `source`: nobody can look them up',
      "add `source: …` with the supplier's sheet, its revision and date",
    ),
  );
}

function warnOfStrength(line: LineInput, places: Places, path: Path, materials: Materials): void {
  const { cas, hazards, name = '' } = line;
  if (cas === undefined ? hazards || !namesFigure(name) : !namesStrength(name)) return;
  materials.warn(
    places.finding(
      [...path, 'name'],
      'strength-in-name',
      line.cas === undefined
        ? `\`${line.name}\` names a solution or a strength: is the figure of the solution or of the substance?`
        : `\`${line.name}\` names a solution or a strength, but CAS number ${line.cas} is looked up as the substance itself`,
      'if the figure is of the solution, make it a raw material (`use:`) with its composition; if it is of the substance, take the strength out of the name',
    ),
  );
}

/**
 * Lines as validated, with raw materials in place. Lines whose raw material has findings are left out.
 * @param source what a raw material names as the source of its data, for lines that name none
 */
export function formulaLines(
  lines: readonly LineInput[],
  places: Places,
  base: Path,
  materials: Materials,
  source: string | null = null,
): readonly FormulaLine[] {
  return lines.flatMap((line, index): FormulaLine[] => {
    const path = [...base, index];
    const at = places.at(path);
    const common = { amount: amountOf(line), at, path: pathText(path), excerpt: places.excerpt(at) };
    if (line.use === undefined) {
      if (source === null) warnOfSource(line, places, path, materials);
      warnOfStrength(line, places, path, materials);
      return [
        {
          ...common,
          kind: 'substance',
          density: line.density?.base ?? null,
          ...densityAt(line.density),
          name: line.name!,
          cas: line.cas ?? null,
          given: givenData(line, source),
          tradeSecret: line['trade-secret'] ?? null,
          undisclosed: false,
        },
      ];
    }
    const material =
      typeof line.use === 'string'
        ? materials.find(line.use, places, [...path, 'use'])
        : rawMaterial(line.use, places, [...path, 'use'], materials);
    if (!material) return [];
    const measured = line.density ? densityAt(line.density) : temperature(material.densityAt);
    const density = line.density?.base ?? material.density;
    return [{ ...common, kind: 'raw-material', density, ...measured, material }];
  });
}

function amountOf({ amount, percent }: LineInput): Amount {
  if (amount === 'balance') return { kind: 'balance' };
  if (percent) {
    const { low, high, lowOpen, highOpen } = percent;
    const written = low.value === high.value ? `${low.value} %` : `${low.value}-${high.value} %`;
    return {
      kind: 'percent',
      low,
      high,
      written,
      ...(lowOpen && { lowOpen }),
      ...(highOpen && { highOpen }),
    };
  }
  return measuredAmount(amount!);
}

const measuredAmount = ({ kind, base, written }: Measure): BatchSize =>
  kind === 'mass' ? { kind, grams: base, written } : { kind: 'volume', millilitres: base, written };

export const batchSize = (measure: Measure | undefined): BatchSize | null =>
  measure === undefined ? null : measuredAmount(measure);

const saysOfHazards = ({ hazards, limits, ate, 'm-factors': mFactors, unknown }: GivenInput): boolean =>
  Boolean(hazards || limits || ate || mFactors || unknown);

/** What a line says of the hazards of its constituent. @param source that of the raw material around it */
export function givenData(line: GivenInput, source: string | null = null): GivenData {
  const given: { -readonly [K in keyof GivenData]: GivenData[K] } = {
    unknown: line.unknown ?? [],
    additive: line.additive ?? true,
    relevant: line.relevant ?? false,
    source: line.source ?? (saysOfHazards(line) ? source : null),
  };
  if (line.hazards) {
    given.hazards = line.hazards.flatMap(({ hazards }) => hazards);
    const readAs = line.hazards.flatMap(each => each.readAs ?? []);
    if (readAs.length > 0) given.readAs = readAs;
  }
  if (line.limits) given.limits = line.limits;
  if (line.ate) given.ate = line.ate;
  if (line['m-factors']) given.mFactors = line['m-factors'];
  if (line.peroxide)
    given.peroxide = { groups: line.peroxide.groups, molarMass: line.peroxide['molar-mass'].base };
  const { harmonised } = line;
  if (harmonised)
    given.harmonised = {
      entry: harmonised.entry ?? null,
      notes: harmonised.notes ?? [],
      ...(harmonised.metal && { metal: harmonised.metal }),
      source: harmonised.source,
    };
  return given;
}
