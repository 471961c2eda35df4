import Fraction from 'fraction.js';
import { Exact, zero } from '../quantity/exact.ts';
import type { Reaction } from '../record/record-blocks.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import type { Composition, Constituent, Formula } from './constituent.ts';
import { isWater } from './water.ts';

const none = new Fraction(0);

interface Named {
  readonly name: string;
  readonly cas: string | null;
}

const isSame = (a: Named, b: Named): boolean =>
  a.cas !== null && b.cas !== null ? a.cas === b.cas : a.name.toLowerCase() === b.name.toLowerCase();

/**
 * A formula after its reactions: acid and base become salt and water by stoichiometry until one is used up, and what is
 * left over stays (a mixture is of substances that do not react, 29 CFR 1910.1200(c)). No mass is lost: where printed
 * molar masses do not add up to the last digit, what forms is scaled to what reacts.
 * @returns findings where a reactant is not in the formula, or is given as a range.
 */
export function reacted(
  formula: Formula,
  reactions: readonly Reaction[],
  byWeight: boolean,
): Outcome<Formula> {
  const findings: Diagnostic[] = [];
  let after = formula;
  for (const reaction of reactions) {
    const { at, path } = reaction;
    if (!byWeight) {
      const message = 'a reaction is reckoned in percent by weight, and those of a gas are by volume';
      return fail({ code: 'reaction-by-volume', severity: 'error', message, at, path });
    }
    const next = afterOne(after, reaction, findings);
    if (next) after = next;
  }
  return hasErrors(findings) ? fail(...findings) : succeed(after, findings);
}

function afterOne(formula: Formula, reaction: Reaction, findings: Diagnostic[]): Formula | null {
  const { constituents } = formula;
  const { at, path } = reaction;
  const before = findings.length;
  const consumed = reaction.consumes.flatMap((reactant, i) => {
    const index = constituents.findIndex(
      ({ name, cas }) => cas === reactant.of || name.toLowerCase() === reactant.of.toLowerCase(),
    );
    const found = constituents[index];
    const where = { at, path: `${path}.consumes[${i}].of` };
    if (!found)
      findings.push({
        code: 'reactant-missing',
        severity: 'error',
        message: `\`${reactant.of}\` is no constituent of the formula`,
        hint: `write the CAS number or name of one: ${constituents.map(each => each.name).join(', ')}`,
        ...where,
      });
    else if (!found.low.exact.equals(found.high.exact))
      findings.push({
        code: 'reactant-range',
        severity: 'error',
        message: `${found.name} reacts and is given as a range: what is left over is not determined`,
        hint: 'give what reacts as weighed, in one figure',
        ...where,
      });
    else {
      const mass = reactant.moles.exact.mul(reactant.molarMass.exact);
      return [{ index, mass, extent: found.high.exact.div(mass) }];
    }
    return [];
  });
  if (hasErrors(findings.slice(before))) return null;
  const extent = consumed.reduce(
    (least, each) => (each.extent.lt(least) ? each.extent : least),
    consumed[0]!.extent,
  );
  const lost = consumed.reduce((sum, { mass }) => sum.add(mass), none);
  const won = reaction.forms.reduce(
    (sum, { moles, molarMass }) => sum.add(moles.exact.mul(molarMass.exact)),
    none,
  );

  const changes = constituents.map(() => none);
  for (const { index, mass } of consumed) changes[index] = changes[index]!.sub(mass.mul(extent));
  const formed: { readonly constituent: Constituent; readonly percent: Fraction }[] = [];
  for (const product of reaction.forms) {
    const percent = product.moles.exact.mul(product.molarMass.exact).mul(extent).mul(lost).div(won);
    const index = constituents.findIndex(
      each => isSame(each, product) || (each.water && isWater(product.name, product.cas)),
    );
    if (index >= 0) changes[index] = changes[index]!.add(percent);
    else {
      const { name, cas, given } = product;
      const constituent = { name, cas, low: zero, high: zero, given, via: [], water: isWater(name, cas) };
      formed.push({ constituent, percent });
    }
  }
  return moved(formula, changes, formed);
}

/** A formula with a fixed change to each constituent, and further constituents; those of which nothing is left go. */
function moved(
  { constituents, ranged, most, chosen }: Formula,
  changes: readonly Fraction[],
  formed: readonly { readonly constituent: Constituent; readonly percent: Fraction }[],
): Formula {
  const all = [
    ...constituents.map((constituent, i) => ({ constituent, change: changes[i]!, from: i as number | null })),
    ...formed.map(({ constituent, percent }) => ({ constituent, change: percent, from: null })),
  ]
    .map(({ constituent, change, from }) => ({
      change,
      from,
      constituent: {
        ...constituent,
        low: Exact.fraction(constituent.low.exact.add(change)),
        high: Exact.fraction(constituent.high.exact.add(change)),
      },
    }))
    .filter(({ constituent }) => constituent.high.exact.gt(0))
    .sort((a, b) => b.constituent.high.exact.compare(a.constituent.high.exact));
  const shifted = (composition: Composition): Composition =>
    all.map(({ change, from }) =>
      Exact.fraction((from === null ? none : composition[from]!.exact).add(change)),
    );
  return {
    constituents: all.map(({ constituent }) => constituent),
    ranged,
    most: weights =>
      shifted(most(constituents.map((_, i) => weights[all.findIndex(({ from }) => from === i)] ?? 0))),
    ...(chosen && { chosen: chosen.map(shifted) }),
  };
}
