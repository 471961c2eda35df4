import { nearest } from './_nearest.ts';
import type { ClassAndCategory } from './classes.ts';
import type { InhalationForm, Route, TransientEffect } from './hazard.ts';
import { type Parsed, parsed, unreadable } from './parsed.ts';

/** What the brackets behind a class say. */
export interface BracketContent {
  readonly route: Route | null;
  readonly form: InhalationForm | null;
  readonly effect: TransientEffect | null;
  readonly organs: readonly string[];
}

const routes: readonly Route[] = ['oral', 'dermal', 'inhalation'];

const forms: ReadonlyMap<string, InhalationForm> = new Map(
  Object.entries({
    gas: 'gas',
    gases: 'gas',
    vapour: 'vapour',
    vapours: 'vapour',
    vapor: 'vapour',
    vapors: 'vapour',
    mist: 'mist',
    mists: 'mist',
    dust: 'mist',
    dusts: 'mist',
    'dust/mist': 'mist',
    'dusts/mists': 'mist',
    'dust and mist': 'mist',
    'dust or mist': 'mist',
    'dusts and mists': 'mist',
    'dusts or mists': 'mist',
  } as const),
);

/** The inhalation form of a word of Annex I 3.1: `vapours`, `dusts or mists`, `gas`. */
export const inhalationForm = (word: string): InhalationForm | null => forms.get(word.toLowerCase()) ?? null;

/** Reads the brackets behind a class and category; each element of `contents` is the inside of one pair. */
export function readBrackets(
  { hazardClass, category }: ClassAndCategory,
  contents: readonly string[],
): Parsed<BracketContent> {
  const content = { route: null, form: null, effect: null, organs: [] as string[] } as {
    route: Route | null;
    form: InhalationForm | null;
    effect: TransientEffect | null;
    organs: string[];
  };
  const name = hazardClass.class;
  for (const segment of contents.flatMap(inside => inside.split(';')).map(part => part.trim())) {
    const route = readRoute(segment);
    if (segment === '') return unreadable(`empty brackets after ${name}`, 'leave the brackets out');
    if (route && hazardClass.brackets && !category.byEffect) {
      if (content.route) return unreadable(`two routes for one ${name}`, 'write one hazard for each route');
      if (route.form && hazardClass.brackets !== 'acute-route')
        return unreadable(
          `"${segment}": only Acute Tox. has limits by form`,
          `write (inhalation) for ${name}`,
        );
      content.route = route.route;
      content.form = route.form;
    } else if (category.byEffect) {
      const effects = Object.keys(category.byEffect) as TransientEffect[];
      const effect = effects.find(known => known === segment.toLowerCase());
      if (!effect) return unreadable(`"${segment}" is no effect of ${name} 3`, choose(segment, effects));
      if (content.effect)
        return unreadable(`two effects for one ${name} 3`, 'write one hazard for each effect');
      content.effect = effect;
    } else if (hazardClass.brackets === 'organs') {
      content.organs.push(...segment.split(',').map(organ => organ.trim()));
    } else if (hazardClass.brackets === 'group') {
      const groups = hazardClass.categories.map(known => known.category).filter(known => known !== '');
      return unreadable(`"${segment}" is no group of ${name}`, choose(segment, groups));
    } else if (hazardClass.brackets) {
      return unreadable(`"${segment}" is no route of exposure`, routeHint(segment, hazardClass.brackets));
    } else {
      return unreadable(`nothing follows ${name} in brackets`, `write ${name} without (${segment})`);
    }
  }
  if (content.organs.includes(''))
    return unreadable(`an organ is empty after ${name}`, 'write (kidney, liver)');
  return parsed(content);
}

function readRoute(segment: string): { route: Route; form: InhalationForm | null } | null {
  const lower = segment.toLowerCase();
  const route = routes.find(known => known === lower);
  if (route) return { route, form: null };
  const match = /^inhalation\s*[:,]\s*(.+)$/.exec(lower);
  const form = inhalationForm(match?.[1] ?? lower);
  return form ? { route: 'inhalation', form } : null;
}

const choose = (written: string, known: readonly string[]): string =>
  `did you mean (${nearest(written, known) ?? known.join(') or (')})?`;

const routeHint = (segment: string, brackets: string): string =>
  brackets === 'acute-route'
    ? 'write (oral), (dermal), (inhalation), or (inhalation: gas), (inhalation: vapour), (inhalation: mist)'
    : choose(segment, routes);
