import { findClass, findCode, followingStatement } from './classes.ts';
import type { Hazard } from './hazard.ts';

/**
 * A hazard as it is read: class and category, `*` where it is a minimum, brackets, and the H-code where it says
 * more than follows from the rest. `parseHazard` reads it back to the same value.
 */
export function printHazard(hazard: Hazard): string {
  const { hazardClass, category, route, form, effect, organs, statement, minimum } = hazard;
  const group = findClass(hazardClass)?.brackets === 'group' && category !== '';
  const routeText = route && (form ? `${route}: ${form}` : route);
  const inside = [effect, organs.join(', '), routeText].filter(part => part).join('; ');
  const entry = findCode(hazard.code);
  const follows = entry ? followingStatement(entry.category, route, effect) : null;
  return [
    group ? `${hazardClass} (${category})` : hazard.code,
    minimum ? ' *' : '',
    inside === '' ? '' : ` (${inside})`,
    statement !== null && statement !== follows ? `; ${statement}` : '',
  ].join('');
}
