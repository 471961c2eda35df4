import type Fraction from 'fraction.js';
import type { Classification } from '../classify/classification.ts';
import type { ClassifiedRecord } from '../classify/contexts.ts';
import { classify } from '../classify/engine.ts';
import { compositionsOf } from '../classify/ranges/compositions.ts';
import type { HarmonisedLookup } from '../classify/resolve.ts';
import type { Constituent, Formula } from '../formula/constituent.ts';
import { Scale } from '../quantity/scale.ts';
import type { Part } from '../quantity/sum.ts';
import type { HarmonisedEntry } from '../reference/harmonised/entry.ts';
import { scopeOf } from '../reference/harmonised/entry-scopes.ts';
import type { Basis } from '../reference/thresholds.ts';
import { type Outcome, succeed } from '../report/diagnostic.ts';
import { turnOf } from './affine.ts';
import { type Cell, divide, type Turn } from './cells.ts';
import { type Change, changesBetween } from './changes.ts';
import { notesOn } from './notes.ts';
import type { Shop } from './shop-amount.ts';
import { type LabelOf, type State, sameState, stateOf } from './state.ts';
import { type Others, type Sample, type Varied, vary } from './variation.ts';
import { keyOf, varyMaterial, type WholeMaterial } from './whole-material.ts';

/** What a search for breakpoints needs besides the formula. */
export interface HeadroomInput {
  readonly record: ClassifiedRecord;
  readonly formula: Formula;
  readonly basis: Basis;
  readonly lookup: HarmonisedLookup;
  /** All harmonised entries of a CAS number, where more than one may apply, each within its concentrations. */
  readonly entriesOf: (cas: string) => readonly HarmonisedEntry[];
  /** Signal word and pictograms; null leaves them out. */
  readonly labelOf: LabelOf | null;
}

/** A range of percent over which hazards, signal word and pictograms stay the same. */
export interface Step {
  readonly from: Fraction;
  readonly to: Fraction;
  readonly fromInclusive: boolean;
  readonly toInclusive: boolean;
  readonly state: State;
}

/** A percent at which something changes: on reaching it, or only above it. */
export interface Breakpoint {
  readonly at: Fraction;
  readonly side: 'at' | 'above';
  /** What changes going up. */
  readonly changes: readonly Change[];
  /** Percent for which the reasons of the changes are worked: `at` itself, or one above it. */
  readonly workedAt: Fraction;
  /** The constituents that the reasons name by their place. */
  readonly constituents: Classification['constituents'];
}

export interface Headroom {
  /** The constituent, or the raw material, which has no CAS number of its own. */
  readonly of: Pick<Constituent, 'name' | 'cas'>;
  readonly basis: Basis;
  readonly others: Others;
  /** Percent in the record: both ends of its range, equal where there is none. */
  readonly current: readonly [Fraction, Fraction];
  readonly domain: readonly [Fraction, Fraction];
  readonly steps: readonly Step[];
  readonly breakpoints: readonly Breakpoint[];
  /** What is held still while the constituent varies, for the reviewer. */
  readonly notes: readonly string[];
  /** Of a raw material: what its percents are on the scale. */
  readonly shop?: Shop;
}

/**
 * The exact percents of one constituent at which any hazard, the signal word or a pictogram of the mixture changes.
 * Solved from the rules themselves: each classification tells of the comparisons that it made, every sum among them
 * moves in a straight line with the percent, and where one meets its limit is worked in rational numbers.
 * @param index of the constituent in the formula.
 * @returns a finding where nothing can give way for the constituent.
 */
export function headroom(input: HeadroomInput, index: number, others: Others): Outcome<Headroom> {
  const { record, formula, basis, lookup } = input;
  const compositions = compositionsOf(record, formula, basis, lookup);
  const variation = vary(formula, compositions, index, others);
  if (!variation.ok) return variation;
  return succeed(search(input, variation.value, [formula.constituents[index]!]));
}

/**
 * The same for a whole raw material: all its constituents in proportion, up to the raw material as delivered.
 * @returns a finding where nothing can give way for it.
 */
export function headroomOfMaterial(
  input: HeadroomInput,
  material: WholeMaterial,
  others: Others,
): Outcome<Headroom> {
  const { record, formula, basis, lookup } = input;
  const asked: (readonly number[])[] = [];
  const listening: Formula = {
    ...formula,
    most: weights => {
      asked.push(weights);
      return formula.most(weights);
    },
  };
  compositionsOf(record, listening, basis, lookup);
  const variation = varyMaterial(formula, material, asked, others);
  if (!variation.ok) return variation;
  const keys = new Set(material.alone.constituents.map(keyOf));
  const within = formula.constituents.filter(constituent => keys.has(keyOf(constituent)));
  return succeed({ ...search(input, variation.value, within), shop: material.shop });
}

function search(
  input: HeadroomInput,
  { constituent, others, domain, at }: Varied,
  within: readonly Constituent[],
): Headroom {
  const cells = divide(...domain, (x, tell) => probe(input, at(x), tell));
  return {
    of: { name: constituent.name, cas: constituent.cas },
    basis: input.basis,
    others,
    current: [constituent.low.exact, constituent.high.exact],
    domain,
    steps: stepsOf(cells),
    breakpoints: breakpointsOf(cells),
    notes: notesOn(input, within, cells.at(-1)!.found.classification),
  };
}

function probe(
  { record, basis, lookup, entriesOf, labelOf }: HeadroomInput,
  { formula, lines }: Sample,
  tell: ((turn: Turn) => void) | null,
): State {
  if (!tell) return stateOf(classify(record, formula, basis, lookup), labelOf);
  const observe = (parts: readonly Part[], limit: number) => {
    const turn = turnOf(parts, limit, lines);
    if (turn) tell(turn);
  };
  // Where a number has several entries, the one that is looked up changes with the percent.
  for (const { cas, water, high } of formula.constituents)
    if (cas && !water)
      for (const entry of entriesOf(cas)) {
        const scope = scopeOf(entry);
        if (scope) observe([{ amount: high, weight: 1 }], scope.limit);
      }
  return stateOf(classify(record, formula, basis, lookup, new Scale(observe)), labelOf);
}

/** Neighbouring cells of one state, joined. */
function stepsOf(cells: readonly Cell<State>[]): Step[] {
  const steps: Step[] = [];
  for (const { from, to, found } of cells) {
    const inclusive = from.equals(to);
    const last = steps.at(-1);
    if (last && sameState(last.state, found))
      steps[steps.length - 1] = { ...last, to, toInclusive: inclusive };
    else steps.push({ from, to, fromInclusive: inclusive, toInclusive: inclusive, state: found });
  }
  return steps;
}

function breakpointsOf(cells: readonly Cell<State>[]): Breakpoint[] {
  return cells.slice(1).flatMap((cell, i): Breakpoint[] => {
    const before = cells[i]!.found;
    if (sameState(before, cell.found)) return [];
    const side = cell.from.equals(cell.to) ? 'at' : 'above';
    return [
      {
        at: cell.from,
        side,
        changes: changesBetween(before, cell.found),
        workedAt: cell.probed,
        constituents: cell.found.classification.constituents,
      },
    ];
  });
}
