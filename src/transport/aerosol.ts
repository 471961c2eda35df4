import type { TransportData } from '../reference/transport/transport-data.ts';
import type { Outcome } from './answer.ts';
import { fact } from './fact.ts';
import type { TransportInput } from './input.ts';

/** Aerosols are articles: UN1950 in Division 2.1 where flammable, else 2.2 (49 CFR 172.101, 173.115(l)). */
export function aerosol({ hazards }: TransportInput, data: TransportData): Outcome {
  const category = hazards.find(({ hazardClass }) => hazardClass === 'Aerosol')?.category ?? null;
  const corrosive = hazards.some(({ hazardClass }) => hazardClass === 'Skin Corr.');
  const division = category === '1' || category === '2' ? '2.1' : '2.2';
  const subsidiary = corrosive ? ['8'] : [];
  const entry = data.table
    .byId('UN1950')
    .find(row => row.hazardClass === division && row.subsidiary.join() === subsidiary.join());
  const because = [fact('aerosol', '49 CFR 173.115(l)', { category, class: division, subsidiary })];
  const sure = category !== null && entry !== undefined;
  return {
    answer: sure ? 'regulated' : 'undecided',
    entry: sure ? entry : null,
    name: sure ? entry.names[0]!.replace(/,.*$/, '') : null,
    technical: [],
    class: category === null ? null : division,
    subsidiary,
    packingGroup: null,
    because,
  };
}
