import data from '../../hazard-data/water.json' with { type: 'json' };
import { Exact } from '../quantity/exact.ts';

const names = new Set(data.names);

/** CAS number of water. */
export const WATER_CAS: string = data.cas;

/** g/mL at 20 C. */
export const waterDensity: Exact = Exact.decimal(data.density);

/** The temperature of that density, as a record would write it. */
export const WATER_DENSITY_AT: string = data.densityUnit.replace(/^.* at /, '');

/** Whether a constituent is water, by its CAS number or, without one, by its name. */
export const isWater = (name: string, cas: string | null): boolean =>
  cas === null ? names.has(name.trim().toLowerCase().replace(/\s+/g, ' ')) : cas === WATER_CAS;
