import { findClass } from './classes.ts';
import type { Hazard } from './hazard.ts';

/** What a hazard leaves open so that no rule could be sure to take it up, and how to answer. */
export interface OpenQuestion {
  readonly message: string;
  readonly hint: string;
}

/**
 * The question that a hazard leaves open; null where it says all that rules need. Acute toxicity needs its route,
 * carcinogens, mutagens and reproductive toxicants of category 1 their letter, explosives their division, STOT SE 3 its
 * effect (CLP Annex VI Table 1.1; 29 CFR 1910.1200 App. A and B).
 */
export function openQuestion({ code, hazardClass, category, route, effect }: Hazard): OpenQuestion | null {
  const ask = (what: string, hint: string): OpenQuestion => ({
    message: `\`${code}\` does not say ${what}`,
    hint,
  });
  switch (hazardClass) {
    case 'Acute Tox.':
      return route
        ? null
        : ask('by which route', `write \`${code} (oral)\`, \`(dermal)\` or \`(inhalation)\`, or its H-code`);
    case 'Carc.':
    case 'Muta.':
    case 'Repr.':
      return category === '1'
        ? ask(
            '1A or 1B',
            `look it up in the supplier's sheet, and write \`${hazardClass} 1A\` or \`${hazardClass} 1B\``,
          )
        : null;
    case 'Expl.':
      return category === '' || category === '1'
        ? ask('which division', `write one of ${groupsOf(hazardClass, each => `Expl. ${each}`, /^1\./)}`)
        : null;
    case 'STOT SE':
      return category === '3' && !effect
        ? ask('which effect', `write \`${code} (respiratory irritation)\` or \`${code} (narcotic effects)\``)
        : null;
    default:
      return null;
  }
}

const groupsOf = (name: string, shown: (category: string) => string, wanted = /./): string =>
  findClass(name)!
    .categories.map(({ category }) => category)
    .filter(category => wanted.test(category))
    .map(shown)
    .join(', ');
