import { findUnit, type UnitKind } from '../quantity/units.ts';
import type { Quantity } from '../record/product-record.ts';
import rules from './net-contents.json' with { type: 'json' };

/** Net contents in metric and US customary measure, the measure of the record first. */
export interface NetContents {
  /** `946 mL` */
  readonly declared: string;
  /** `32 fl oz` */
  readonly converted: string;
  /** `946 mL (32 fl oz)` */
  readonly text: string;
  readonly metric: string;
  readonly customary: string;
}

type System = 'metric' | 'customary';

interface Step {
  readonly unit: string;
  /** Used from this many of the unit upwards. */
  readonly from: number;
}

/**
 * Converts a volume or mass and rounds to three figures (two below 100 in mL or g) as 16 CFR 500.19(b) shows
 * metric quantities. The nearest value is taken unless it overstates the contents by more than a tolerance, then
 * the next lower. Null where the unit is neither of volume nor of mass.
 */
export function netContents({ value, unit }: Quantity): NetContents | null {
  for (const kind of ['volume', 'mass'] as const) {
    const found = findUnit(kind, unit);
    if (!found) continue;
    const base = value.value * found.factor.valueOf();
    const declaredIn = systemOf(kind, found.symbol);
    const declared = `${value.value} ${found.symbol}`;
    const converted = convert(base, kind, declaredIn);
    const [metric, customary] = declaredIn === 'metric' ? [declared, converted] : [converted, declared];
    return { declared, converted, text: `${declared} (${converted})`, metric, customary };
  }
  return null;
}

/** A quantity in a customary unit, rounded as `netContents` rounds; as written where it is written in that unit. */
export function inUnitOf({ value, unit }: Quantity, kind: 'volume' | 'mass', wanted: string): number {
  const found = findUnit(kind, unit)!;
  const exact = (value.value * found.factor.valueOf()) / unitFactor(kind, wanted);
  return systemOf(kind, found.symbol) === 'customary' ? exact : rounded(exact, wanted);
}

const systemOf = (kind: UnitKind, symbol: string): System =>
  (rules.systems.customary as readonly string[]).includes(symbol) || kind === 'length'
    ? 'customary'
    : 'metric';

function convert(base: number, kind: 'volume' | 'mass', from: System): string {
  const steps: readonly Step[] = rules.convertTo[from === 'metric' ? 'customary' : 'metric'][kind];
  const step = steps.find(({ unit, from: least }) => base / unitFactor(kind, unit) >= least) ?? steps.at(-1)!;
  const exact = base / unitFactor(kind, step.unit);
  return `${rounded(exact, step.unit)} ${step.unit}`;
}

function rounded(exact: number, unit: string): number {
  const { usual, few, below, fewUnits, tolerance } = rules.figures;
  const figures = fewUnits.includes(unit) && exact < below ? few : usual;
  const nearest = toFigures(exact, figures, Math.round);
  return nearest <= exact * (1 + tolerance) ? nearest : toFigures(exact, figures, Math.floor);
}

const unitFactor = (kind: UnitKind, symbol: string): number => findUnit(kind, symbol)!.factor.valueOf();

function toFigures(value: number, figures: number, round: (value: number) => number): number {
  const scale = 10 ** (figures - 1 - Math.floor(Math.log10(value)));
  // Products such as 31.9 * 10 must not fall below their whole number.
  return round(value * scale + 1e-9) / scale;
}
