import { Exact } from '../quantity/exact.ts';
import { compare } from '../quantity/sum.ts';
import type { PackingGroup } from '../reference/transport/table-entry.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import { type Fact, fact } from './fact.ts';
import { type Finding, finding, type Hazard, type Missing } from './finding.ts';
import type { TransportInput } from './input.ts';

const groups: readonly PackingGroup[] = ['I', 'II', 'III'];
type RouteFigure = 'oral' | 'dermal' | 'mist';

const byRoute: Readonly<Record<RouteFigure, Hazard['route']>> = {
  oral: 'oral',
  dermal: 'dermal',
  mist: 'inhalation',
};

/**
 * Division 6.1 (49 CFR 173.132, 173.133): the packing group of each route from the estimate of the mixture, or from
 * its category where there is no estimate. Vapour needs the saturated vapour concentration, which no record holds.
 */
export function toxic(input: TransportInput, { criteria }: TransportData): Finding {
  if (input.form === 'gas' || input.form === 'aerosol') return finding({});
  const rules = criteria.toxic;
  const hazards: Hazard[] = [];
  const because: Fact[] = [];
  const missing: Missing[] = [];
  for (const route of ['oral', 'dermal', 'mist'] as const) {
    const found = groupOf(input, route, rules);
    if (!found) continue;
    hazards.push({ class: '6.1', group: found.group, route: byRoute[route]!, tested: found.tested });
    because.push(fact('toxic', rules.cite, { route, group: found.group, estimate: found.estimate }));
  }
  const acute = input.hazards.filter(({ hazardClass }) => hazardClass === 'Acute Tox.');
  if (acute.some(({ form, category }) => form === 'vapour' && isDeadly(category)))
    missing.push({
      ...fact('saturated-vapour-concentration', rules.vapour.cite),
      class: '6.1',
      decides: hazards.length > 0 ? 'confirm' : 'class',
      cases: groups.map(group => ({
        id: 'toxic-vapour',
        values: { group },
        hazard: { class: '6.1', group, route: 'inhalation', tested: true },
      })),
    });
  for (const { hazardClass, route } of input.open) {
    if (hazardClass !== 'Acute Tox.') continue;
    missing.push({
      ...fact('acute-toxicity-data', rules.definition, { route: route ?? 'any' }),
      class: '6.1',
      decides: 'class',
      cases: groups.map(group => ({
        id: 'toxic',
        values: { route: route ?? 'any', group },
        hazard: { class: '6.1', group, ...(route ? { route } : {}), tested: true },
      })),
    });
  }
  if (hazards.length + missing.length === 0) because.push(fact('not-toxic', rules.definition));
  const [worst] = bySeverity(hazards);
  if (!worst) return finding({ because, missing });
  const [other] = bySeverity(hazards.filter(({ route }) => route !== 'inhalation'));
  return finding({ hazards: [{ ...worst, otherRoutes: other?.group ?? null }], because, missing });
}

const isDeadly = (category: string): boolean => ['1', '2', '3'].includes(category);

/** The highest degree of toxicity of any route decides (173.133(a)(3)). */
const bySeverity = (hazards: readonly Hazard[]): Hazard[] =>
  [...hazards].sort((a, b) => groups.indexOf(a.group!) - groups.indexOf(b.group!));

function groupOf(
  input: TransportInput,
  route: RouteFigure,
  rules: TransportData['criteria']['toxic'],
): { group: PackingGroup; estimate: number | null; tested: boolean } | null {
  const category = input.hazards.find(
    hazard =>
      hazard.hazardClass === 'Acute Tox.' &&
      (route === 'mist' ? hazard.form === 'mist' : hazard.route === route),
  );
  const estimate = input.ateMix[route];
  const limits = rules.routes[route];
  if (estimate !== null && (category === undefined || !category.tested)) {
    const held = Exact.decimal(estimate * (route === 'mist' ? rules.fourHoursToOne.mist : 1));
    const group = groups.find(name => compare(held, limits[name]) <= 0);
    if (group) return { group, estimate, tested: false };
    if (!category || !isDeadly(category.category)) return null;
  }
  const group = category && isDeadly(category.category) ? groups[Number(category.category) - 1] : undefined;
  return group ? { group, estimate: null, tested: category?.tested ?? false } : null;
}
