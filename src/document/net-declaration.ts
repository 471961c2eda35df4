import { findUnit, type UnitKind } from '../quantity/units.ts';
import type { Quantity } from '../record/product-record.ts';
import rules from './net-contents.json' with { type: 'json' };
import { inUnitOf, netContents } from './net-contents.ts';

/**
 * The declaration of contents of a consumer commodity in both systems (15 U.S.C. 1453(a)(2), (3)): under a gallon or
 * four pounds in ounces, from a pint or a pound followed by the largest whole units; then the metric measure. Null
 * where the unit is neither of volume nor of mass.
 */
export function netDeclaration(quantity: Quantity): string | null {
  const contents = netContents(quantity);
  if (!contents) return null;
  const kind: UnitKind = findUnit('volume', quantity.unit) ? 'volume' : 'mass';
  const { ounce, most, steps, head } = rules.declaration[kind];
  const ounces = inUnitOf(quantity, kind, ounce);
  const metric = contents.metric;
  if (ounces >= most) return joined(`${`${head}${contents.customary}`.toUpperCase()} (${metric})`);
  const whole = wholeUnits(ounces, steps, ounce);
  const aside = whole === null ? '' : ` (${whole})`;
  const first = `${head}${figures(ounces)} ${ounce}`.toUpperCase();
  return joined(aside === '' ? `${first} (${metric})` : `${first}${aside.toUpperCase()} ${metric}`);
}

/** A number stays with its unit. */
const joined = (text: string): string => text.replace(/(?<=[\d.A-Z]) (?=[A-Za-z])/g, '\u00a0');

/** Not carried out to more than two places. */
const figures = (value: number): string => String(Number(value.toFixed(2)));

interface Step {
  readonly unit: string;
  readonly ounces: number;
}

/** The largest whole units with the rest in ounces; null under the least of them. */
function wholeUnits(ounces: number, steps: readonly Step[], ounce: string): string | null {
  const parts: string[] = [];
  let rest = ounces;
  for (const { unit, ounces: each } of steps) {
    const count = Math.floor(rest / each + 1e-9);
    if (count === 0) continue;
    parts.push(`${count} ${unit}`);
    rest -= count * each;
  }
  if (parts.length === 0) return null;
  if (Number(figures(rest)) > 0) parts.push(`${figures(rest)} ${ounce}`);
  return parts.join(' ');
}
