/**
 * Kinds of points, the worst first: what could not be made, what may change a class, what label or transport lacks,
 * what nobody has searched for, duties, judgements that were taken, sections that are not mandatory, notes.
 */
export const pointGroups = [
  'blocked',
  'classification',
  'facts',
  'open',
  'duty',
  'judgement',
  'open-optional',
  'note',
] as const;

export type PointGroup = (typeof pointGroups)[number];

/** Parts of the reviewer's page beside the sections of the sheet. */
export type PointPart = 'labels' | 'readings' | 'duties';

/** What the reviewer's page says. */
export interface ReviewPageWords {
  /** Titles of the groups of points. */
  readonly groups: Readonly<Record<PointGroup, string>>;
  readonly states: Readonly<Record<string, string>>;
  /** Where the contents of an item are from. */
  readonly sources: Readonly<Record<string, string>>;
  /** Names of the parts of the page beside the sections. */
  readonly parts: Readonly<Record<PointPart, string>>;
  /** A section by its number, of a sheet by its file where there are several. */
  section(number: number, sheet: string | null): string;
  /** An item by its heading, and its sub-section where it is a part of one. */
  itemName(part: string | null, heading: string): string;
  /** What to do with a group of points; null where they say it themselves. */
  readonly intros: Readonly<Record<PointGroup, string | null>>;
  /** Items that nobody has searched for, and the key that answers them. @param key under `sds:`; null where there is none */
  openItem(items: readonly string[], key: string | null): string;
  /** Which key of the record answers an item. */
  answeredBy(key: string | null): string;
  /** A filled item: where it is from. @param key under `sds:` where the record gave it there */
  filledFrom(source: string, key: string | null): string;
  possibleMember(list: 'limit' | 'carcinogen', name: string, entry: string, group: string | null): string;
  /** A list of section 11 that is not sure as a whole. */
  listDoubt(list: string, doubt: string): string;
  /** The data sheet of a supplier: revision, date and fingerprint as far as they are known. */
  supplierSheet(sheet: SupplierSheet): string;
  /** A row of the tables of OSHA that was not compared with the text of the law. */
  notCompared(name: string, entry: string, table: string): string;
  notMade(file: string, reason: string): string;
  finding(message: string, hint: string | null): string;
  /** How many readings were taken. */
  readingsTaken(count: number): string;
  /** How a record takes another option of a reading; null where there is none. */
  otherReading(id: string, options: readonly string[]): string | null;
  /** Head of the points on a terminal. @param page name of the reviewer's page */
  terminalHead(count: number, page: string): string;
}

/** What is known of the data sheet of a raw material. */
export interface SupplierSheet {
  readonly supplier: string | null;
  readonly revision: string | null;
  readonly date: string | null;
  /** Path as seen from the record. */
  readonly file: string | null;
  /** SHA-256 of that file; null where it is not there. */
  readonly sha256: string | null;
}
