import { listedClass } from '../notation/listed-class.ts';
import { sumOf, tidy } from '../quantity/sum.ts';
import type { Evidence, PhysicalForm } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';
import { ruleOf } from './class-rules.ts';
import type { Context } from './context.ts';
import { ofHealth, type Provision } from './facts/provision.ts';
import type { BridgingFault } from './facts/warning-evidence.ts';
import { hazardsOf } from './ingredient.ts';
import { type Objective, objective, objectives } from './ranges/objective.ts';

/** Why bridged evidence cannot be used, with the paragraph. */
export interface CitedFault {
  readonly fault: BridgingFault;
  readonly cite: Provision;
}

/**
 * What is wrong with the bridging principle that evidence names: not one for its class, its result or the form of the
 * product (A.0.5.1.1 to A.0.5.1.6; CLP 1.1.3.1 to 1.1.3.7; UN 1.3.2.3). Null where it holds, where the evidence is no
 * bridging, and where the basis does not know the class.
 */
export function principleFault(basis: Basis, evidence: Evidence, form: PhysicalForm): CitedFault | null {
  const { hazardClass, hazard, kind, principle } = evidence;
  if (kind !== 'bridging' || principle === null) return null;
  const { byClass, bridging } = basis.mixtureEvidence;
  const name = listedClass(hazardClass);
  if (!byClass[name])
    return isExamined(basis, name)
      ? { fault: { kind: 'no-principle', class: name }, cite: ofHealth(basis, bridging.cite) }
      : null;
  const rule = bridging.principles[principle];
  const cite = ofHealth(basis, rule.cite);
  if (!rule.classes.includes(name)) {
    const others = Object.entries(bridging.principles).filter(([, { classes }]) => classes.includes(name));
    return {
      fault: {
        kind: 'principle-not-for-class',
        principle,
        class: name,
        others: others.map(([other]) => other),
      },
      cite: ofHealth(basis, `${byClass[name].bridging}, ${rule.cite}`),
    };
  }
  if (rule.category && !hazard?.category.startsWith(rule.category))
    return { fault: { kind: 'principle-for-category', principle, category: rule.category }, cite };
  if (rule.form && form !== rule.form)
    return { fault: { kind: 'principle-for-form', principle, form: rule.form }, cite };
  return null;
}

const isExamined = (basis: Basis, name: string): boolean => ruleOf(name)?.isOf(basis) ?? false;

/** Whether a mixture is diluted so far that its class can no longer be bridged (A.10.3.2.1; CLP and UN 3.10.3.2). */
export function dilutionFault(
  { basis, mixture, scale }: Context,
  { hazardClass, principle }: Evidence,
): CitedFault | null {
  const least = basis.mixtureEvidence.bridging.dilutedDownTo[hazardClass];
  if (principle !== 'dilution' || !least) return null;
  const parts = mixture.ingredients
    .filter(ingredient => hazardsOf(ingredient, hazardClass).length > 0)
    .map(({ percent }) => ({ amount: percent, weight: 1 }));
  if (scale.meets(parts, least.percent)) return null;
  return {
    fault: { kind: 'diluted-too-far', class: hazardClass, total: tidy(sumOf(parts)), least: least.percent },
    cite: ofHealth(basis, least.cite),
  };
}

/** Which way a mixture leaves what bridging by dilution holds for: the least of the ingredients of each class. */
export const dilutionObjectives = ({ basis, mixture }: Context): readonly Objective[] =>
  objectives(
    ...mixture.evidence
      .filter(
        ({ principle, hazardClass }) =>
          principle === 'dilution' && basis.mixtureEvidence.bridging.dilutedDownTo[hazardClass],
      )
      .map(({ hazardClass }) =>
        objective(mixture, ingredient => (hazardsOf(ingredient, hazardClass).length > 0 ? -1 : 0)),
      ),
  );
