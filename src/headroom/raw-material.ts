import { Exact } from '../quantity/exact.ts';
import type { FormulaLine, ProductRecord, RawMaterialLine, SubstanceLine } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { nearest } from '../report/nearest.ts';
import { fold } from './find-constituent.ts';

/** Lines that take a raw material, those inside of other raw materials too. */
const materialLines = (formula: readonly FormulaLine[]): readonly RawMaterialLine[] =>
  formula.flatMap(line =>
    line.kind === 'raw-material' ? [line, ...materialLines(line.material.formula)] : [],
  );

/**
 * Lines that take one raw material, by its file or its name, in the formula or inside of another raw material; empty
 * where none does.
 */
export function linesOfMaterial(
  { formula, file }: Pick<ProductRecord, 'formula' | 'file'>,
  written: string,
  by: 'file' | 'name',
): readonly RawMaterialLine[] {
  const path = written.trim().replace(/^(\.\/)+/, '');
  return materialLines(formula).filter(line => {
    if (by === 'name') return fold(line.material.name) === fold(written);
    const own = line.material.file;
    return own !== file && (own === path || own.endsWith(`/${path}`));
  });
}

/** Raw materials of a formula, and the one whose name is near to what is written. */
export function materialsOf(
  { formula }: Pick<ProductRecord, 'formula'>,
  written: string,
): { readonly names: readonly string[]; readonly near: readonly string[] } {
  const names = [...new Set(materialLines(formula).map(({ material }) => material.name))];
  const word = fold(written);
  const close = nearest(word, names.map(fold));
  return { names, near: names.filter(name => fold(name) === close || fold(name).includes(word)) };
}

// No line of a record has this name.
export const STAND_IN = '(raw material as a whole)';

const hundred = Exact.decimal(100);
const whole = { kind: 'percent', low: hundred, high: hundred, written: '100 %' } as const;

/**
 * Two records of which the formulas are to be expanded: one in which the raw material is a single substance, and one of
 * the raw material alone.
 * @returns a finding where different raw materials have the name, or where constituents react: what is left of them is
 * in no fixed proportion to the raw material.
 */
export function apart(
  record: ProductRecord,
  lines: readonly RawMaterialLine[],
): { readonly rest: ProductRecord; readonly alone: ProductRecord } | Diagnostic {
  const { name, formula } = lines[0]!.material;
  if (lines.some(({ material }) => material.formula !== formula))
    return {
      code: 'several-materials',
      severity: 'error',
      message: `several raw materials of the formula are called ${name}`,
      hint: 'ask for one by its file; give each that stands in the record itself a name of its own',
      at: { file: record.file },
    };
  if (record.reacts.length > 0)
    return {
      code: 'headroom-reacts',
      severity: 'error',
      message: `the record says that constituents react: what is left of ${name} is in no fixed proportion to it`,
      hint: 'ask for one constituent, by its CAS number or name',
      at: { file: record.file },
    };
  const standIn = ({ amount, density, at, path, excerpt }: RawMaterialLine): SubstanceLine => ({
    kind: 'substance',
    name: STAND_IN,
    cas: null,
    amount,
    density,
    given: { unknown: [], additive: true, relevant: false, source: null },
    tradeSecret: null,
    undisclosed: false,
    at,
    path,
    excerpt,
  });
  const all = new Set<unknown>(lines);
  const replaced = (each: readonly FormulaLine[]): readonly FormulaLine[] =>
    each.map(line => {
      if (line.kind !== 'raw-material') return line;
      if (all.has(line)) return standIn(line);
      return { ...line, material: { ...line.material, formula: replaced(line.material.formula) } };
    });
  return {
    rest: { ...record, formula: replaced(record.formula) },
    alone: { ...record, batch: null, formula: [{ ...lines[0]!, amount: whole }] },
  };
}
