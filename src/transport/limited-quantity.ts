import { readMeasure } from '../quantity/measure.ts';
import type { TableEntry } from '../reference/transport/table-entry.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import type { LimitedQuantity } from './answer.ts';
import { type Fact, fact } from './fact.ts';
import { packageKilograms } from './hazardous-substance.ts';
import type { TransportInput } from './input.ts';

interface Provision {
  readonly cite: string;
  readonly liquid?: string;
  readonly solid?: string;
}

/**
 * Limited quantities (49 CFR 173.150 to 173.155): whether the entry refers to the exception (Column 8A), the inner
 * limit of its packing group, and whether pack and case keep the limits. Gross mass is that of the contents and the
 * tare of the case; empty inner packagings are not known and not in it.
 */
export function limitedQuantity(
  entry: Pick<TableEntry, 'hazardClass' | 'packingGroup' | 'exceptions' | 'id'>,
  input: TransportInput,
  { limited }: TransportData,
): { readonly limits: LimitedQuantity; readonly because: readonly Fact[] } {
  const none = (cite: string, id: string): ReturnType<typeof limitedQuantity> => ({
    limits: { allowed: false, innerLimit: null, grossLimit: null, cite },
    because: [fact(id, cite, { group: entry.packingGroup, class: entry.hazardClass })],
  });
  const aerosol = input.form === 'aerosol';
  const name = entry.hazardClass === 'Comb liq' ? '3' : entry.hazardClass;
  const rules = limited.classes[name as keyof typeof limited.classes];
  if (!aerosol && !rules) return none('49 CFR 172.101, Column 8A', 'no-limited-quantity');
  const section = aerosol ? limited.aerosols.section : rules!.section;
  const groups: Readonly<Record<string, Provision>> = rules?.groups ?? {};
  const provision: Provision | undefined = aerosol
    ? { cite: limited.aerosols.cite, liquid: limited.aerosols.inner }
    : groups[entry.packingGroup ?? ''];
  if (!entry.exceptions.includes(section)) return none('49 CFR 172.101, Column 8A', 'no-limited-quantity');
  const inner = provision?.[input.form === 'solid' ? 'solid' : 'liquid'];
  if (!provision || !inner) return none(aerosol ? limited.aerosols.cite : rules!.cite, 'no-limited-quantity');
  const { pack } = input;
  const limits = { innerLimit: inner, grossLimit: limited.gross.written, cite: provision.cite };
  if (!pack)
    return { limits: { ...limits, allowed: null }, because: [fact('no-pack', provision.cite, limits)] };
  const fits = fitsInner(inner, pack);
  const net = packageKilograms(input, pack);
  const gross = net === null ? null : net + (pack.tareKilograms ?? 0);
  const light = gross === null ? null : gross <= limited.gross.kilograms;
  const because = [
    fact(fits === false ? 'inner-over' : fits === null ? 'inner-unknown' : 'inner-within', provision.cite, {
      contents: pack.written,
      limit: inner,
    }),
    fact(light === false ? 'gross-over' : light === null ? 'gross-unknown' : 'gross-within', provision.cite, {
      kilograms: gross,
      limit: limited.gross.written,
      count: pack.count,
    }),
  ];
  const allowed = fits === false || light === false ? false : fits === null || light === null ? null : true;
  const mark = fact('limited-quantity-mark', limited.mark.cite, {
    side: limited.mark.sideMillimetres,
    reduced: limited.mark.reducedMillimetres,
  });
  return { limits: { ...limits, allowed }, because: allowed ? [...because, mark] : because };
}

function fitsInner(
  limit: string,
  { millilitres, grams }: NonNullable<TransportInput['pack']>,
): boolean | null {
  const volume = readMeasure(limit, 'volume');
  if (volume.ok) return millilitres === null ? null : millilitres <= volume.value.base.value;
  const mass = readMeasure(limit, 'mass');
  return mass.ok && grams !== null ? grams <= mass.value.base.value : null;
}
