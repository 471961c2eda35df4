import data from '../../hazard-data/us-hcs/carcinogen-categories.json' with { type: 'json' };
import type { Hazard } from '../notation/hazard.ts';
import { parseHazard } from '../notation/parse-hazard.ts';
import type { CarcinogenListing } from '../reference/exposure/carcinogen-listings.ts';
import type { Found, LookUp } from '../reference/lists/look-up.ts';
import type { Warning } from './facts/warning.ts';
import type { IngredientData } from './ingredient.ts';

type Listing = Found<CarcinogenListing>;

const instrument = '29 CFR 1910.1200';
const provision = (paragraph: string) => ({ instrument, paragraph: `App. A, ${paragraph}`, inForce: null });

/** Whether an entry speaks of the substance in every form, and beyond doubt. */
const isCertain = ({ membership, condition }: Listing): boolean =>
  membership === 'member' && condition === null;

/** The most severe category by the lists; null where neither has the substance. */
function categoryBy(listings: readonly Listing[]): string | null {
  const categories = listings.flatMap(({ row }) => [
    row.iarc ? data.iarc[row.iarc.group as keyof typeof data.iarc] : undefined,
    row.ntp ? data.ntp[row.ntp] : undefined,
  ]);
  return categories.filter(category => category !== undefined).sort()[0] ?? null;
}

/** Data of a constituent with what the lists add, and what is to be told of it. */
export interface ListedData {
  readonly data: IngredientData;
  readonly warnings: readonly Warning[];
}

/**
 * A chemical for which OSHA names cancer shall be classified as a carcinogen (29 CFR 1910.1200 App. A, A.6.4.2), in the
 * category of App. F Part D; what IARC and NTP list and the data do not classify is told (A.6.4.1).
 */
export function withListings(
  known: IngredientData,
  constituent: number,
  lookUp: LookUp<CarcinogenListing> | null,
): ListedData {
  // Who may belong to a group is told by the sheet (section 11), where the group is judged.
  const found = lookUp?.found.filter(({ membership }) => membership === 'member') ?? [];
  if (found.length === 0 || known.hazards.some(({ hazardClass }) => hazardClass === 'Carc.'))
    return { data: known, warnings: [] };
  const named = found.filter(each => each.row.osha !== null && isCertain(each));
  const code = named.length > 0 ? `Carc. ${categoryBy(found.filter(isCertain)) ?? data.unlisted}` : null;
  return {
    data: code === null ? known : { ...known, hazards: [...known.hazards, hazardOf(code)] },
    warnings: [
      {
        id: 'carcinogen-listed',
        constituent,
        listings: found,
        added: code,
        cites: [provision(code === null ? data.told : data.cite)],
      },
    ],
  };
}

function hazardOf(code: string): Hazard {
  const parsed = parseHazard(code);
  if (!parsed.ok) throw new Error(`carcinogen-categories.json: ${parsed.message}`);
  return parsed.value;
}
