import type { CarcinogenListing } from '../exposure/carcinogen-listings.ts';
import type { Sought } from '../groups/members.ts';
import { readCells } from '../lists/cells.ts';
import { type Listed, type LookUp, searchIn } from '../lists/look-up.ts';
import { cerclaColumns, prop65Columns, toxicChemicalColumns } from './columns.ts';
import { type ProductKind, type RegulatoryFacts, regulatoryFacts, type Share } from './regulatory-facts.ts';

/** A CERCLA hazardous substance (40 CFR 302.4). */
export interface HazardousSubstance extends Listed {
  /** Reportable quantity, pounds. */
  readonly pounds: number;
  readonly notes: string | null;
  /** Whether the row was read from a text of the regulation. */
  readonly compared: boolean;
}

/** A toxic chemical or category of EPCRA section 313 (40 CFR 372.65). */
export interface ToxicChemical extends Listed {
  /** Code of a category, as `N230`. */
  readonly category: string | null;
  /** No de minimis concentration holds (40 CFR 372.28, 372.38(a)(2)). */
  readonly specialConcern: boolean;
  readonly notes: string | null;
  readonly basis: 'text' | 'programme' | 'memory';
}

/** A listing under Health and Safety Code 25249.8 (Proposition 65). */
export interface StateListing extends Listed {
  readonly toxicity: readonly ('cancer' | 'developmental' | 'female' | 'male')[];
  readonly mechanism: string;
  /** YYYY-MM-DD */
  readonly listedOn: string | null;
  /** Micrograms a day. */
  readonly level: string | null;
  readonly notes: string | null;
}

/** The lists of section 15, each searched by CAS number, name and group. */
export interface RegulatoryLists {
  cercla(sought: Sought): LookUp<HazardousSubstance>;
  toxicChemicals(sought: Sought): LookUp<ToxicChemical>;
  prop65(sought: Sought): LookUp<StateListing>;
}

export interface RegulatoryTable extends RegulatoryLists {
  /** What the lists say of a product; `carcinogens` searches the lists that 40 CFR 372.38(a)(1) names. */
  facts(
    shares: readonly Share[],
    product: ProductKind,
    carcinogens: (sought: Sought) => LookUp<CarcinogenListing>,
  ): RegulatoryFacts;
}

const given = (cell: string): string | null => (cell === '' ? null : cell);

/** Opens cercla.tsv, epcra-313.tsv and prop65.tsv; each is read when it is first asked. */
export function openRegulatory(
  cercla: Uint8Array,
  toxicChemicals: Uint8Array,
  prop65: Uint8Array,
): RegulatoryTable {
  const substances = once(() =>
    searchIn(
      'cercla',
      readCells(cerclaColumns, cercla).map(
        (cells): HazardousSubstance => ({
          cas: given(cells.cas),
          name: cells.name,
          pounds: Number(cells['rq-lb']),
          notes: given(cells.notes),
          compared: cells.basis === 'text',
        }),
      ),
    ),
  );
  const chemicals = once(() =>
    searchIn(
      'epcra-313',
      readCells(toxicChemicalColumns, toxicChemicals).map(
        (cells): ToxicChemical => ({
          cas: given(cells.cas),
          name: cells.name,
          category: given(cells.category),
          specialConcern: cells['special-concern'] !== '',
          notes: given(cells.notes),
          basis: cells.basis as ToxicChemical['basis'],
        }),
      ),
    ),
  );
  const listings = once(() =>
    searchIn(
      'prop65',
      readCells(prop65Columns, prop65)
        .map(
          (cells): StateListing => ({
            cas: given(cells.cas),
            name: cells.name,
            toxicity: cells.toxicity.split(';').filter(Boolean) as StateListing['toxicity'],
            mechanism: cells.mechanism,
            listedOn: given(cells['listed-on']),
            level: given(cells['level-ug-per-day']),
            notes: given(cells.notes),
          }),
        )
        // Dose levels of members of a group listing list nothing by themselves.
        .filter(({ toxicity }) => toxicity.length > 0),
    ),
  );
  const lists: RegulatoryLists = {
    cercla: sought => substances()(sought),
    toxicChemicals: sought => chemicals()(sought),
    prop65: sought => listings()(sought),
  };
  return {
    ...lists,
    facts: (shares, product, carcinogens) => regulatoryFacts(shares, product, lists, carcinogens),
  };
}

const once = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};
