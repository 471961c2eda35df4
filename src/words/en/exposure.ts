import type { ExposureLimit } from '../../reference/exposure/open-exposure.ts';
import type { Found, LookUp } from '../../reference/lists/look-up.ts';
import { foundText } from './list-search.ts';

/** Words of the table of limits in section 8. */
export const limitWords = {
  columns: ['Ingredient', '8-hour TWA', 'Ceiling, STEL or peak', 'Table or section'],
  noIngredients:
    'Section 3 lists no ingredient: the tables of 29 CFR 1910.1000 and the standards of subpart Z name none of the product.',
  note: 'Z-1, Z-2, Z-3: tables of 29 CFR 1910.1000 (text of 2017). Every ingredient was looked up by CAS number, by name and by group: the name decides (Table Z-1, note (c)). A ceiling is exceeded at no time of the working day. Where mg/m³ stands beside ppm it is approximate (note (b)). Limits of state plans were not looked up.',
  mixture:
    'Several of these limits are time-weighted averages: for a mixture of air contaminants the sum of C/L over them, each concentration divided by its limit, may not exceed 1 (29 CFR 1910.1000(d)(2)).',
} as const;

const NONE = 'None found in Tables Z-1, Z-2, Z-3 or the standards of 29 CFR 1910 subpart Z';
const MEMORY = 'not compared with the text of the section; to be confirmed';
const NOTHING = '–';

/** One row of the table. */
export type LimitRow = readonly [ingredient: string, average: string, shortTerm: string, place: string];

const cubic = (text: string): string => text.replaceAll('mg/m3', 'mg/m³');

const hasFigures = ({ twa, ceiling, shortTerm, peak }: ExposureLimit): boolean =>
  [twa.ppm, twa.milligramsPerCubicMetre, ceiling, shortTerm, peak].some(part => part !== null);

/** Without the rows that only point to another row that is there. */
function substantial(found: readonly Found<ExposureLimit>[]): readonly Found<ExposureLimit>[] {
  const figures = found.filter(({ row }) => hasFigures(row));
  return figures.length > 0 ? figures : found;
}

function average({ twa, ceiling, peak, skin, see, notes }: ExposureLimit): string {
  const figures = [
    twa.ppm && `${twa.ppm} ppm`,
    twa.milligramsPerCubicMetre && `${twa.milligramsPerCubicMetre} mg/m³`,
  ].filter(Boolean);
  const other = ceiling === null && peak === null ? (notes ?? see ?? NOTHING) : NOTHING;
  const text = figures.length > 0 ? figures.join('; ') : cubic(other);
  return skin ? `${text} (skin)` : text;
}

function shortTerm(limit: ExposureLimit): string {
  const parts = [
    limit.ceiling && `ceiling ${cubic(limit.ceiling)}`,
    limit.shortTerm && cubic(limit.shortTerm),
    limit.peak && `peak ${cubic(limit.peak)}`,
  ].filter(Boolean);
  return parts.length > 0 ? parts.join('; ') : NOTHING;
}

function place(found: Found<ExposureLimit>): string {
  const { row } = found;
  const averaged = row.twa.ppm !== null || row.twa.milligramsPerCubicMetre !== null;
  const notes = row.notes !== null && (averaged || row.ceiling !== null) ? cubic(row.notes) : '';
  return [row.table, notes, foundText(found), row.compared ? '' : MEMORY]
    .filter(part => part !== '')
    .join('; ');
}

/**
 * The rows of an ingredient; where nothing is found, what was sought.
 * @param withheld whether its identity is a trade secret
 */
export function limitRows(
  name: string,
  { found, sought }: LookUp<ExposureLimit>,
  withheld = false,
): readonly LimitRow[] {
  if (found.length === 0) {
    const number = withheld ? 'CAS number' : sought.cas ? `CAS ${sought.cas}` : 'no CAS number';
    const keys = [number, 'name', 'groups'];
    return [[name, NONE, NOTHING, `looked up: ${keys.join(', ')}`]];
  }
  return substantial(found).map(each => {
    const printed = each.row.name;
    const title = printed.toLowerCase() === name.toLowerCase() ? name : `${name} [${printed}]`;
    return [title, average(each.row), shortTerm(each.row), place(each)];
  });
}

/** How many ingredients have a time-weighted average, so that the formula for mixtures concerns them. */
export const averaged = (lookUps: readonly LookUp<ExposureLimit>[]): number =>
  lookUps.filter(({ found }) =>
    found.some(({ row }) => row.twa.ppm !== null || row.twa.milligramsPerCubicMetre !== null),
  ).length;
