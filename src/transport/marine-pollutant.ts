import { reaches } from '../quantity/sum.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import { type Fact, fact } from './fact.ts';
import type { TransportInput } from './input.ts';

export interface MarinePollutants {
  /** Names of Appendix B that are present at their concentration. */
  readonly names: readonly string[];
  readonly because: readonly Fact[];
}

/** Constituents of Appendix B to 49 CFR 172.101 at or above the concentration of 171.8. */
export function marinePollutants(input: TransportInput, data: TransportData): MarinePollutants {
  const rules = data.criteria.marinePollutant;
  const names: string[] = [];
  const because: Fact[] = [];
  for (const { name, cas, high } of input.constituents) {
    const known = cas ? data.substance(cas) : null;
    const listed = data.marinePollutant(known?.marine ?? name);
    if (!listed) continue;
    const limit = listed.severe ? rules.severePercentAtLeast : rules.percentAtLeast;
    const values = { name, listed: listed.name, percent: high.value, limit };
    if (!reaches(high, limit)) because.push(fact('marine-pollutant-below', rules.cite, values));
    else if (known?.marineIf)
      because.push(fact('marine-pollutant-if', rules.cite, { ...values, condition: known.marineIf }));
    else {
      names.push(name);
      because.push(fact('marine-pollutant', rules.cite, values));
    }
  }
  return { names, because };
}
