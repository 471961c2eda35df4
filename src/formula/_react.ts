import Fraction from 'fraction.js';
import type { ProductRecord, SubstanceLine } from '../record/product-record.ts';
import type { Reaction } from '../record/record-blocks.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { Identity } from './_constituents.ts';
import { saysSomething } from './_given.ts';
import { keyOf } from './_plan.ts';
import { isWater, WATER_CAS } from './water.ts';

const zero = new Fraction(0);

/** What is in the batch after its reactions. */
export interface Reacted {
  readonly identities: ReadonlyMap<string, Identity>;
  readonly corners: readonly ReadonlyMap<string, Fraction>[];
  /** Keys of constituents that reactions use up, in part or whole. */
  readonly consumed: ReadonlySet<string>;
}

/**
 * Runs the reactions of a record, in their order and each to its end: the reactant that is used up first decides, the
 * excess of the others is left over. Exact; what forms weighs as much as what reacts, and small differences of rounded
 * molar masses go to what forms in proportion.
 */
export function react(
  { reacts }: Pick<ProductRecord, 'reacts'>,
  identities: ReadonlyMap<string, Identity>,
  corners: readonly ReadonlyMap<string, Fraction>[],
  findings: Diagnostic[],
): Reacted {
  const known = new Map(identities);
  const consumed = new Set<string>();
  let after = corners;
  for (const reaction of reacts) {
    const keys = reaction.consumes.map(({ of }) => keyOfReactant(of, known));
    const unknown = reaction.consumes.filter((_, index) => keys[index] === null);
    for (const { of } of unknown)
      findings.push({
        code: 'reactant-missing',
        severity: 'error',
        message: `\`${of}\` reacts, but is no constituent of the formula`,
        hint: `constituents: ${[...known.values()].map(({ name, cas }) => (cas ? `${name} (${cas})` : name)).join(', ')}`,
        at: reaction.at,
        path: reaction.path,
      });
    if (unknown.length > 0) continue;
    const formed = reaction.forms.map(product => formedKey(product, reaction, known));
    for (const key of keys) consumed.add(key!);
    after = after.map(percents => at(percents, reaction, keys as string[], formed));
  }
  return { identities: known, corners: after, consumed };
}

function at(
  percents: ReadonlyMap<string, Fraction>,
  { consumes, forms }: Reaction,
  keys: readonly string[],
  formed: readonly string[],
): ReadonlyMap<string, Fraction> {
  const mass = ({ moles, molarMass }: Reaction['consumes'][number] | Reaction['forms'][number]) =>
    moles.exact.mul(molarMass.exact);
  const extents = consumes.map((reactant, index) => (percents.get(keys[index]!) ?? zero).div(mass(reactant)));
  const extent = extents.reduce((least, each) => (each.lt(least) ? each : least));
  const [before, after] = [consumes, forms].map(side =>
    side.reduce((sum, each) => sum.add(mass(each)), zero),
  );
  const found = new Map(percents);
  const add = (key: string, more: Fraction) => found.set(key, (found.get(key) ?? zero).add(more));
  consumes.forEach((reactant, index) => void add(keys[index]!, extent.mul(mass(reactant)).neg()));
  const scale = extent.mul(before!).div(after!);
  forms.forEach((product, index) => void add(formed[index]!, scale.mul(mass(product))));
  return found;
}

function keyOfReactant(of: string, known: ReadonlyMap<string, Identity>): string | null {
  const wanted = of.trim().toLowerCase().replace(/\s+/g, ' ');
  for (const [key, { name, cas }] of known)
    if (cas === wanted || name.toLowerCase().replace(/\s+/g, ' ') === wanted) return key;
  return null;
}

/** The key of what forms; it becomes a constituent where it is none yet. */
function formedKey(
  product: Reaction['forms'][number],
  { at: place, path }: Reaction,
  known: Map<string, Identity>,
): string {
  const water = isWater(product.name, product.cas);
  const line: SubstanceLine = {
    kind: 'substance',
    name: product.name,
    cas: product.cas,
    given: product.given,
    amount: { kind: 'balance' },
    density: null,
    tradeSecret: null,
    undisclosed: false,
    at: place,
    path,
  };
  const key = keyOf(line);
  const before = known.get(key);
  if (before) {
    if (!saysSomething(before.given) && saysSomething(product.given))
      known.set(key, { ...before, given: product.given, line });
  } else
    known.set(key, {
      name: product.name,
      cas: product.cas ?? (water ? WATER_CAS : null),
      given: product.given,
      line,
      via: [],
      water,
      tradeSecret: null,
      undisclosed: false,
    });
  return key;
}
