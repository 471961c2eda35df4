import { inhalationForm } from './_brackets.ts';
import type { Token } from './_wordings.ts';
import type { InhalationForm, Route } from './hazard.ts';

/** What was found among the words of a text, and the words that are left. */
export interface Taken {
  readonly taken: readonly string[];
  readonly left: readonly Token[];
}

const heads = /^(?:sub-?category|category|categories|cat|sub-cat|type|division)$/;

/** Takes the categories: `category 1`, `cat. 2A`, `type D`, `division 1.4`, or a number alone. More than one is a doubt. */
export function takeCategories(tokens: readonly Token[]): Taken {
  const found = new Set<string>();
  const drop = new Set<number>();
  tokens.forEach(({ word }, at) => {
    const next = tokens[at + 1]?.word ?? '';
    const joined = /^(?:cat|category)\.?([1-5][a-c]?)$/.exec(word)?.[1];
    if (heads.test(word)) {
      drop.add(at);
      if (!/^(?:[1-5][a-c]?|[a-g]|1\.[1-6])$/.test(next)) return;
      found.add(next);
      drop.add(at + 1);
    } else if (joined !== undefined || (!drop.has(at) && /^(?:[1-5][a-c]?|1\.[1-6])$/.test(word))) {
      found.add(joined ?? word);
      drop.add(at);
    }
  });
  // "Category 1, sub-category 1B" is 1B.
  const taken = [...found].filter(
    each => ![...found].some(other => other !== each && other.startsWith(each)),
  );
  return { taken, left: tokens.filter((_, at) => !drop.has(at)) };
}

const routeWords: ReadonlyMap<string, Route> = new Map([
  ['oral', 'oral'],
  ['orally', 'oral'],
  ['ingestion', 'oral'],
  ['swallowed', 'oral'],
  ['dermal', 'dermal'],
  ['dermally', 'dermal'],
  ['inhalation', 'inhalation'],
  ['inhaled', 'inhalation'],
]);

/** Takes the routes of exposure, with the form of inhalation: `oral`, `inhalation: vapour`. */
export function takeRoutes(tokens: readonly Token[]): Taken {
  const routes = new Set<Route>();
  const forms = new Set<InhalationForm>();
  const left = tokens.filter(({ word }) => {
    const route = routeWords.get(word);
    const form = inhalationForm(word);
    if (route) routes.add(route);
    if (form) forms.add(form);
    return !route && !form;
  });
  if (forms.size > 0) routes.add('inhalation');
  const taken = [...routes].flatMap(route =>
    route === 'inhalation' && forms.size > 0 ? [...forms].map(form => `${route}: ${form}`) : [route],
  );
  return { taken, left };
}
