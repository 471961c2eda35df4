import Fraction from 'fraction.js';
import data from '../../hazard-data/units.json' with { type: 'json' };

/** What a unit measures. */
export type UnitKind = keyof typeof data.kinds;

/** A unit and its exact value: base = (written + offset) x factor. */
export interface Unit {
  readonly symbol: string;
  readonly kind: UnitKind;
  readonly factor: Fraction;
  readonly offset: Fraction | null;
}

interface UnitEntry {
  readonly unit: string;
  readonly factor: string;
  readonly per?: string;
  readonly offset?: string;
  readonly also: readonly string[];
}

const kinds = Object.keys(data.kinds) as UnitKind[];
const bySymbol = new Map<string, Unit>();
const byLowerCase = new Map<string, Unit>();

for (const kind of kinds)
  for (const entry of data.kinds[kind].units as readonly UnitEntry[]) {
    const unit: Unit = {
      symbol: entry.unit,
      kind,
      factor: new Fraction(entry.factor).div(entry.per ?? 1),
      offset: entry.offset === undefined ? null : new Fraction(entry.offset),
    };
    for (const name of [entry.unit, ...entry.also]) {
      bySymbol.set(`${kind} ${name}`, unit);
      // MPa and mPa differ by case alone.
      if (kind !== 'pressure') byLowerCase.set(`${kind} ${name.toLowerCase()}`, unit);
    }
  }

const plain = (text: string): string =>
  text
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/\s*\/\s*/g, '/')
    .replace(/[²]/g, '2')
    .replace(/[³]/g, '3')
    .replace(/^°\s*/, '')
    .replace(/\^/g, '')
    .replace(/\.$/, '');

/** The unit of a kind by its symbol or a usual name of it, or null. */
export function findUnit(kind: UnitKind, text: string): Unit | null {
  const name = plain(text);
  return bySymbol.get(`${kind} ${name}`) ?? byLowerCase.get(`${kind} ${name.toLowerCase()}`) ?? null;
}

/** Symbols of a kind in the order of the data. */
export const unitSymbols = (kind: UnitKind): readonly string[] =>
  data.kinds[kind].units.map(({ unit }) => unit);
