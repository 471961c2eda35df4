import type { PhysicalForm } from '../../record/product-record.ts';
import { spelled } from '../lists/names.ts';
import type { Group } from './groups.ts';

/** A constituent to be looked for. */
export interface Sought {
  readonly name: string;
  readonly cas: string | null;
  /** Groups to which the record or the caller assigns it, beside those found. */
  readonly groups?: readonly string[];
  /** Form of the product; null where nothing depends on it. */
  readonly form?: PhysicalForm | null;
}

/** `possible` where whether it belongs is to be judged. */
export type Membership = 'member' | 'possible';

interface Patterns {
  readonly names: readonly RegExp[];
  readonly not: readonly RegExp[];
  readonly possible: readonly RegExp[];
}

/** A name without descriptions in square brackets and without what it excepts. */
const named = (name: string): string =>
  spelled(name)
    .replace(/\[[^\]]*\]/gu, ' ')
    .replace(/\bwith the exception of .*$/u, '');

const compiled = new WeakMap<Group, Patterns>();

const patternsOf = (group: Group): Patterns => {
  const known = compiled.get(group);
  if (known) return known;
  const { names, not, possible } = group.members;
  const all = (texts: readonly string[] = []) => texts.map(text => new RegExp(text, 'u'));
  const patterns = { names: all(names), not: all(not), possible: all(possible?.names) };
  compiled.set(group, patterns);
  return patterns;
};

/** Whether a constituent belongs to a group, by assignment, by CAS number or by name; null where it does not. */
export function membershipOf(group: Group, { name, cas, groups }: Sought): Membership | null {
  const { members, individually } = group;
  if (groups?.includes(group.id)) return 'member';
  if (cas !== null) {
    if (individually?.includes(cas)) return null;
    if (members.cas.includes(cas)) return 'member';
    if (members.possible?.cas.includes(cas)) return 'possible';
  }
  const text = named(name);
  const patterns = patternsOf(group);
  if (patterns.not.some(pattern => pattern.test(text))) return null;
  if (patterns.names.some(pattern => pattern.test(text))) return 'member';
  return patterns.possible.some(pattern => pattern.test(text)) ? 'possible' : null;
}
