import { findClass, findCode, followingStatement } from './classes.ts';
import type { Hazard } from './hazard.ts';

/**
 * A hazard as it is read: class and category, `*` where it is a minimum, brackets, and the H-code where it says
 * more than follows from the rest. `parseHazard` reads it back to the same value.
 */
export const printHazard = (hazard: Hazard): string => printHazardIn(hazard, word => word);

/** The same with the effect, the organs, the route and the form in the words of another language. */
export function printHazardIn(hazard: Hazard, say: (word: string) => string): string {
  const { hazardClass, category, route, form, effect, organs, statement, minimum } = hazard;
  const group = findClass(hazardClass)?.brackets === 'group' && category !== '';
  const routeText = route && (form ? `${say(route)}: ${say(form)}` : say(route));
  const inside = [effect && say(effect), organs.map(say).join(', '), routeText]
    .filter(part => part)
    .join('; ');
  const entry = findCode(hazard.code);
  const follows = entry ? followingStatement(entry.category, route, effect) : null;
  return [
    group ? `${hazardClass} (${category})` : hazard.code,
    minimum ? ' *' : '',
    inside === '' ? '' : ` (${inside})`,
    statement !== null && statement !== follows ? `; ${statement}` : '',
  ].join('');
}
