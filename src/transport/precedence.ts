import type { PackingGroup } from '../reference/transport/table-entry.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import type { Hazard } from './finding.ts';

const groups: readonly PackingGroup[] = ['I', 'II', 'III'];

/** The most stringent packing group of any hazard (49 CFR 173.2a(b), Note 1). */
export function mostStringent(hazards: readonly Hazard[]): PackingGroup | null {
  return groups.find(group => hazards.some(hazard => hazard.group === group)) ?? null;
}

/** Names under which the table of 173.2a(b) may list a hazard, the narrowest first. */
function labels({ class: name, group, route }: Hazard, form: 'liquid' | 'solid'): string[] {
  if (name === '8') return [`8 ${group} ${form}`];
  if (name === '6.1') {
    // A row for inhalation is printed for packing group II alone; group I by mist is taken as the dermal one.
    const routes = route === undefined || route === 'inhalation' ? ['inhalation', 'dermal'] : [route];
    return [...routes.map(part => `6.1 ${group} ${part}`), `6.1 ${group}`];
  }
  return [`${name} ${group}`, name];
}

/**
 * Which of two hazards is the primary one, by the table of 49 CFR 173.2a(b); null where the table has no cell for
 * them or calls the combination impossible.
 */
export function prevails(
  a: Hazard,
  b: Hazard,
  form: 'liquid' | 'solid',
  { precedence }: Pick<TransportData, 'precedence'>,
): string | null {
  for (const each of [a, b])
    if (precedence.above.hazards.includes(`${each.class} ${each.group}`)) return each.class;
  const byNote = corrosiveAndToxicMist(a, b) ?? corrosiveAndToxicMist(b, a);
  if (byNote) return byNote;
  for (const [row, column] of [
    [a, b],
    [b, a],
  ] as const)
    for (const rowName of labels(row, form))
      for (const columnName of labels(column, form)) {
        const cell = precedence.rows[rowName]?.[columnName];
        // 3*: Division 6.1 for pesticides alone.
        if (cell) return cell === 'x' ? null : cell.replace('*', '');
      }
  return null;
}

/** 173.2a(b), Note 2: corrosive, and of packing group I as a dust or mist. */
function corrosiveAndToxicMist(corrosive: Hazard, toxic: Hazard): string | null {
  if (corrosive.class !== '8' || toxic.class !== '6.1') return null;
  if (toxic.route !== 'inhalation' || toxic.group !== 'I' || toxic.otherRoutes === undefined) return null;
  return toxic.otherRoutes === 'I' || toxic.otherRoutes === 'II' ? toxic.class : corrosive.class;
}

/** Hazards in order: the primary one first, subsidiary ones after it by number of the class. */
export function orderHazards(
  hazards: readonly Hazard[],
  form: 'liquid' | 'solid',
  data: Pick<TransportData, 'precedence'>,
): readonly Hazard[] | null {
  const primary = hazards.find(hazard =>
    hazards.every(other => other === hazard || prevails(hazard, other, form, data) === hazard.class),
  );
  if (!primary) return null;
  const rest = hazards.filter(hazard => hazard !== primary);
  return [primary, ...rest.sort((a, b) => a.class.localeCompare(b.class))];
}
