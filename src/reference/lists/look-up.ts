import { type Condition, type Group, groups } from '../groups/groups.ts';
import { type Membership, membershipOf, type Sought } from '../groups/members.ts';
import { entryKeys, soughtKeys } from './names.ts';

/** The compiled lists that can be searched. */
export type ListId = 'osha-pel' | 'carcinogens' | 'cercla' | 'epcra-313' | 'prop65';

/** What every row of a list has. */
export interface Listed {
  /** Null where the list prints none. */
  readonly cas: string | null;
  readonly name: string;
  /** Table of the list, where it has several. */
  readonly table?: string;
}

/** An entry that a constituent leads to, and how. */
export interface Found<R extends Listed> {
  readonly row: R;
  /** `otherwise`: nothing else of the list is certain, and the group holds what it does not name. */
  readonly by: 'cas' | 'name' | 'group' | 'otherwise';
  /** The group that leads to the entry; null where number or name does. */
  readonly group: Pick<Group, 'id' | 'title'> | null;
  /** `possible` where whether the constituent belongs to the group is to be judged. */
  readonly membership: Membership;
  /** What the entry is limited to, for example airborne mist; null where to nothing. */
  readonly condition: Condition | null;
}

/** An entry that number or name would lead to and that does not concern the product, with the reason. */
export interface SetAside<R extends Listed> {
  readonly row: R;
  readonly reason: 'alcoholic-beverage' | 'compounds-only';
}

/** What a list says of a constituent; nothing found is an answer only beside what was sought. */
export interface LookUp<R extends Listed> {
  readonly list: ListId;
  readonly found: readonly Found<R>[];
  readonly setAside: readonly SetAside<R>[];
  readonly sought: {
    readonly cas: string | null;
    readonly name: string;
    /** Groups to which the constituent belongs or may belong. */
    readonly groups: readonly string[];
  };
}

/**
 * A search in one list by CAS number, by name and by group. "The CAS number is for information only. Enforcement is
 * based on the substance name" (29 CFR 1910.1000 Table Z-1, note (c)); 40 CFR 302.4, Note I, says the same.
 */
export function searchIn<R extends Listed>(list: ListId, rows: readonly R[]): (sought: Sought) => LookUp<R> {
  const byCas = indexed(rows, ({ cas }) => (cas === null ? [] : [cas]));
  const byName = indexed(rows, ({ name }) => entryKeys(name));
  return sought => {
    const found = new Map<string, Found<R>>();
    const setAside = new Map<string, SetAside<R>>();
    const add = (row: R, more: Omit<Found<R>, 'row'>) => {
      const key = entryOf(row);
      if (!found.has(key)) found.set(key, { row, ...more });
    };
    const plain = { group: null, membership: 'member', condition: null } as const;
    for (const row of (sought.cas !== null && byCas.get(sought.cas)) || []) add(row, { by: 'cas', ...plain });
    for (const key of soughtKeys(sought.name))
      for (const row of byName.get(key) ?? []) add(row, { by: 'name', ...plain });
    const memberships = groups.flatMap(group => {
      const membership = membershipOf(group, sought);
      return membership === null ? [] : [{ group, membership }];
    });
    for (const { group, membership } of memberships)
      for (const link of group.rows.filter(row => row.list === list))
        for (const row of rows.filter(
          row => row.name === link.name && (link.table === undefined || row.table === link.table),
        )) {
          const entry = entryOf(row);
          if (link.setAside) setAside.set(entry, { row, reason: link.setAside });
          const { id, title } = group;
          const condition = link.condition ?? null;
          const before = found.get(entry);
          if (before === undefined) add(row, { by: 'group', group: { id, title }, membership, condition });
          else if (before.condition === null && condition !== null)
            found.set(entry, { ...before, condition });
          else if (before.membership === 'possible' && membership === 'member')
            found.set(entry, { ...before, group: { id, title }, membership });
        }
    for (const entry of setAside.keys()) found.delete(entry);
    if ([...found.values()].every(({ membership }) => membership === 'possible'))
      for (const { id, title, rows: links } of otherwise(list, sought))
        for (const row of rows.filter(row =>
          links.some(link => link.list === list && link.name === row.name && link.table === row.table),
        ))
          add(row, { by: 'otherwise', group: { id, title }, membership: 'member', condition: null });
    return {
      list,
      found: [...found.values()],
      setAside: [...setAside.values()].filter(({ row }) => concerns(row, sought)),
      sought: {
        cas: sought.cas,
        name: sought.name,
        groups: memberships.map(({ group }) => group.id),
      },
    };
  };
}

/** An entry that prints several numbers is one entry. */
const entryOf = (row: Listed): string => JSON.stringify({ ...row, cas: null });

/** Groups for what a list does not name otherwise, such as dusts not otherwise regulated. */
const otherwise = (list: ListId, { form }: Sought): readonly Group[] =>
  groups.filter(
    group => group.otherwise?.list === list && form != null && group.otherwise.forms.includes(form),
  );

/** Whether an entry set aside has the number or the name of what is sought, so that a reader could expect it. */
const concerns = ({ cas, name }: Listed, sought: Sought): boolean =>
  (cas !== null && cas === sought.cas) || soughtKeys(sought.name).some(key => entryKeys(name).includes(key));

function indexed<R>(
  rows: readonly R[],
  keysOf: (row: R) => readonly string[],
): ReadonlyMap<string, readonly R[]> {
  const index = new Map<string, R[]>();
  for (const row of rows)
    for (const key of keysOf(row)) {
      const others = index.get(key);
      if (others) others.push(row);
      else index.set(key, [row]);
    }
  return index;
}
