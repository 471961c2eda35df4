import { classesOf } from '../../src/classify/classes-of.ts';
import type { ClassResult, Context } from '../../src/classify/context.ts';
import type { Warning } from '../../src/classify/facts/warning.ts';
import { classesIn, type Mixture } from '../../src/classify/ingredient.ts';
import { defaultOf, type ReadingId } from '../../src/classify/readings.ts';
import { resolve } from '../../src/classify/resolve.ts';
import type { SoldAs } from '../../src/classify/supplemental/_finding.ts';
import {
  type Supplemental,
  supplementalStatements,
} from '../../src/classify/supplemental/supplemental-statements.ts';
import { worstOf } from '../../src/classify/worst.ts';
import { openReference } from '../../src/draft/open-reference.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import { plain } from '../../src/quantity/print.ts';
import { quietScale } from '../../src/quantity/scale.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { en } from '../../src/words/en/index.ts';
import { readRecord, recordAround } from '../support/cases.ts';

type Line = Record<string, unknown>;

/** A formula line known and not classified, for the balance. */
const filler = { name: 'filler', amount: 'balance', hazards: [], source: 'test' };

/** A mixture of these lines with a harmless balance, at the upper ends, as classification sees it. */
export async function contextOf(
  lines: readonly Line[],
  more: Line = {},
  choices: Partial<Record<ReadingId, string>> = {},
  basisId: BasisId = 'eu-clp',
): Promise<{ context: Context; results: readonly ClassResult[] }> {
  const record = readRecord(recordAround({ formula: [...lines, filler], ...more }));
  const formula = expandFormula(record);
  const reference = await openReference(basisId, '2026-11-25');
  if (!formula.ok || !reference.ok) throw new Error(JSON.stringify(formula.diagnostics));
  const { basis, lookup } = reference.value;
  const ingredients = formula.value.constituents.map((constituent, index) => {
    const { data, entry } = resolve(constituent, index, lookup, record.form);
    const { name, cas, water, given, high } = constituent;
    const limits = { supplementalLimits: given.hazards ? [] : (entry?.supplementalLimits ?? []) };
    return {
      index,
      name,
      cas,
      water,
      additive: given.additive,
      relevant: given.relevant,
      data: { ...data, ...limits },
      percent: high,
    };
  });
  const mixture: Mixture = {
    form: record.form,
    properties: record.properties,
    evidence: record.evidence,
    ingredients,
    classes: classesIn(ingredients.map(({ data }) => data)),
  };
  const take = (id: ReadingId): string => choices[id] ?? defaultOf(id);
  const context = { mixture, basis, scale: quietScale, applyLimits: basis.specificLimits.apply, take };
  return {
    context,
    results: classesOf({ each: [context], apart: false, at: () => [context] }, worstOf).results,
  };
}

export async function supplementalOf(
  lines: readonly Line[],
  {
    soldAs = {},
    choices = {},
    ...more
  }: Line & { soldAs?: SoldAs; choices?: Partial<Record<ReadingId, string>> } = {},
): Promise<Supplemental> {
  const { context, results } = await contextOf(lines, more, choices);
  return supplementalStatements(context, results, soldAs);
}

/** A warning in English, constituents called by their number. */
export const wordsOf = (warning: Warning): string =>
  en.warning(warning, { names: constituent => `constituent ${constituent}`, style: plain, amounts: true });

export const codes = ({ statements }: Supplemental): string[] => statements.map(({ code }) => code);
export const asked = ({ questions }: Supplemental): string[] => questions.map(({ code }) => code);
