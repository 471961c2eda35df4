/** A logarithmic axis of percent with a short linear part at the left that holds zero and all below its first decade. */
export interface Scale {
  /** Place of a percent along the axis. */
  at(percent: number): number;
  /** Decades on the axis, in percent. */
  readonly decades: readonly number[];
}

const STUB = 34;
// Below this no law has a limit; an axis that starts lower would show nothing more.
const LEAST = 1e-5;

/**
 * Cut-offs lie decades apart, so the axis is logarithmic. It starts in the decade of the least value of interest.
 * @param values percents to be told apart; @param end greatest percent; @param from, @param to place of the ends.
 */
export function scaleOf(values: readonly number[], end: number, from: number, to: number): Scale {
  const positive = values.filter(value => value > 0).concat(end / 10);
  const first = Math.floor(Math.log10(Math.max(Math.min(...positive), LEAST)) + 1e-9);
  const low = 10 ** first;
  const span = Math.log10(end) - first;
  const start = from + STUB;
  const at = (percent: number): number =>
    percent < low
      ? from + (STUB * percent) / low
      : start + ((to - start) * (Math.log10(percent) - first)) / span;
  const decades: number[] = [];
  for (let power = first; 10 ** power <= end * (1 + 1e-9); power++) decades.push(Number(`1e${power}`));
  return { at, decades };
}

/** The first lane in which each label, centred on its place, is clear of the labels before it. */
export function lanesOf(
  labels: readonly { readonly at: number; readonly width: number }[],
): readonly number[] {
  const ends: number[] = [];
  return labels.map(({ at, width }) => {
    const free = ends.findIndex(end => end + 6 < at - width / 2);
    const lane = free < 0 ? ends.length : free;
    ends[lane] = at + width / 2;
    return lane;
  });
}
