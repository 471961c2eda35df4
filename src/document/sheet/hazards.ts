import data from '../../../hazard-data/sheet/effects.json' with { type: 'json' };
import type { ClassifiedHazard, OtherClass } from '../../classify/classification.ts';
import { findClass } from '../../notation/classes.ts';
import { classesListedAs } from '../../notation/listed-class.ts';
import { inTerms } from '../../words/in-terms.ts';
import type { SheetWords } from '../../words/sheet-words.ts';
import { fill } from './fill.ts';

const EFFECTS: Readonly<Record<string, { readonly kind: string }>> = data.effects;

/** Outcomes of one category, which are examined beside those of its class. */
const ofCategory: Readonly<Record<string, readonly string[]>> = {
  'STOT SE 3 (respiratory irritation)': ['STOT SE', 'STOT SE 3'],
  'STOT SE 3 (narcotic effects)': ['STOT SE', 'STOT SE 3'],
};

/** The classes of which an outcome speaks. */
export function classesOf(name: string): readonly string[] {
  const listed = ofCategory[name] ?? classesListedAs(name);
  return listed.length > 0 ? listed : [name];
}

const entryOf = (name: string) => findClass(name) ?? findClass(classesOf(name)[0]!);

export const isHealth = (name: string): boolean => entryOf(name)?.kind === 'health';
export const isPhysical = (name: string): boolean => entryOf(name)?.kind === 'physical';

/** Whether 29 CFR 1910.1200 has the class. */
export const isOfStandard = (name: string): boolean => (entryOf(name)?.us ?? null) !== null;

const bracketed = (parts: readonly (string | null | undefined)[]): string => {
  const named = parts.filter(Boolean);
  return named.length > 0 ? ` (${named.join(', ')})` : '';
};

/** Title of a class by its abbreviation. */
const titleIn = ({ terms }: SheetWords, name: string): string =>
  terms.classes[name] ?? findClass(name)?.title ?? name;

/** Class and category in words: `Acute toxicity, Category 4 (oral)`. */
export function hazardTitle(
  hazard: Pick<ClassifiedHazard, 'hazardClass' | 'category' | 'route' | 'form' | 'effect' | 'organs'>,
  words: SheetWords,
): string {
  const title = titleIn(words, hazard.hazardClass);
  const named =
    hazard.category === ''
      ? title
      : fill(words.identification.categories, { class: title, category: hazard.category });
  const route = hazard.route && words.identification.routes[hazard.route];
  return (
    named +
    bracketed([
      route,
      hazard.form && words.identification.forms[hazard.form],
      hazard.effect && inTerms(words.terms.effects, hazard.effect),
      ...hazard.organs.map(organ => inTerms(words.terms.organs, organ)),
    ])
  );
}

/** Class of an outcome other than classified, in words. */
export function classTitle({ class: name, route }: OtherClass, words: SheetWords): string {
  const { identification } = words;
  const joint: Readonly<Record<string, string>> = identification.joint;
  return (joint[name] ?? titleIn(words, name)) + bracketed([route && identification.routes[route]]);
}

/** What the classes of a mixture mean for an exposed person, each once, in the order of the classes. */
export function effectsOf(
  hazards: readonly ClassifiedHazard[],
  kind: 'acute' | 'delayed',
  { effects, terms }: SheetWords,
): readonly string[] {
  const known: Readonly<Record<string, string>> = effects.effects;
  const texts = hazards.flatMap(hazard => {
    const { hazardClass, code, route, effect, organs } = hazard;
    const keys = [`${hazardClass} (${effect ?? route})`, code, hazardClass];
    const key = keys.find(each => EFFECTS[each] !== undefined);
    if (key === undefined || EFFECTS[key]!.kind !== kind) return [];
    return [
      fill(known[key]!, {
        organs: organs.map(organ => inTerms(terms.organs, organ)).join(', ') || effects.organsUnknown,
      }),
    ];
  });
  return [...new Set(texts)];
}
