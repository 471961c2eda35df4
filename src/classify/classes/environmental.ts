import type { ClassRule } from '../class-rule.ts';
import { ofHealth } from '../facts/provision.ts';
import { byIngredient, cutOffOf } from './by-ingredient.ts';

const environmental = (name: string): ClassRule => ({
  listed: name,
  isOf: basis => basis.environmental[name] !== undefined,
  judge: context => {
    const { basis } = context;
    const table = basis.environmental[name];
    if (!table) return [];
    if (table.mixturesFrom === undefined || basis.asOf >= table.mixturesFrom)
      return [byIngredient(context, name, table).result];
    const because = {
      kind: 'not-yet',
      from: table.mixturesFrom,
      cites: [ofHealth(basis, table.cite)],
    } as const;
    return [{ class: name, outcome: 'not-applicable', because }];
  },
  limitedBy: [name],
  cutOff: ({ environmental: tables }, category) => cutOffOf(tables[name], category),
});

/** Ozone layer, CLP and UN: one ingredient at its cut-off decides (CLP 5.1.3.2). */
export const ozone = environmental('Ozone');

/**
 * The classes of Delegated Regulation (EU) 2023/707: endocrine disruption 3.11.3 and 4.2.3, PBT and vPvB 4.3.3, PMT and
 * vPvM 4.4.3. One ingredient at its cut-off decides.
 */
export const endocrineForHealth = environmental('ED HH');
/** Endocrine disruption for the environment. */
export const endocrineForEnvironment = environmental('ED ENV');
/** PBT, vPvB, PMT and vPvM. */
export const persistent: readonly ClassRule[] = ['PBT', 'vPvB', 'PMT', 'vPvM'].map(environmental);
