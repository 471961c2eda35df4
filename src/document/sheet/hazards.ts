import type { ClassifiedHazard, OtherClass } from '../../classify/classification.ts';
import { findClass } from '../../notation/classes.ts';
import { fill, phrases } from './phrases.ts';

interface Effect {
  readonly kind: string;
  readonly text: string;
}

const EFFECTS: Readonly<Record<string, Effect>> = phrases.effects.effects;
const ROUTES = phrases.identification.routes;
/** Spelling of the inhalation form in a sheet for the United States. */
const FORMS = { gas: 'gas', vapour: 'vapor', mist: 'dust or mist' } as const;

export const isHealth = (hazardClass: string): boolean => findClass(hazardClass)?.kind === 'health';
export const isPhysical = (hazardClass: string): boolean => findClass(hazardClass)?.kind === 'physical';

/** Whether 29 CFR 1910.1200 has the class. */
export const isOfStandard = (hazardClass: string): boolean => (findClass(hazardClass)?.us ?? null) !== null;

const bracketed = (parts: readonly (string | null | undefined)[]): string => {
  const named = parts.filter(Boolean);
  return named.length > 0 ? ` (${named.join(', ')})` : '';
};

/** Class and category in words: `Acute toxicity, Category 4 (oral)`. */
export function hazardTitle(
  hazard: Pick<ClassifiedHazard, 'hazardClass' | 'category' | 'route' | 'form' | 'effect' | 'organs'>,
): string {
  const title = findClass(hazard.hazardClass)?.title ?? hazard.hazardClass;
  const named =
    hazard.category === ''
      ? title
      : fill(phrases.identification.categories, { class: title, category: hazard.category });
  const route = hazard.route && ROUTES[hazard.route];
  return named + bracketed([route, hazard.form && FORMS[hazard.form], hazard.effect, ...hazard.organs]);
}

/** Class of an outcome other than classified, in words. */
export const classTitle = ({ class: name, route }: OtherClass): string =>
  (findClass(name)?.title ?? name) + bracketed([route && ROUTES[route]]);

/** What the classes of a mixture mean for an exposed person, each once, in the order of the classes. */
export function effectsOf(
  hazards: readonly ClassifiedHazard[],
  kind: 'acute' | 'delayed',
): readonly string[] {
  const texts = hazards.flatMap(hazard => {
    const { hazardClass, code, route, effect, organs } = hazard;
    const keys = [`${hazardClass} (${effect ?? route})`, code, hazardClass];
    const found = keys.map(key => EFFECTS[key]).find(entry => entry !== undefined);
    if (found?.kind !== kind) return [];
    return [fill(found.text, { organs: organs.join(', ') || phrases.effects.organsUnknown })];
  });
  return [...new Set(texts)];
}
