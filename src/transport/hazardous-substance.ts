import { readMeasure } from '../quantity/measure.ts';
import { reaches } from '../quantity/sum.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import { type Fact, fact } from './fact.ts';
import type { TransportInput, TransportPack } from './input.ts';

export interface HazardousSubstances {
  /** Constituents at or above their reportable quantity in one package, the lowest quantity first. */
  readonly names: readonly string[];
  /** Constituents that count, where the mass of the package is not known. */
  readonly unknown: readonly string[];
  readonly because: readonly Fact[];
}

/** Mass of the product in one package in kilograms: the case, or the pack where it goes alone; null where not known. */
export function packageKilograms({ density }: TransportInput, pack: TransportPack | null): number | null {
  if (!pack) return null;
  const grams =
    pack.grams ?? (density && pack.millilitres !== null ? pack.millilitres * density.value : null);
  return grams === null ? null : (grams * (pack.count ?? 1)) / 1000;
}

/**
 * Hazardous substances of 49 CFR 171.8: constituents of Appendix A at the concentration of their reportable
 * quantity, in a package that holds that quantity.
 */
export function hazardousSubstances(input: TransportInput, data: TransportData): HazardousSubstances {
  const { cite, concentrations } = data.criteria.hazardousSubstance;
  const kilograms = packageKilograms(input, input.pack);
  const reached: { readonly name: string; readonly pounds: number }[] = [];
  const unknown: string[] = [];
  const because: Fact[] = [];
  for (const { name, cas, high } of input.constituents) {
    const pounds = data.reportablePounds(cas, name);
    if (pounds === null) continue;
    const limit = concentrations.find(({ pounds: quantity }) => quantity === pounds);
    if (limit && !reaches(high, limit.percent)) continue;
    const measure = readMeasure(`${pounds} lb`, 'mass');
    const quantity = measure.ok ? measure.value.base.value / 1000 : 0;
    const held = kilograms === null ? null : (kilograms * high.value) / 100;
    const values = { name, percent: high.value, pounds, kilograms: held };
    if (held === null) {
      unknown.push(name);
      because.push(fact('reportable-quantity-unknown', cite, values));
    } else if (held >= quantity) {
      reached.push({ name, pounds });
      because.push(fact('hazardous-substance', cite, values));
    } else because.push(fact('reportable-quantity-below', cite, values));
  }
  const names = reached.toSorted((a, b) => a.pounds - b.pounds).map(({ name }) => name);
  return { names, unknown, because };
}
