import type { PhysicalForm } from '../../record/product-record.ts';
import type { CarcinogenListing } from '../exposure/carcinogen-listings.ts';
import type { Condition } from '../groups/groups.ts';
import type { Sought } from '../groups/members.ts';
import type { Found, Listed, LookUp } from '../lists/look-up.ts';
import type { HazardousSubstance, RegulatoryLists, StateListing, ToxicChemical } from './open-regulatory.ts';
import {
  type DeMinimis,
  deMinimis,
  type HazardTypes,
  hazardTypes,
  inventoryThresholdPounds,
  type NotHeld,
  notHeld,
  productPounds,
} from './programs.ts';

/** A constituent of a product. */
export interface Share {
  readonly name: string;
  readonly cas: string | null;
  /** By weight; the upper end where it varies or is withheld. */
  readonly percent: number;
}

/** What of a product bears on its lists. */
export interface ProductKind {
  readonly form: PhysicalForm;
  /** Hazard classes in the notation of CLP Annex VI, without category; `HNOC` for one not otherwise classified. */
  readonly classes: readonly string[];
}

/** A CERCLA hazardous substance in a product. */
export interface Reportable {
  readonly share: Share;
  readonly found: Found<HazardousSubstance>;
  /** Pounds of product that hold the quantity. */
  readonly productPounds: number | null;
}

/** An entry of EPCRA section 313 with all constituents that belong to it. */
export interface Toxic {
  readonly row: ToxicChemical;
  readonly members: readonly { readonly share: Share; readonly found: Found<ToxicChemical> }[];
  readonly condition: Condition | null;
  readonly carcinogen: boolean;
  readonly deMinimis: DeMinimis;
}

/** What the lists of section 15 say of a product. */
export interface RegulatoryFacts {
  readonly reportable: readonly Reportable[];
  readonly toxic: readonly Toxic[];
  /**
   * An entry asks for the notice of 40 CFR 372.45: it is not below its de minimis concentration ((d)(1)), and not limited
   * to airborne acid or to makers of the substance.
   */
  readonly supplierNotice: boolean;
  readonly state: readonly { readonly share: Share; readonly found: Found<StateListing> }[];
  readonly hazardTypes: HazardTypes;
  /** Pounds at a facility from which EPCRA sections 311 and 312 ask for a report. */
  readonly inventoryPounds: number;
  /** Programmes whose lists are not held: nothing was sought in them. */
  readonly notHeld: readonly NotHeld[];
  /** Constituents that were sought in every list. */
  readonly sought: readonly Share[];
}

const NO_NOTICE: readonly Condition[] = ['acid-aerosol', 'manufacture-only'];

/**
 * Looks every constituent up in the lists of CERCLA, EPCRA section 313 and Proposition 65, and gives the hazard types of
 * EPCRA sections 311 and 312.
 */
export function regulatoryFacts(
  shares: readonly Share[],
  product: ProductKind,
  table: RegulatoryLists,
  carcinogens: (sought: Sought) => LookUp<CarcinogenListing>,
): RegulatoryFacts {
  const sought = ({ name, cas }: Share): Sought => ({ name, cas, form: product.form });
  const each = <R extends Listed>(search: (sought: Sought) => LookUp<R>) =>
    shares.flatMap(share => search(sought(share)).found.map(found => ({ share, found })));
  const isCarcinogen = (share: Share): boolean =>
    carcinogens(sought(share)).found.some(
      ({ row, membership }) =>
        membership === 'member' && (row.iarc !== null || row.ntp !== null || row.osha !== null),
    );
  const toxic = new Map<ToxicChemical, { share: Share; found: Found<ToxicChemical> }[]>();
  for (const member of each(table.toxicChemicals)) {
    const others = toxic.get(member.found.row);
    if (others) others.push(member);
    else toxic.set(member.found.row, [member]);
  }
  const entries = [...toxic].map(([row, members]): Toxic => {
    const condition = members.find(({ found }) => found.condition)?.found.condition ?? null;
    const carcinogen = members.some(({ share }) => isCarcinogen(share));
    const percents = members.map(({ share }) => share.percent);
    const aqueousAmmonia = condition === 'aqueous-ammonia' && product.form !== 'gas';
    const kind = { carcinogen, specialConcern: row.specialConcern, aqueousAmmonia };
    return { row, members, condition, carcinogen, deMinimis: deMinimis(percents, kind) };
  });
  return {
    reportable: each(table.cercla).map(({ share, found }) => ({
      share,
      found,
      productPounds: productPounds(found.row.pounds, share.percent),
    })),
    toxic: entries,
    supplierNotice: entries.some(
      ({ condition, deMinimis }) => !deMinimis.below && !(condition && NO_NOTICE.includes(condition)),
    ),
    state: each(table.prop65),
    hazardTypes: hazardTypes(product.classes),
    inventoryPounds: inventoryThresholdPounds,
    notHeld: notHeld.map(({ id }) => id),
    sought: shares,
  };
}
