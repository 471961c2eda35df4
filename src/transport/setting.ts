import type { TransportData } from '../reference/transport/transport-data.ts';
import type { HazardousSubstances } from './hazardous-substance.ts';
import type { TransportInput } from './input.ts';
import type { MarinePollutants } from './marine-pollutant.ts';
import type { NamedMaterial } from './named-entry.ts';

/** Everything that does not change from case to case. */
export interface Setting {
  readonly input: TransportInput;
  readonly data: TransportData;
  readonly named: NamedMaterial | null;
  readonly marine: MarinePollutants;
  readonly substances: HazardousSubstances;
}
