import type { Resolved } from '../classify/resolve.ts';
import { bearsFrom, bearsOn, type JudgedProperty, judgedProperties } from '../classify/warnings/bearing.ts';
import { show } from '../quantity/print.ts';
import type { Product } from './open-product.ts';

/** What to write beside a measured property, so that a later change of the formula is noticed. */
export interface MeasuredFormula {
  /** Key of the property in the record: `flash-point`. */
  readonly property: string;
  /** Constituents that bear on it, by CAS number or name, with their percents: `40`, `38-42`. */
  readonly parts: readonly { readonly name: string; readonly percent: string }[];
  /** Whether the record has it, for this formula or another. */
  readonly kept: boolean;
}

/** The formula that each measured property rests on; nothing of a density, which decides no class. */
export function measuredFormulas(
  { record, formula }: Product,
  resolved: readonly Resolved[],
): readonly MeasuredFormula[] {
  const keys = (Object.keys(judgedProperties) as JudgedProperty[]).filter(
    key => key !== 'density' && record.properties[key],
  );
  return keys.map(key => ({
    property: judgedProperties[key],
    parts: formula.constituents.flatMap((each, i) => {
      const bears = each.high.value >= bearsFrom(key) && bearsOn(key, { ...each, data: resolved[i]!.data });
      if (!bears) return [];
      const [low, high] = [show(each.low.value), show(each.high.value)];
      return [{ name: each.cas ?? each.name, percent: low === high ? high : `${low}-${high}` }];
    }),
    kept: Boolean(record.properties[key]!.measuredFormula),
  }));
}
