import type { Hazard } from './hazard.ts';

/** Of the second list the hazards that the first lacks or has in a milder category. */
export function milderThan(own: readonly Hazard[], others: readonly Hazard[]): Hazard[] {
  return others.filter(theirs => {
    const same = own.filter(
      ours =>
        family(ours) === family(theirs) &&
        (ours.route === theirs.route || ours.route === null || theirs.route === null),
    );
    return !same.some(ours => severity(ours) >= severity(theirs));
  });
}

const families: Readonly<Record<string, string>> = {
  'Skin Corr.': 'skin',
  'Skin Irrit.': 'skin',
  'Eye Dam.': 'eye',
  'Eye Irrit.': 'eye',
};

/** What two hazards share that differ in severity alone: class, with the effect of STOT SE 3. */
export const family = ({ hazardClass, effect }: Hazard): string =>
  (families[hazardClass] ?? hazardClass) + (effect ?? '');

// 1A is worse than 1B is worse than 1 is worse than 2; a corrosive is worse than any irritant.
function severity({ hazardClass, category }: Hazard): number {
  const number = Number.parseInt(category, 10) || 1;
  const letter = /[A-C]$/.exec(category)?.[0];
  const step = letter ? 0.3 - 0.1 * 'ABC'.indexOf(letter) : 0;
  const lead = hazardClass === 'Skin Corr.' || hazardClass === 'Eye Dam.' ? 10 : 0;
  return lead - number + step;
}
