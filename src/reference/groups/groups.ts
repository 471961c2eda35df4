import acids from '../../../hazard-data/groups/acids.json' with { type: 'json' };
import beverages from '../../../hazard-data/groups/beverages.json' with { type: 'json' };
import common from '../../../hazard-data/groups/common.json' with { type: 'json' };
import dusts from '../../../hazard-data/groups/dusts.json' with { type: 'json' };
import metals from '../../../hazard-data/groups/metals.json' with { type: 'json' };
import oils from '../../../hazard-data/groups/oils.json' with { type: 'json' };
import solvents from '../../../hazard-data/groups/solvents.json' with { type: 'json' };
import type { PhysicalForm } from '../../record/product-record.ts';

/** What an entry of a list is limited to. */
export type Condition =
  | 'mist'
  | 'dust'
  | 'respirable-dust'
  | 'acid-aerosol'
  | 'manufacture-only'
  | 'aqueous'
  | 'aqueous-ammonia';

/** An entry of a list that a group leads to. */
export interface GroupRow {
  readonly list: 'osha-pel' | 'carcinogens' | 'cercla' | 'epcra-313' | 'prop65';
  readonly name: string;
  readonly table?: string;
  readonly condition?: Condition;
  /** The entry is not for members of the group, although its number or name fits. */
  readonly setAside?: 'alcoholic-beverage' | 'compounds-only';
}

/** What belongs to a group: CAS numbers, and regular expressions on names in American spelling. */
export interface Members {
  readonly cas: readonly string[];
  readonly names: readonly string[];
  /** Names that are no members although one of `names` fits. */
  readonly not?: readonly string[];
  /** What may belong and is to be judged. */
  readonly possible?: { readonly cas: readonly string[]; readonly names: readonly string[] };
}

/** Substances that a list names together. */
export interface Group {
  readonly id: string;
  readonly title: string;
  readonly definition: string;
  /** Instrument, what was read, and from where the members are. */
  readonly source: string;
  readonly members: Members;
  readonly rows: readonly GroupRow[];
  /** CAS numbers that the list names by themselves, and that are no members. */
  readonly individually?: readonly string[];
  /** For products of these forms, the group holds what the list does not name otherwise. */
  readonly otherwise?: { readonly list: GroupRow['list']; readonly forms: readonly PhysicalForm[] };
}

/** Every group, in the order of the files. */
export const groups: readonly Group[] = [metals, solvents, oils, dusts, acids, common, beverages].flatMap(
  file => file.groups as readonly Group[],
);
