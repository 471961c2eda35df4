import type { ClassifiedConstituent } from '../../classify/classification.ts';
import { bodyOf, type ItemBody, type SheetValue } from './content.ts';
import { ingredients } from './disclosure.ts';
import { capitalized, figure, fill } from './fill.ts';
import { hazardTitle } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';

const ROUTES = ['oral', 'dermal', 'gas', 'vapour', 'mist'] as const;
type AteRoute = (typeof ROUTES)[number];

/** Units of acute toxicity estimates (29 CFR 1910.1200 App. A, Table A.1.1). */
export const ateUnits: Readonly<Record<AteRoute, string>> = {
  oral: 'mg/kg',
  dermal: 'mg/kg',
  gas: 'ppmV',
  vapour: 'mg/L',
  mist: 'mg/L',
};

/**
 * Acute toxicity of the ingredients that section 3 lists, as record or entry give it: the figure, else the category;
 * null where none has any.
 */
export function ingredientToxicity(input: SheetInput): ItemBody | null {
  const { toxicology: words } = input.words.sheet;
  const secrets = secretsOf(input);
  const values: SheetValue[] = [];
  const rows = ingredients(input).flatMap(({ classified, listed, index }) => {
    if (!listed) return [];
    const name = secrets.name(index);
    const source = secrets.identity.has(index) ? '' : input.words.source(classified.data.source);
    const figures = ROUTES.flatMap(route => {
      const ate = classified.data.ate[route];
      if (!ate) return [];
      values.push({
        property: `ate.${route}`,
        of: name,
        value: ate.value,
        unit: ateUnits[route],
        source: source || null,
      });
      const [title, phrase] = words.ate[route];
      return [
        [
          name,
          title!,
          fill(phrase!, { value: figure(ate.value, 4, input.words.decimalMark) }),
          capitalized(source),
        ],
      ];
    });
    return [
      ...figures,
      ...categories(input, classified).map(text => [name, text, words.noFigure, capitalized(source)]),
    ];
  });
  return bodyOf('reference tables', {
    table: rows.length > 0 ? { columns: words.ingredientColumns, rows } : null,
    values,
    notes: [words.ingredientNote],
  });
}

/** Categories of acute toxicity for which no figure is given. */
function categories(input: SheetInput, { data }: ClassifiedConstituent): readonly string[] {
  const given = new Set(ROUTES.filter(route => data.ate[route]).map(route => routeOf(route)));
  const titles = data.hazards
    .filter(({ hazardClass, route }) => hazardClass === 'Acute Tox.' && !(route && given.has(route)))
    .map(hazard => hazardTitle(hazard, input.words.sheet));
  return [...new Set(titles)];
}

const routeOf = (route: AteRoute) => (route === 'oral' || route === 'dermal' ? route : 'inhalation');
