import { meets, show, sumOf, tidy } from '../quantity/sum.ts';
import type { Evidence, PhysicalForm } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';
import { citeHealth } from './context.ts';
import { hazardsOf, type Mixture } from './ingredient.ts';
import { listedClass } from './listed-class.ts';

/** Why bridged evidence cannot be used, with the paragraph. */
export interface BridgingFault {
  readonly text: string;
  readonly hint?: string;
  readonly cite: string;
}

/**
 * What is wrong with the bridging principle that evidence names: not one for its class, its result or the form of the
 * product (A.0.5.1.1 to A.0.5.1.6; CLP 1.1.3.1 to 1.1.3.7; UN 1.3.2.3). Null where it holds, where the evidence is no
 * bridging, and where the basis does not know the class.
 */
export function principleFault(basis: Basis, evidence: Evidence, form: PhysicalForm): BridgingFault | null {
  const { hazardClass, hazard, kind, principle } = evidence;
  if (kind !== 'bridging' || principle === null) return null;
  const { byClass, bridging } = basis.mixtureEvidence;
  const name = listedClass(hazardClass);
  if (!byClass[name])
    return isExamined(basis, name)
      ? { text: `no bridging principle holds for ${name}`, cite: citeHealth(basis, bridging.cite) }
      : null;
  const rule = bridging.principles[principle];
  const cite = citeHealth(basis, rule.cite);
  const shown = `the bridging principle \`${principle}\``;
  if (!rule.classes.includes(name)) {
    const others = Object.entries(bridging.principles).filter(([, { classes }]) => classes.includes(name));
    return {
      text: `${shown} does not hold for ${name}`,
      hint: `for ${name} there are ${others.map(([other]) => other).join(', ')}`,
      cite: citeHealth(basis, `${byClass[name].bridging}, ${rule.cite}`),
    };
  }
  if (rule.category && !hazard?.category.startsWith(rule.category))
    return { text: `${shown} holds for results in Category ${rule.category} only`, cite };
  if (rule.form && form !== rule.form)
    return { text: `${shown} holds for products of the form ${rule.form} only`, cite };
  return null;
}

const isExamined = ({ physicalClasses, environmental }: Basis, name: string): boolean =>
  name === 'Flam. Liq.' ||
  physicalClasses.some(entry => entry.class === name) ||
  Object.hasOwn(environmental, name);

/** Whether a mixture is diluted so far that its class can no longer be bridged (A.10.3.2.1; CLP and UN 3.10.3.2). */
export function dilutionFault(
  basis: Basis,
  { hazardClass, principle }: Evidence,
  mixture: Mixture,
): BridgingFault | null {
  const least = basis.mixtureEvidence.bridging.dilutedDownTo[hazardClass];
  if (principle !== 'dilution' || !least) return null;
  const parts = mixture.ingredients
    .filter(ingredient => hazardsOf(ingredient, hazardClass).length > 0)
    .map(({ percent }) => ({ amount: percent, weight: 1 }));
  if (meets(parts, least.percent)) return null;
  const text = `${show(tidy(sumOf(parts)))} % of ingredients of ${hazardClass}, less than the ${show(least.percent)} % that bridging by \`dilution\` needs`;
  return { text, cite: citeHealth(basis, least.cite) };
}
