import practice from './practice.json' with { type: 'json' };

/** Edge of the upright label that comes off the roll first. */
export type LeadingEdge = 'top' | 'bottom' | 'left' | 'right';

/** Whether the print looks outward or inward on the roll. */
export type Wound = 'out' | 'in';

/** How labels come off the roll, as far as it can be told. */
export interface Unwinding {
  readonly wound: Wound;
  /** Null where the charts read the number in different ways. */
  readonly leadingEdge: LeadingEdge | null;
  /** What each known chart makes of the number; empty where words and no number were given. */
  readonly readings: readonly { readonly chart: string; readonly leadingEdge: LeadingEdge }[];
  /** The width of the label, or its height, runs along the web. */
  readonly along: 'width' | 'height';
}

/** The side of the label that runs along the web when an edge leads. */
export const alongWeb = (edge: LeadingEdge): 'width' | 'height' =>
  edge === 'left' || edge === 'right' ? 'width' : 'height';

/**
 * How labels come off the roll. The number of a chart alone does not tell: charts of label printers contradict each
 * other, but they agree on what runs along the web and on which side is out.
 * @param number 1 to 8, or null
 * @param edge the edge said in words, which goes before the number
 */
export function unwinding(number: string | null, edge: LeadingEdge | null, wound: Wound | null): Unwinding {
  const index = number === null ? null : ((Number(number) - 1) % 4) + 1;
  const readings = practice.unwind.charts.flatMap(({ name, edges }) => {
    const found = index === null ? undefined : (edges as Readonly<Record<string, string>>)[index];
    return found ? [{ chart: name, leadingEdge: found as LeadingEdge }] : [];
  });
  const [first] = readings;
  const agreed = first && readings.every(({ leadingEdge }) => leadingEdge === first.leadingEdge);
  const leadingEdge = edge ?? (agreed ? first.leadingEdge : null);
  return {
    wound: wound ?? (number !== null && Number(number) > 4 ? 'in' : 'out'),
    leadingEdge,
    readings: edge === null ? readings : [],
    along: alongWeb(leadingEdge ?? first?.leadingEdge ?? 'left'),
  };
}
