import type { Composition, Formula } from '../formula/constituent.ts';
import { quietScale, type Scale } from '../quantity/scale.ts';
import type { Choice, ProductRecord } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';
import { withBuildingBlocks } from './building-blocks.ts';
import type { Context } from './context.ts';
import { classesIn, type Mixture } from './ingredient.ts';
import { defaultOf, type ReadingId } from './readings.ts';
import { type HarmonisedLookup, type Resolved, resolve } from './resolve.ts';

/** What a classification needs of the record. */
export type ClassifiedRecord = Pick<ProductRecord, 'form' | 'properties' | 'evidence' | 'choices'> &
  Partial<Pick<ProductRecord, 'revision' | 'revised'>>;

/** What the rules work from, with every constituent at its high end. */
export const highestOf = (
  record: ClassifiedRecord,
  formula: Formula,
  basis: Basis,
  lookup: HarmonisedLookup,
): Context =>
  contextsOf(
    record,
    formula,
    formula.constituents.map((constituent, i) => resolve(constituent, i, lookup, record.form)),
    basis,
    quietScale,
  )(formula.constituents.map(({ high }) => high));

/** Makes what the rules work from at a composition. */
export function contextsOf(
  record: ClassifiedRecord,
  formula: Formula,
  resolved: readonly Resolved[],
  basis: Basis,
  scale: Scale,
): (percents: Composition) => Context {
  const take = choiceOf(record.choices);
  const applyLimits = basis.specificLimits.apply || take('us-specific-limits') === 'use';
  const chosen = withBuildingBlocks(basis, take);
  const classes = classesIn(resolved.map(({ data }) => data));
  return percents => ({
    mixture: mixtureAt(record, formula, resolved, classes, percents),
    basis: chosen,
    scale,
    applyLimits,
    take,
  });
}

function mixtureAt(
  { form, properties, evidence }: ClassifiedRecord,
  { constituents }: Formula,
  resolved: readonly Resolved[],
  classes: ReadonlySet<string>,
  percents: Composition,
): Mixture {
  const ingredients = constituents.map(({ name, cas, water, given }, i) => ({
    index: i,
    name,
    cas,
    water,
    additive: given.additive,
    relevant: given.relevant,
    data: resolved[i]!.data,
    percent: percents[i]!,
  }));
  return { form, properties, evidence, ingredients, classes };
}

const choiceOf =
  (choices: readonly Choice[]) =>
  (id: ReadingId): string =>
    (choices.length > 0 && choices.find(({ reading }) => reading === id)?.take) || defaultOf(id);
