import type { Duty, DutyState, ListingItem } from '../../duties/duty.ts';
import type { VocFinding, VocTerm } from '../../duties/voc.ts';
import { plain } from '../../quantity/print.ts';
import type { StateListing } from '../../reference/regulatory/open-regulatory.ts';
import { childResistantTexts, list } from './child-resistant.ts';

const { show } = plain;
const percent = (value: number): string => `${show(Number(value.toPrecision(4)))} %`;
/** How a duty stands, in a word or two. */
export const dutyStates: Readonly<Record<DutyState, string>> = {
  due: 'due',
  met: 'shown',
  open: 'open',
  free: 'not asked',
};

const termsText = (terms: readonly VocTerm[]): string =>
  list(terms.map(({ name, percent: share }) => `${name} ${percent(share)}`));

function vocText(finding: VocFinding, tableSource: string): string {
  const { outcome, category, sure, atMost, counted, unknown, exempt, low, fragrance, diluted } = finding;
  const content =
    percent(sure) === percent(atMost)
      ? `VOC ${percent(sure)} by weight`
      : `VOC ${percent(sure)} to ${percent(atMost)} by weight`;
  const from = [
    ...(counted.length > 0 ? [`counts: ${termsText(counted)}`] : []),
    ...(fragrance.length > 0 ? [`fragrance: ${termsText(fragrance)}`] : []),
    ...(exempt.length > 0 ? [`exempt: ${termsText(exempt)}`] : []),
    ...(low.length > 0 ? [`low vapor pressure: ${termsText(low)}`] : []),
    ...(unknown.length > 0 ? [`not known whether it counts: ${termsText(unknown)}`] : []),
  ];
  const solution = diluted
    ? `; in the use solution ${diluted.written} ${percent(diluted.atMost)} at most`
    : '';
  const against = category
    ? `limit ${percent(category.percent)} for ${category.title} (${tableSource})`
    : null;
  const verdict = {
    within: `within the ${against}`,
    above: `above the ${against}`,
    open: `the ${against} is met or not by what is not known; say under \`voc: counted:\` how it counts`,
    'no-category': 'name the product category under `voc: category:`, or none where none fits',
    'no-limit': 'the record says that no product category fits',
  }[outcome];
  return `${content}${solution}: ${[verdict, ...from].join('; ')}`;
}

const toxicities: Readonly<Record<StateListing['toxicity'][number], string>> = {
  cancer: 'cancer',
  developmental: 'developmental toxicity',
  female: 'female reproductive toxicity',
  male: 'male reproductive toxicity',
};

const items: Readonly<Record<ListingItem, string>> = {
  sheet: 'safety data sheet',
  'sheet-date': 'date of the data sheet (`revised:`)',
  transport: 'transport description with UN number',
  'flash-point': 'flash point',
  'net-contents': 'net contents',
  gtin: 'GTIN',
};

/** A duty in a line. */
export function dutyText(duty: Duty): string {
  switch (duty.id) {
    case 'child-resistant':
      return childResistantTexts([duty])[0]!.text;
    case 'child-resistant-unknown': {
      const has = duty.packaging === true ? '; the record says that the pack has it' : '';
      return `${duty.pack}: child-resistant packaging: what ${list(duty.names)} ${duty.names.length === 1 ? 'is' : 'are'} may bring ${duty.rules} ${duty.rules === 1 ? 'rule' : 'rules'} into play; ask the supplier${has}`;
    }
    case 'child-resistant-none':
      return duty.household === false
        ? 'child-resistant packaging: the record sells to no household'
        : 'child-resistant packaging: nothing in the composition reaches a limit that was looked at';
    case 'voc':
      return vocText(duty.finding, duty.tableSource);
    case 'voc-none':
      return 'VOC content: the limits are for products of households and institutions, and the record sells to no consumer';
    case 'state-warning': {
      const { row, by, group } = duty.found;
      const how = by === 'cas' || by === 'name' ? '' : `, by the group ${group?.title ?? row.name}`;
      const level = row.level === null ? '' : `; level ${row.level} micrograms a day`;
      return `California Proposition 65: ${duty.name} ${percent(duty.percent)} is listed (${row.name}: ${list(row.toxicity.map(each => toxicities[each]))})${how}${level}; a warning is due unless exposure stays below the level`;
    }
    case 'state-warning-none': {
      const sought =
        duty.found > 0
          ? 'California Proposition 65: the others were not found'
          : `California Proposition 65: none of ${duty.sought} constituents found by number, name or group`;
      return duty.unknown.length === 0
        ? sought
        : `${sought}; ${list(duty.unknown)} could be sought by name alone: ask the supplier`;
    }
    case 'listing': {
      const of = duty.pack === null ? '' : `${duty.pack}: `;
      return duty.value === null
        ? `marketplace packet: ${of}${items[duty.item]} is missing`
        : `marketplace packet: ${of}${items[duty.item]}: ${duty.value}`;
    }
  }
}

const line = (state: DutyState, text: string, cite: string | null): string =>
  `${dutyStates[state]}: ${text}${cite === null ? '' : ` [${cite}]`}`;

/** Duties with state and paragraph, for lists; the rules on child-resistant packaging that stand alike are one line. */
export function dutyLines(duties: readonly Duty[]): readonly string[] {
  const packaging = duties.filter(duty => duty.id === 'child-resistant');
  const texts = childResistantTexts(packaging);
  return duties.flatMap(duty => {
    if (duty.id !== 'child-resistant') return [line(duty.state, dutyText(duty), duty.cite)];
    const own = texts.find(({ of }) => of[0] === duty);
    return own ? [line(duty.state, own.text, own.cite)] : [];
  });
}

/** Over a list of duties that ask for something. @param others that are shown or not asked */
export const dutiesHead = (others: number): string =>
  `duties around the label (${others} more are shown or not asked; packet lists them):`;
