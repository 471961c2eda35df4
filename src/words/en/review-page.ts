import type { ReviewPageWords } from '../review-page-words.ts';

/** A key of the record as it is written: `sds: ppe: hands`. */
const keyOf = (key: string): string => `sds: ${key.split('.').join(': ')}`;

const sources: Readonly<Record<string, string>> = {
  'product record': 'from the record',
  calculation: 'from the calculation',
  'label elements': 'from the label elements',
  'hazard classes': 'from the hazard classes',
  'physical form': 'from the physical form',
  'reference tables': 'from tables that this program holds',
  law: 'in the words of the law',
  draft: 'in the words of the draft',
  none: 'from nothing',
};

const searched =
  'Give each key in the record, or `{searched: by whom and where}` under it where nothing was found.';

/** English of the reviewer's page. */
export const reviewPage: ReviewPageWords = {
  groups: {
    blocked: 'Not made',
    classification: 'May change the classification',
    facts: 'Facts that label, sheet or transport lacks',
    open: 'Not yet searched, mandatory sections',
    duty: 'Duties around the label, due or open',
    judgement: 'Judgements to confirm',
    'open-optional': 'Not yet searched, sections that are not mandatory',
    note: 'Notes',
  },
  intros: {
    blocked: null,
    classification: null,
    facts: null,
    open: searched,
    duty: null,
    judgement: null,
    'open-optional': searched,
    note: null,
  },
  states: { filled: 'filled', searched: 'searched, nothing found', open: 'open' },
  sources,
  parts: {
    labels: 'labels',
    readings: 'readings of the law',
    duties: 'duties around the label',
  },
  section: (number, sheet) => `section ${number}${sheet ? ` of ${sheet}` : ''}`,
  itemName: (part, heading) => (part === null ? heading : `${part}: ${heading}`),
  openItem: (items, key) =>
    key === null
      ? `${items.join('; ')}: ${reviewPage.answeredBy(key)}`
      : `${items.join('; ')}: \`${keyOf(key)}\``,
  answeredBy: key =>
    key === null
      ? 'no key of its own; formula, properties, evidence and tables fill it'
      : `give \`${keyOf(key)}\`, or \`{searched: by whom and where}\` where nothing was found`,
  filledFrom: (source, key) =>
    key === null ? (sources[source] ?? source) : `${sources[source] ?? source}, \`${keyOf(key)}\``,
  possibleMember: (list, name, entry, group) =>
    `${name}: whether the ${list === 'limit' ? 'exposure limit' : 'listing as a carcinogen'} "${entry}" is of it is to be judged${group === null ? '' : ` (possibly a member of the group: ${group})`}`,
  listDoubt: (list, doubt) => `section 11, list "${list}": ${doubt}`,
  supplierSheet: ({ supplier, revision, date, file, sha256 }) =>
    [
      supplier ?? 'supplier not named',
      revision === null ? 'revision not given' : `revision ${revision}`,
      date ?? 'date not given',
      file === null
        ? 'no file kept'
        : `${file} (${sha256 === null ? 'not there' : `SHA-256 ${sha256.slice(0, 16)}…`})`,
    ].join(', '),
  notCompared: (name, entry, table) =>
    `${name}: the row "${entry}" (${table}) was not compared with the text of the regulation`,
  notMade: (file, reason) => `${file} could not be made: ${reason}`,
  finding: (message, hint) => (hint === null ? message : `${message}; ${hint}`),
  readingsTaken: count =>
    count === 1
      ? 'one reading of the law was taken where the text leaves a choice'
      : `${count} readings of the law were taken where the text leaves a choice`,
  otherReading: (id, options) =>
    options.length === 0
      ? null
      : `to take another: choices: [{reading: ${id}, take: ${options.join(' or ')}, reason: …}]`,
  terminalHead: (count, page) =>
    `To look at before anything leaves, worst first (${count === 1 ? 'one point' : `${count} points`}); each with its place and reasons in ${page}`,
};
