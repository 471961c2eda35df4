import type { ClassifiedConstituent } from '../../../classify/classification.ts';
import type { Hazard } from '../../../notation/hazard.ts';
import type { Exact } from '../../../quantity/exact.ts';
import { meets, reaches } from '../../../quantity/sum.ts';
import type { SheetIngredient } from '../../../record/record-blocks.ts';
import { type CutOffRow, type CutOffs, cutOffsOn, type Least } from '../form.ts';
import { isPhysical } from '../hazards.ts';
import type { SheetInput } from '../input.ts';

/** Why section 3 names an ingredient. */
export type ListedFor = 'hazard' | 'pbt' | 'endocrine' | 'candidate-list' | 'union-limit';

const versionOf = ({ classification: { basis } }: SheetInput): CutOffs => cutOffsOn(basis.id, basis.asOf);

const rowOf = (rows: readonly CutOffRow[], { hazardClass, category }: Hazard): CutOffRow | undefined =>
  rows.find(row => row.class === hazardClass && row.categories.includes(category));

/** M-factor that moves the cut-off of a hazard (CLP Annex I, 4.1.3.1); 1 where none does. */
const factorOf = ({ hazardClass, category }: Hazard, { mFactors }: ClassifiedConstituent['data']): number =>
  category !== '1'
    ? 1
    : hazardClass === 'Aquatic Acute'
      ? mFactors.acute
      : hazardClass === 'Aquatic Chronic'
        ? mFactors.chronic
        : 1;

/** Whether a hazard puts its ingredient into section 3 of a mixture that is classified (Annex II, 3.2.1(a)). */
function counts(
  hazard: Hazard,
  { high, data }: ClassifiedConstituent,
  { classified, identified }: CutOffs,
): boolean {
  const row = rowOf([...classified.rows, ...(identified?.classes ?? [])], hazard);
  if (!row) return !isPhysical(hazard.hazardClass);
  if (meets([{ amount: high, weight: factorOf(hazard, data) }], row.from)) return true;
  const share = classified.sensitizerShareOfSpecificLimit;
  if (share === undefined) return false;
  const sensitizer = hazard.hazardClass === 'Skin Sens.' || hazard.hazardClass === 'Resp. Sens.';
  return data.limits
    .filter(({ hazardClass }) => hazardClass === hazard.hazardClass)
    .some(({ low }) => low && meets([{ amount: high, weight: sensitizer ? 1 / share : 1 }], low.value));
}

const least = ({ from, fromGas }: Least, { record }: SheetInput): number =>
  record.form === 'gas' ? fromGas : from;

/** The same for a mixture that is not classified (3.2.2). */
function countsUnclassified(
  hazard: Hazard,
  { high, data }: ClassifiedConstituent,
  { unclassified, classified }: CutOffs,
  input: SheetInput,
): boolean {
  if (!unclassified) return false;
  if (isPhysical(hazard.hazardClass)) return false;
  const row = rowOf(unclassified.rows, hazard);
  if (reaches(high, row?.from ?? least(unclassified.otherwise, input))) return true;
  const share = classified.sensitizerShareOfSpecificLimit;
  if (share === undefined || !row || !/Sens\./u.test(hazard.hazardClass)) return false;
  return data.limits
    .filter(({ hazardClass }) => hazardClass === hazard.hazardClass)
    .some(({ low }) => low && meets([{ amount: high, weight: 1 / share }], low.value));
}

/** What an ingredient is identified as, from the concentration on at which that counts (3.2.1(c)). */
function identifiedAs(
  high: Exact,
  own: SheetIngredient | null,
  { identified }: CutOffs,
): readonly ListedFor[] {
  if (!identified || !own || !reaches(high, identified.from)) return [];
  return [
    ...(own.pbt ? ['pbt' as const] : []),
    ...(own.endocrine ? ['endocrine' as const] : []),
    ...(own.candidateList ? ['candidate-list' as const] : []),
  ];
}

/**
 * Why section 3 names an ingredient: Regulation (EC) No 1907/2006, Annex II, 3.2.1 and 3.2.2; GHS, Table 1.5.1. Empty
 * where the law asks for nothing.
 * @param own what the record says of the ingredient for the sheet
 */
export function listedFor(
  input: SheetInput,
  constituent: ClassifiedConstituent,
  own: SheetIngredient | null,
): readonly ListedFor[] {
  const version = versionOf(input);
  const { high, data, water } = constituent;
  if (water) return [];
  const mixture = input.classification.hazards.length > 0;
  const hazard = data.hazards.some(each =>
    mixture || !version.unclassified
      ? counts(each, constituent, version)
      : countsUnclassified(each, constituent, version, input),
  );
  const union =
    version.unionLimit &&
    own?.limits.some(limit => limit.union) &&
    (mixture || reaches(high, least(version.unionLimit.unclassified, input)));
  return [
    ...(hazard ? ['hazard' as const] : []),
    ...identifiedAs(high, own, version),
    ...(union ? ['union-limit' as const] : []),
  ];
}
