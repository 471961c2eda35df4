import type { StateVocLimits } from '../reference/duties/state-voc-data.ts';
import type { VocCategory, VocData } from '../reference/duties/voc-data.ts';
import { type VocProduct, volatileContent } from './voc.ts';

/** Volatile organic content against the limit of one state. */
export interface StateVocFinding {
  /** Two letters. */
  readonly state: string;
  readonly title: string | null;
  /**
   * `within`, `above` and `open` against a limit; `not-held` where no table of the state or no row of it was read;
   * `no-category` where the record names no category, `none-fits` where it says that none fits.
   */
  readonly outcome: 'within' | 'above' | 'open' | 'not-held' | 'no-category' | 'none-fits';
  readonly category: VocCategory | null;
  readonly sure: number;
  readonly atMost: number;
  readonly cite: string | null;
  readonly source: string | null;
}

/**
 * Holds a product against the limit of a state, counted as under 40 CFR 59 and undiluted, since the rules of states on
 * use solutions were not read. Null where the product is not for households or institutions.
 * @param limits null where no table of the state is held
 */
export function stateVoc(
  state: string,
  limits: StateVocLimits | null,
  product: VocProduct,
  data: VocData,
): StateVocFinding | null {
  const categories = data.categories.flatMap(category => {
    const row = limits?.categories.find(({ id }) => id === category.id);
    return row ? [{ ...category, percent: row.percent }] : [];
  });
  const finding = volatileContent({ ...product, dilutions: [] }, { ...data, categories });
  if (!finding) return null;
  const { outcome, category, sure, atMost } = finding;
  const named = product.category !== null && product.category !== 'none';
  return {
    state,
    title: limits?.title ?? null,
    outcome:
      outcome === 'no-limit'
        ? 'none-fits'
        : outcome !== 'no-category'
          ? outcome
          : limits === null || named
            ? 'not-held'
            : 'no-category',
    category,
    sure,
    atMost,
    cite: limits?.cite ?? null,
    source: limits?.source ?? null,
  };
}
