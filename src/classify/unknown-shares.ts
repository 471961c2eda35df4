import { sumOf } from '../quantity/sum.ts';
import type { ProductRecord } from '../record/product-record.ts';
import type { AcuteKey } from '../reference/thresholds.ts';
import type { Context, RouteEstimate } from './context.ts';

/** Percent of unknown acute toxicity by a route, at its worst; none where the mixture itself was tested (C.3.3). */
export function unknownShare(
  { evidence }: Pick<ProductRecord, 'evidence'>,
  estimates: readonly RouteEstimate[],
  route: string,
  keys: readonly AcuteKey[],
): number {
  const tested = evidence.some(
    ({ hazardClass, kind, route: by }) => hazardClass === 'Acute Tox.' && kind === 'test' && by === route,
  );
  if (tested) return 0;
  let most = 0;
  for (const { key, unknown } of estimates) if (keys.includes(key)) most = Math.max(most, unknown);
  return most;
}

/** Percent of the mixture with unknown hazards to the aquatic environment (CLP and UN 4.1.3.6.1), at its worst. */
export const unknownAquatic = (contexts: readonly Context[]): number =>
  Math.max(
    ...contexts.map(({ mixture }) =>
      sumOf(
        mixture.ingredients
          .filter(({ data }) => data.unknown.has('aquatic'))
          .map(({ percent }) => ({ amount: percent, weight: 1 })),
      ),
    ),
  );
