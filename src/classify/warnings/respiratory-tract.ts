import type { Basis } from '../../reference/thresholds.ts';
import type { ClassifiedHazard } from '../classification.ts';
import { ofHealth } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';

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
  return [{ id: 'respiratory-tract', cites: [ofHealth(basis, rule.cite)] }];
}
