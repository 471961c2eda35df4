import data from '../../../hazard-data/us-epa/voc.json' with { type: 'json' };
import table from '../../../hazard-data/us-epa/voc-categories.json' with { type: 'json' };

/** How a substance counts for volatile organic compounds. */
export type VocKind = 'voc' | 'low' | 'exempt' | 'none';

/** A product category with its limit in percent by weight (40 CFR 59 Subpart C, Table 1). */
export interface VocCategory {
  readonly id: string;
  readonly title: string;
  readonly percent: number;
  /** `aerosol`, or other than aerosol; any where absent. */
  readonly form?: 'aerosol' | 'other';
}

/** Limits for volatile organic compounds in consumer products, with what counts. */
export interface VocData {
  readonly categories: readonly VocCategory[];
  readonly cites: Readonly<
    Record<'rules' | 'table' | 'fragrance' | 'lowVapor' | 'dilution' | 'exempt', string>
  >;
  /** How sure the figures of the table are. */
  readonly tableSource: string;
  /** Percent of fragrance that is not counted. */
  readonly fragrance: number;
  /** Null where nothing is held of a substance. */
  kind(cas: string): VocKind | null;
}

const kinds: ReadonlyMap<string, VocKind> = new Map(
  (['voc', 'low', 'exempt', 'none'] as const).flatMap(kind =>
    data.substances[kind].map(cas => [cas, kind] as const),
  ),
);

/** Limits of 40 CFR 59 Subpart C and the substances known to count or not. */
export const vocData: VocData = {
  categories: table.categories as readonly VocCategory[],
  cites: {
    rules: data.rules.cite,
    table: table.cite,
    fragrance: data.fragrance.cite,
    lowVapor: data.lowVapor.cite,
    dilution: data.dilution.cite,
    exempt: data.exempt.cite,
  },
  tableSource: table.source,
  fragrance: data.fragrance.percent,
  kind: cas => kinds.get(cas) ?? null,
};
