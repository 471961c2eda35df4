import { compare } from '../quantity/sum.ts';
import type { PackingGroup, TableEntry } from '../reference/transport/table-entry.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import type { Outcome } from './answer.ts';
import { contributorsTo, natures } from './contributors.ts';
import { type Fact, fact } from './fact.ts';
import { type Hazard, namesOf } from './finding.ts';
import type { TransportInput } from './input.ts';
import { undecided } from './outcome.ts';
import type { Setting } from './setting.ts';

/** A generic entry for class, subsidiary hazards and packing group (49 CFR 172.101(c)(12)(ii)). */
export function generic(
  primary: Hazard,
  rest: readonly Hazard[],
  group: PackingGroup | null,
  because: readonly Fact[],
  { input, data }: Setting,
): Outcome {
  const subsidiary = namesOf(rest).sort();
  const narrowed = natures(input, primary.class, data);
  const form = input.form === 'solid' ? 'solid' : 'liquid';
  const fitting = data.generic.entries.flatMap(candidate => {
    if (candidate.class !== primary.class || candidate.form !== form) return [];
    if (candidate.nature && !narrowed.includes(candidate.nature)) return [];
    if (!candidate.subsidiary.every(name => subsidiary.includes(name))) return [];
    const entry = rowOf(candidate.un, group, data, candidate.name);
    return entry ? [entry] : [];
  });
  // The entry that names most of the hazards; of those, the narrowest, which stands first.
  const most = Math.max(...fitting.map(entry => entry.subsidiary.length));
  const entry = fitting.find(other => other.subsidiary.length === most);
  if (entry) {
    const unnamed = subsidiary.filter(name => !entry.subsidiary.includes(name));
    const added =
      unnamed.length > 0
        ? [fact('subsidiary-added', data.generic.added.cite, { un: entry.id, subsidiary: unnamed })]
        : [];
    const outcome = genericOutcome(entry, [primary, ...rest], [...because, ...added], input, data);
    return { ...outcome, subsidiary: [...entry.subsidiary, ...unnamed] };
  }
  return {
    ...undecided(
      ...because,
      fact('no-generic-entry', data.generic.cite, { class: primary.class, subsidiary, group }),
    ),
    class: primary.class,
    subsidiary,
    packingGroup: group,
  };
}

/** The row of an identification number in a packing group; by name where the number has several materials. */
export const rowOf = (
  un: string,
  group: PackingGroup | null,
  { table }: TransportData,
  name?: string,
): TableEntry | undefined =>
  table
    .byId(un)
    .find(entry => entry.packingGroup === group && (!name || entry.names.some(own => own.startsWith(name))));

/** A generic entry with the technical names it asks for. */
export function genericOutcome(
  entry: TableEntry,
  hazards: readonly Hazard[],
  because: readonly Fact[],
  input: TransportInput,
  data: TransportData,
): Outcome {
  const technical = entry.symbols.includes('G') ? technicalNames(input, namesOf(hazards)) : [];
  const unnamed = namesOf(hazards).filter(name => contributorsTo(input, name).length === 0);
  const name = entry.names[0]!.replace(/n\.o\.s$/, 'n.o.s.');
  return {
    answer: 'regulated',
    entry,
    name,
    technical,
    class: entry.hazardClass,
    subsidiary: entry.subsidiary,
    packingGroup: entry.packingGroup,
    because: [
      ...because,
      fact('generic-entry', data.generic.cite, { un: entry.id, name, technical }),
      ...(entry.symbols.includes('G') && unnamed.length > 0
        ? [fact('no-technical-name', '49 CFR 172.203(k)', { un: entry.id, classes: unnamed })]
        : []),
    ],
  };
}

/** At least two of the constituents that contribute most to the hazards (49 CFR 172.203(k)(1)). */
const technicalNames = (input: TransportInput, classes: readonly string[]): string[] =>
  contributorsTo(input, ...classes)
    .filter(({ high }) => compare(high, 0) > 0)
    .slice(0, 2)
    .map(({ name }) => name);
