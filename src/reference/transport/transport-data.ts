import aircraft from '../../../hazard-data/us-dot/aircraft.json' with { type: 'json' };
import criteria from '../../../hazard-data/us-dot/criteria.json' with { type: 'json' };
import generic from '../../../hazard-data/us-dot/generic-entries.json' with { type: 'json' };
import labels from '../../../hazard-data/us-dot/hazard-labels.json' with { type: 'json' };
import limited from '../../../hazard-data/us-dot/limited-quantities.json' with { type: 'json' };
import precedence from '../../../hazard-data/us-dot/precedence.json' with { type: 'json' };
import substances from '../../../hazard-data/us-dot/substances.json' with { type: 'json' };
import { type HazardousMaterialsTable, openHazardousMaterialsTable } from './hazardous-materials-table.ts';

/** An entry of the table that names a substance. */
export interface NamedEntry {
  readonly un: string;
  readonly form?: 'liquid' | 'solid';
  /** Beginning of the description, where the number has entries of other materials. */
  readonly name?: string;
  /** What the range of the entry counts, where that is not the substance itself. */
  readonly counts?: string;
}

/** A substance with the entries of the table that name it. */
export interface NamedSubstance {
  readonly name: string;
  readonly cas: readonly string[];
  readonly entries: readonly NamedEntry[];
  readonly organic: boolean;
  readonly nature?: 'acid' | 'base';
  readonly group?: string;
  /** Its name in Appendix B of 49 CFR 172.101. */
  readonly marine?: string;
  /** What else Appendix B asks for and the record does not say. */
  readonly marineIf?: string;
  /** The record may count another form of it: percent times this, at the least. */
  readonly atLeastFactor?: number;
}

/** A generic entry: class, subsidiary hazards, form and what narrows it. */
export interface GenericEntry {
  readonly class: string;
  readonly subsidiary: readonly string[];
  readonly form: string;
  readonly nature?: string;
  readonly un: string;
  readonly name?: string;
}

/** What 49 CFR parts 171 to 173 say, as far as an answer needs it. */
export interface TransportData {
  readonly table: HazardousMaterialsTable;
  readonly criteria: typeof criteria;
  readonly limited: typeof limited;
  readonly aircraft: typeof aircraft;
  readonly labels: typeof labels;
  readonly precedence: {
    readonly cite: string;
    readonly above: { readonly cite: string; readonly hazards: readonly string[] };
    readonly rows: Readonly<Record<string, Readonly<Record<string, string>>>>;
  };
  readonly generic: {
    readonly cite: string;
    /** Subsidiary hazards that an entry does not show. */
    readonly added: { readonly cite: string };
    readonly entries: readonly GenericEntry[];
    readonly domestic: readonly GenericEntry[];
  };
  substance(cas: string): NamedSubstance | null;
  /** Whether a name stands in Appendix B, and whether as a severe marine pollutant. */
  marinePollutant(name: string): { readonly name: string; readonly severe: boolean } | null;
  /** Reportable quantity in pounds (Appendix A), by CAS number or name. */
  reportablePounds(cas: string | null, name: string): number | null;
}

const rowsOf = (bytes: Buffer): string[][] =>
  bytes
    .toString('utf8')
    .trimEnd()
    .split('\n')
    .slice(1)
    .map(line => line.split('\t'));

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[\s.]+/g, ' ')
    .trim();

/**
 * Opens the data of hazard-data/us-dot.
 * @param read gives the bytes of a file of that folder
 */
export function openTransportData(read: (file: string) => Buffer): TransportData {
  const byCas = new Map<string, NamedSubstance>();
  for (const substance of substances.substances as readonly NamedSubstance[])
    for (const cas of substance.cas) byCas.set(cas, substance);
  const marine = new Map(
    rowsOf(read('marine-pollutants.tsv')).map(([severe, name]) => [
      plain(name!),
      { name: name!, severe: severe === 'PP' },
    ]),
  );
  const quantities = new Map<string, number>();
  for (const [cas, name, pounds] of rowsOf(read('reportable-quantities.tsv'))) {
    if (cas) quantities.set(cas, Number(pounds));
    quantities.set(plain(name!), Number(pounds));
  }
  return {
    table: openHazardousMaterialsTable(read('hazardous-materials-table.tsv')),
    criteria,
    limited,
    aircraft,
    labels,
    precedence: precedence as TransportData['precedence'],
    generic: generic as TransportData['generic'],
    substance: cas => byCas.get(cas) ?? null,
    marinePollutant: name => marine.get(plain(name)) ?? null,
    reportablePounds: (cas, name) =>
      (cas === null ? undefined : quantities.get(cas)) ?? quantities.get(plain(name)) ?? null,
  };
}
