import type { PackingGroup } from '../reference/transport/table-entry.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import { fact } from './fact.ts';
import { type Finding, finding, type Hazard, type Missing } from './finding.ts';
import type { TransportInput } from './input.ts';

interface Assigned {
  readonly class: string;
  readonly cite: string;
  readonly packingGroups: Readonly<Record<string, string>>;
}

/**
 * Oxidizers (49 CFR 173.127), Divisions 4.1 to 4.3 (173.125), and classes that tests and an approval decide:
 * explosives, self-reactive materials and organic peroxides (173.2a(c)). Gases are left to the shipper.
 */
export function otherClasses(input: TransportInput, { criteria }: TransportData): Finding {
  const assigned: Record<string, Assigned> = {
    'Ox. Liq.': { class: '5.1', ...criteria.oxidizer },
    'Ox. Sol.': { class: '5.1', ...criteria.oxidizer },
  };
  for (const [name, entry] of Object.entries(criteria.otherClasses))
    if (typeof entry !== 'string') assigned[name] = entry as Assigned;
  const approvals = Object.entries(criteria.byApproval).flatMap(([name, entry]) =>
    typeof entry === 'string' ? [] : [[name, entry] as const],
  );
  const hazards: Hazard[] = [];
  const because = [];
  const missing: Missing[] = [];
  for (const [hazardClass, { class: division, cite, packingGroups }] of Object.entries(assigned)) {
    const met = input.hazards.find(hazard => hazard.hazardClass === hazardClass);
    if (met) {
      const group = (packingGroups[met.category] as PackingGroup | undefined) ?? null;
      hazards.push({ class: division, group, tested: met.tested });
      because.push(
        fact('other-class', cite, { hazardClass, category: met.category, class: division, group }),
      );
    } else if (input.open.some(open => open.hazardClass === hazardClass))
      missing.push({
        ...fact('class-test', cite, { hazardClass, class: division }),
        class: division,
        decides: 'class',
        cases: Object.values(packingGroups).map(group => ({
          id: 'other-class',
          values: { class: division, group },
          hazard: { class: division, group: group as PackingGroup, tested: true },
        })),
      });
  }
  for (const [hazardClass, { class: division, cite }] of approvals) {
    const met = input.hazards.some(hazard => hazard.hazardClass === hazardClass);
    if (!met && !input.open.some(open => open.hazardClass === hazardClass)) continue;
    missing.push({
      ...fact(met ? 'approval' : 'class-test', cite, { hazardClass, class: division }),
      class: division,
      decides: met ? 'group' : 'class',
      cases: [{ id: 'by-approval', values: { class: division }, hazard: 'approval' }],
    });
  }
  const { classes, cite } = criteria.gases;
  if (input.form === 'gas')
    missing.push({
      ...fact('gas', cite, {
        classes: input.hazards.map(({ hazardClass }) => hazardClass).filter(name => classes.includes(name)),
      }),
      class: '2',
      decides: 'group',
      cases: [{ id: 'by-approval', values: { class: '2' }, hazard: 'approval' }],
    });
  return finding({ hazards, because, missing });
}
