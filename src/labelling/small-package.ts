import type { Classification, ClassifiedHazard } from '../classify/classification.ts';
import type { LabelData } from '../reference/label-data/load-label-data.ts';
import { type SmallPackageRule, smallPackageRules } from '../reference/supply/small-packages.ts';
import { distinct } from './_omissions.ts';
import { labelElements } from './elements.ts';
import type { LabelElements, Omission, Statement } from './label-elements.ts';
import type { LabelledProduct } from './labelled-product.ts';

type Left = SmallPackageRule['leaves'][number];

const ruleFor = ({ code }: ClassifiedHazard, toPublic: boolean): SmallPackageRule | null =>
  smallPackageRules.find(({ categories }) =>
    categories.some(each => each.code === code && (each.publicToo || !toPublic)),
  ) ?? null;

/**
 * The elements of a package of 125 mL or less without what CLP Annex I, 1.5.2.1 lets it leave out. What another hazard
 * calls for too stays.
 * @param full the elements without that choice
 * @param product whoever is not said to be in a workplace is the public
 */
export function smallPackageElements(
  full: LabelElements,
  classification: Classification,
  labelData: LabelData,
  product: LabelledProduct,
): LabelElements {
  const toPublic = product.consumer !== false;
  const { hazards } = classification;
  const without = (what: Left): LabelElements =>
    labelElements(
      {
        ...classification,
        hazards: hazards.filter(each => !ruleFor(each, toPublic)?.leaves.includes(what)),
      },
      labelData,
      product,
    );
  const [signs, statements, precautions] = [without('signs'), without('hazard'), without('precautionary')];
  const rules = new Map(hazards.flatMap(each => ruleFor(each, toPublic) ?? []).map(rule => [rule.id, rule]));
  const gone = (what: Left, before: readonly string[], after: readonly string[]): Omission[] => {
    const rule = [...rules.values()].find(({ leaves }) => leaves.includes(what));
    const left = before.filter(each => !after.includes(each));
    return rule
      ? left.map(each => ({ what: each, why: { kind: 'rule', text: rule.why }, cite: rule.cite }))
      : [];
  };
  const codes = (list: readonly Statement[]) => list.map(({ code }) => code);
  return {
    ...full,
    signalWord: signs.signalWord,
    pictograms: signs.pictograms,
    hazardStatements: statements.hazardStatements,
    precautionaryStatements: precautions.precautionaryStatements,
    missing: distinct([...statements.missing, ...precautions.missing]),
    conditional: precautions.conditional,
    omitted: distinct([
      ...full.omitted,
      ...gone('signs', full.pictograms, signs.pictograms),
      ...gone('hazard', codes(full.hazardStatements), codes(statements.hazardStatements)),
      ...gone(
        'precautionary',
        codes(full.precautionaryStatements),
        codes(precautions.precautionaryStatements),
      ),
    ]),
  };
}
