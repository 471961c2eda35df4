import type { Condition } from '../../reference/groups/groups.ts';
import type { Found } from '../../reference/lists/look-up.ts';
import type { StateListing } from '../../reference/regulatory/open-regulatory.ts';
import type { NotHeld } from '../../reference/regulatory/programs.ts';
import type {
  RegulatoryFacts,
  Reportable,
  Share,
  Toxic,
} from '../../reference/regulatory/regulatory-facts.ts';
import { conditionText, foundText } from './list-search.ts';

/** A list of section 15 as it is named in a sentence. */
export interface ListEdition {
  readonly title: string;
  readonly version: string;
}

/** The lists that were searched. */
export interface ListEditions {
  readonly cercla: ListEdition;
  readonly toxicChemicals: ListEdition;
  readonly prop65: ListEdition;
}

export interface TitledList {
  readonly title: string;
  readonly list: readonly string[];
}

const number = (value: number): string => value.toLocaleString('en-US', { maximumFractionDigits: 0 });
const percent = (value: number): string =>
  Number(value.toPrecision(3)).toLocaleString('en-US', { maximumFractionDigits: 10, useGrouping: false });
const brackets = (...parts: readonly (string | null)[]): string => {
  const told = parts.filter(part => part);
  return told.length > 0 ? ` (${told.join('; ')})` : '';
};
const identity = ({ name, cas }: Share): string => (cas === null ? name : `${name}, CAS ${cas}`);
const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();
const listedAs = (share: Share, name: string): string | null =>
  same(share.name, name) ? null : `listed as: ${name}`;

const NOT_HELD: Readonly<Record<NotHeld, string>> = {
  'epcra-302':
    'EPCRA section 302, extremely hazardous substances (40 CFR 355, Appendices A and B): no copy of the list is held.',
  'caa-112r':
    'Clean Air Act section 112(r), accidental release prevention (40 CFR 68.130): no copy of the list is held.',
  'tsca-inventory':
    'TSCA Inventory (40 CFR part 710): the maker confirms that every ingredient is on it or exempt; no copy of the inventory is held.',
  'other-states': 'Lists of other states.',
  'rules-of-use': 'Rules for the use of the product, for example EPA pesticide or CPSC consumer rules.',
};

const TOXICITY: Readonly<Record<StateListing['toxicity'][number], string>> = {
  cancer: 'cancer',
  developmental: 'developmental toxicity',
  female: 'female reproductive toxicity',
  male: 'male reproductive toxicity',
};

function reportableText({ share, found, productPounds }: Reportable): string {
  const { row } = found;
  const reach =
    productPounds === null
      ? ''
      : `; about ${number(productPounds)} lb of this product hold it at ${percent(share.percent)} %`;
  const more = brackets(
    listedAs(share, row.name),
    foundText(found),
    row.notes,
    row.compared ? null : 'from memory, to be confirmed',
  );
  return `${identity(share)}: reportable quantity ${number(row.pounds)} lb${reach}${more}`;
}

const BASES = {
  programme: 'from data of the agency, the text was not read; to be confirmed',
  memory: 'its definition is from memory; to be confirmed',
} as const;

/** Conditions that the notes of the source tell in words of their own. */
const TOLD: readonly Condition[] = ['acid-aerosol', 'aqueous-ammonia', 'manufacture-only'];

function toxicText({ row, members, condition, carcinogen, deMinimis }: Toxic): string {
  const names = members.map(({ share }) => `${identity(share)}, ${percent(share.percent)} %`).join('; ');
  const what = row.category ? `${row.name}, category ${row.category}: ${names}` : names;
  const share = condition === 'aqueous-ammonia' ? `${percent(deMinimis.counted)} % counted: ` : '';
  const standing =
    deMinimis.limit === null
      ? 'chemical of special concern: no de minimis concentration (40 CFR 372.28)'
      : `${share}${deMinimis.below ? 'below' : 'at or above'} the de minimis concentration of ${percent(deMinimis.limit)} %${
          carcinogen ? ' for a carcinogen' : ''
        }`;
  const possible = members.some(({ found }) => found.membership === 'possible');
  const more = brackets(
    !row.category && members.length === 1 ? listedAs(members[0]!.share, row.name) : null,
    condition && !(row.notes && !row.category && TOLD.includes(condition)) ? conditionText(condition) : null,
    row.category ? null : row.notes,
    possible ? 'membership is not certain' : null,
    row.basis === 'text' ? null : BASES[row.basis],
  );
  return `${what}: ${standing}${more}`;
}

function stateText(share: Share, found: Found<StateListing>): string {
  const { row } = found;
  const since = row.listedOn === null ? '' : `, since ${row.listedOn}`;
  const effects = row.toxicity.map(effect => TOXICITY[effect]).join(', ');
  return `${identity(share)}: ${effects}${since}${brackets(listedAs(share, row.name), foundText(found), row.notes)}`;
}

/** What was searched, for how many, and that nothing was found. */
const searched = (count: number, { title, version }: ListEdition, none: boolean): string =>
  `${none ? 'None found. ' : ''}Looked up by CAS number, name and group: ${count} ${
    count === 1 ? 'ingredient' : 'ingredients'
  } in ${title}, ${version}.`;

/** Section 15 of the sheet: what each programme says of the product, and what was sought where nothing was found. */
export function regulatoryLists(facts: RegulatoryFacts, editions: ListEditions): readonly TitledList[] {
  const count = facts.sought.length;
  const of = (title: string, lines: readonly string[], edition: ListEdition): TitledList => ({
    title,
    list: [...lines, searched(count, edition, lines.length === 0)],
  });
  const { health, physical } = facts.hazardTypes;
  const types = [...health, ...physical];
  const notice = facts.supplierNotice
    ? [
        'This product contains a toxic chemical or chemicals subject to the reporting requirements of section 313 of Title III of the Superfund Amendments and Reauthorization Act of 1986 and 40 CFR part 372. Where it goes to facilities that report, this notice stays with the sheet (40 CFR 372.45); the maker confirms that it is due.',
      ]
    : [];
  return [
    of(
      'CERCLA section 103 and EPCRA section 304, release notification',
      facts.reportable.map(reportableText),
      editions.cercla,
    ),
    {
      title: 'EPCRA sections 311 and 312, hazard types (40 CFR 370.66)',
      list: [
        health.length > 0 ? `Health: ${health.join('; ')}` : 'Health: none from the classification',
        physical.length > 0 ? `Physical: ${physical.join('; ')}` : 'Physical: none from the classification',
        ...(types.length > 0
          ? [
              `Reports are due from ${number(facts.inventoryPounds)} lb at a facility, less for extremely hazardous substances (40 CFR 370.10).`,
            ]
          : []),
      ],
    },
    of(
      'EPCRA section 313, toxic chemicals',
      [...notice, ...facts.toxic.map(toxicText)],
      editions.toxicChemicals,
    ),
    of(
      'California Proposition 65',
      facts.state.map(({ share, found }) => stateText(share, found)),
      editions.prop65,
    ),
    { title: 'Not yet looked up', list: facts.notHeld.map(id => NOT_HELD[id]) },
  ];
}
