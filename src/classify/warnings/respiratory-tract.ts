import type { Basis } from '../../reference/thresholds.ts';
import type { ClassifiedHazard, Warning } from '../classification.ts';
import { citeHealth } from '../context.ts';

/**
 * A mixture that is toxic by inhalation and corrosive to skin: whether it corrodes the respiratory tract is for the
 * reviewer to consider (A.1.2.4, A.1.2.4.1, A.1.2.4.2). Nothing where the basis has no such paragraph; CLP has a
 * supplemental statement in its place. Corrosive to skin alone, the hazard is told by that class (A.1.2.4.2).
 */
export function respiratoryTract(basis: Basis, hazards: readonly ClassifiedHazard[]): Warning[] {
  const { respiratoryTract: rule } = basis.acuteToxicity;
  if (!rule) return [];
  const inhaled = hazards.some(
    ({ hazardClass, route }) => hazardClass === 'Acute Tox.' && route === 'inhalation',
  );
  if (!inhaled || !hazards.some(({ hazardClass }) => hazardClass === 'Skin Corr.')) return [];
  const text =
    'toxic by inhalation and corrosive to skin: consider whether the mixture corrodes the respiratory tract; where that kills, its hazard statement and the corrosion pictogram are due, else STOT SE tells it';
  return [{ id: 'respiratory-tract', text, cite: citeHealth(basis, rule.cite) }];
}
