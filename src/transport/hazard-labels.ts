import { compare } from '../quantity/sum.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import type { LimitedQuantity, Outcome } from './answer.ts';
import type { HazardLabel, HazardLabels, LabelLeftOff } from './hazard-label.ts';
import type { TransportInput } from './input.ts';

/**
 * Labels that a package of an outcome bears: those of Column 6 of 49 CFR 172.101, then those of 172.402(a)(2) for
 * subsidiary hazards that the column does not name. Null where nothing is decided or regulated.
 */
export function hazardLabels(
  { answer, entry, class: primary, subsidiary }: Outcome,
  limits: Pick<LimitedQuantity, 'allowed' | 'cite'> | null,
  input: Pick<TransportInput, 'flashPoint' | 'pack' | 'form'>,
  { labels: law, criteria }: Pick<TransportData, 'labels' | 'criteria'>,
): HazardLabels | null {
  if (answer !== 'regulated' || !entry || primary === null) return null;
  const litres = input.form === 'solid' ? null : (input.pack?.millilitres ?? null);
  const bulk = litres !== null && litres / 1000 > criteria.nonBulk.litresAtMost;
  const base = { leftOff: [], toxicByCorrosion: null, unlessPlacarded: bulk ? law.exceptions.bulk : null };
  if (primary === 'Comb liq')
    return { ...base, status: 'none', labels: [], unlessPlacarded: null, cite: law.names.cite };
  if (!entry.labelled)
    return { ...base, status: 'none', labels: [], unlessPlacarded: null, cite: law.exceptions.noLabel };
  const inhalation = entry.specialProvisions.some(each => law.inhalation.specialProvisions.includes(each));
  const label = (name: string, hazard: HazardLabel['hazard'], paragraph: string): HazardLabel => {
    const row = rowOf(name, inhalation, law);
    const colors: Readonly<Record<string, { readonly color: string }>> = law.colors;
    return {
      class: name,
      name: row?.name ?? null,
      hazard,
      color: colors[name]?.color ?? null,
      cite: row ? `${paragraph}, ${row.design}` : paragraph,
    };
  };
  const leftOff = subsidiary.flatMap(name =>
    leftOffOf(name, { subsidiary, primary }, entry.subsidiary, input, law),
  );
  const others = subsidiary.filter(name => !leftOff.some(left => left.class === name));
  return {
    ...base,
    status: limits?.allowed === true ? 'excepted' : limits?.allowed === null ? 'open' : 'due',
    labels: [
      label(primary, 'primary', law.names.cite),
      ...others.map(name => label(name, 'subsidiary', law.subsidiary.cite)),
    ],
    leftOff,
    toxicByCorrosion: primary === '8' && others.includes('6.1') ? law.subsidiary.toxicByCorrosion.cite : null,
    cite: limits?.allowed === true ? `${law.exceptions.limitedQuantity}, ${limits.cite}` : law.names.cite,
  };
}

/** The row of 172.400(b) for a class; divisions of Class 1 without their compatibility group. */
function rowOf(name: string, inhalation: boolean, { names }: TransportData['labels']) {
  const division = name.replace(/^(1\.\d)[A-S]$/, '$1');
  const rows = names.rows.filter(row => row.class === division);
  return rows.find(({ when }) => (when === 'inhalation') === inhalation) ?? rows.find(({ when }) => !when);
}

function leftOffOf(
  name: string,
  { subsidiary, primary }: { readonly subsidiary: readonly string[]; readonly primary: string },
  byColumn: readonly string[],
  { flashPoint }: Pick<TransportInput, 'flashPoint'>,
  { subsidiary: law }: TransportData['labels'],
): LabelLeftOff[] {
  const { flammable, flammableSolidBeside: solid } = law;
  if (name === solid.class && [primary, ...subsidiary].includes(solid.beside))
    return [{ class: name, why: 'beside-4.2', cite: solid.cite }];
  if (byColumn.includes(name)) return [];
  if (!law.classes.includes(name)) return [{ class: name, why: 'no-row', cite: flammable.cite }];
  if (name !== '3') return [];
  // An open cup reads higher than the closed one that the limit means.
  const closed = flashPoint?.kind === 'temperature' && flashPoint.cup !== 'open' ? flashPoint.celsius : null;
  return closed !== null && compare(closed, flammable.celsiusAtLeast) >= 0
    ? [{ class: name, why: 'flash-point', cite: flammable.cite }]
    : [];
}
