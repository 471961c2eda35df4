import { Exact } from './exact.ts';
import { readNumber } from './number.ts';
import { misreads, type Reading, reads } from './reading.ts';
import { findUnit, type UnitKind, unitSymbols } from './units.ts';

/** A number with its unit. */
export interface Measure {
  readonly kind: UnitKind;
  /** In the base unit of the kind: g, mL, mm, g/mL, C, Pa, mm2/s, g/mol. */
  readonly base: Exact;
  /** In the unit written. */
  readonly number: Exact;
  readonly unit: string;
  readonly written: string;
}

const examples: Readonly<Record<UnitKind, string>> = {
  mass: 'kg',
  volume: 'L',
  length: 'mm',
  density: 'g/mL',
  temperature: 'C',
  pressure: 'kPa',
  viscosity: 'mm2/s',
  molarMass: 'g/mol',
};

/** Splits `12.5 fl oz` into `12.5` and `fl oz`; null where no number leads. */
export function splitMeasure(text: string): { readonly number: string; readonly unit: string } | null {
  const match = /^\s*([-+−–]?\s?[\d.,]*\d[\d.,]*(?:[eE][-+]?\d+)?)\s*(.*?)\s*$/s.exec(text);
  return match ? { number: match[1]!, unit: match[2]! } : null;
}

/** Reads a number with a unit of one of the kinds; exact, no rounding. */
export function readMeasure(written: string, ...kinds: readonly [UnitKind, ...UnitKind[]]): Reading<Measure> {
  const example = examples[kinds[0]];
  const parts = splitMeasure(written);
  if (!parts)
    return misreads(
      `\`${written}\` does not begin with a number`,
      `write a number and a unit, such as \`40 ${example}\``,
    );
  const number = readNumber(parts.number);
  if (!number.ok)
    return { ...number, hint: number.hint && parts.unit ? withUnit(number.hint, parts.unit) : number.hint };
  if (parts.unit === '')
    return misreads(`\`${written}\` has no unit`, `write for example \`${parts.number} ${example}\``);
  for (const kind of kinds) {
    const unit = findUnit(kind, parts.unit);
    if (!unit) continue;
    const shifted = unit.offset ? number.value.exact.add(unit.offset) : number.value.exact;
    const base =
      unit.offset === null && unit.factor.equals(1) ? number.value : Exact.fraction(shifted.mul(unit.factor));
    return reads({ kind, base, number: number.value, unit: unit.symbol, written: written.trim() });
  }
  const symbols = kinds.flatMap(unitSymbols).join(', ');
  return misreads(
    `\`${written}\` has the unit \`${parts.unit}\`, which is not known here`,
    `use one of ${symbols}`,
  );
}

const withUnit = (hint: string, unit: string): string => hint.replace(/`([-+\d.]+)`/g, `\`$1 ${unit}\``);

/** Exact value of a base amount in a unit: `inUnit(grams, 'mass', 'kg')`. @throws RangeError on an unknown unit. */
export function inUnit(base: Exact, kind: UnitKind, symbol: string): Exact {
  const unit = findUnit(kind, symbol);
  if (!unit) throw new RangeError(`no such unit of ${kind}: ${symbol}`);
  const scaled = base.exact.div(unit.factor);
  return Exact.fraction(unit.offset ? scaled.sub(unit.offset) : scaled);
}
