import type { PrecautionRules, ProductFact } from '../../reference/label-data/rules.ts';
import type { LabelledProduct } from '../labelled-product.ts';

const facts: Readonly<Record<ProductFact, (product: LabelledProduct, words: boolean) => boolean | null>> = {
  volatile: ({ volatile }) => volatile ?? null,
  inhalable: ({ inhalable }) => inhalable ?? null,
  solid: ({ form }) => form === 'solid',
  compatibilityGroupS: ({ compatibilityGroupS }) => compatibilityGroupS ?? false,
  specificTreatment: ({ specificTreatment }, words) => !!specificTreatment || words,
  wetting: (_, words) => words,
  temperature: (_, words) => words,
};

/**
 * Why a condition of use is not met (29 CFR 1910.1200 App. C, C.2.4.4); null where it is met or cannot be decided, so
 * that the statement stays.
 * @param code statement with the condition
 */
export function unmetCondition(
  condition: string,
  code: string,
  product: LabelledProduct,
  { conditions }: PrecautionRules,
): string | null {
  const known = conditions[condition];
  if (!known) return null;
  const words = Object.values(product.words?.[code] ?? {}).some(given => given.length > 0);
  return facts[known.needs](product, words) === false ? known.why : null;
}
