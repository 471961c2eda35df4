import type { ClassResult, Context } from '../context.ts';
import { ofHealth } from '../facts/provision.ts';
import { byIngredient } from './by-ingredient.ts';

const statements: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  Ozone: { '1': 'H420' },
  'ED HH': { '1': 'EUH380', '2': 'EUH381' },
  'ED ENV': { '1': 'EUH430', '2': 'EUH431' },
  PBT: { '': 'EUH440' },
  vPvB: { '': 'EUH441' },
  PMT: { '': 'EUH450' },
  vPvM: { '': 'EUH451' },
};

/**
 * Ozone layer (CLP 5.1.3.2) and the classes of Delegated Regulation (EU) 2023/707: endocrine disruption 3.11.3 and
 * 4.2.3, PBT and vPvB 4.3.3, PMT and vPvM 4.4.3. One ingredient at its cut-off decides.
 */
export function environmental(context: Context): ClassResult[] {
  const { basis } = context;
  return Object.entries(basis.environmental).map(([hazardClass, table]): ClassResult => {
    if (table.mixturesFrom !== undefined && basis.asOf < table.mixturesFrom)
      return {
        class: hazardClass,
        outcome: 'not-applicable',
        because: { kind: 'not-yet', from: table.mixturesFrom, cites: [ofHealth(basis, table.cite)] },
      };
    return byIngredient(context, hazardClass, table, statements[hazardClass]!).result;
  });
}
