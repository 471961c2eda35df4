import type { PrecautionRules, ProductFact } from '../../reference/label-data/rules.ts';
import type { LabelledProduct } from '../labelled-product.ts';

const facts: Readonly<Record<ProductFact, (product: LabelledProduct, words: boolean) => boolean | null>> = {
  volatile: ({ volatile }) => volatile ?? null,
  // What is sprayed gives off a mist.
  inhalable: ({ inhalable, sprayed }) => inhalable ?? (sprayed ? true : null),
  solid: ({ form }) => form === 'solid',
  compatibilityGroupS: ({ compatibilityGroupS }) => compatibilityGroupS ?? false,
  specificTreatment: ({ specificTreatment }, words) => !!specificTreatment || words,
  wetting: (_, words) => words,
  temperature: (_, words) => words,
};

/** A condition of use decided: met, not met with the reason of the data, or open. */
export type Decided =
  | { readonly outcome: 'met' }
  | { readonly outcome: 'not-met'; readonly why: string }
  | { readonly outcome: 'open'; readonly needs: ProductFact | null };

/**
 * Decides a condition of use (29 CFR 1910.1200 App. C, C.2.4.4). What cannot be decided is open: the statement stays.
 * @param code statement with the condition
 */
export function decideCondition(
  condition: string,
  code: string,
  product: LabelledProduct,
  { conditions, otherRule }: PrecautionRules,
): Decided {
  const known = conditions[condition];
  if (!known)
    return otherRule.some(start => condition.startsWith(start))
      ? { outcome: 'met' }
      : { outcome: 'open', needs: null };
  const words = Object.values(product.words?.[code] ?? {}).some(given => given.length > 0);
  const fact = facts[known.needs](product, words);
  if (fact === null) return { outcome: 'open', needs: known.needs };
  return fact ? { outcome: 'met' } : { outcome: 'not-met', why: known.why };
}
