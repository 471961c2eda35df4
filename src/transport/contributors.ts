import { compareValues } from '../quantity/sum.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import type { TransportConstituent, TransportInput } from './input.ts';

/** GHS classes of a constituent that make a mixture of a class of transport. */
const sources: Readonly<Record<string, readonly string[]>> = {
  '3': ['Flam. Liq.'],
  'Comb liq': ['Flam. Liq.'],
  '8': ['Skin Corr.', 'Met. Corr.'],
  '6.1': ['Acute Tox.'],
  '5.1': ['Ox. Liq.', 'Ox. Sol.'],
  '4.1': ['Flam. Sol.'],
  '4.2': ['Pyr. Liq.', 'Pyr. Sol.', 'Self-heat.'],
  '4.3': ['Water-react.'],
  '9': ['Aquatic Acute', 'Aquatic Chronic'],
};

const deadly = ['1', '2', '3'];

/** Whether a constituent has a hazard that makes a material of one of the classes. */
export const contributes = (
  { hazards, water }: TransportConstituent,
  ...classes: readonly string[]
): boolean =>
  !water &&
  classes.some(name =>
    hazards.some(
      ({ hazardClass, category }) =>
        (sources[name] ?? []).includes(hazardClass) &&
        (hazardClass !== 'Acute Tox.' || deadly.includes(category)),
    ),
  );

/** Constituents that make a class, the largest part first. */
export const contributorsTo = (
  { constituents }: TransportInput,
  ...classes: readonly string[]
): readonly TransportConstituent[] =>
  constituents
    .filter(constituent => contributes(constituent, ...classes))
    .sort((a, b) => compareValues(b.high, a.high));

/** Classes 3 to 8: a constituent with one of them is itself a hazardous material. */
export const anyClass: readonly string[] = ['3', '8', '6.1', '5.1', '4.1', '4.2', '4.3'];

/**
 * What narrows a generic name: `alcohols`, `acidic-inorganic` and the like, from the substances that make the
 * class; empty where they do not agree or are not known.
 */
export function natures(input: TransportInput, hazardClass: string, data: TransportData): readonly string[] {
  const makers = contributorsTo(input, hazardClass).map(({ cas }) => (cas ? data.substance(cas) : null));
  if (makers.length === 0 || makers.some(maker => maker === null)) return [];
  const all = <T>(value: (maker: NonNullable<(typeof makers)[number]>) => T): T | null => {
    const found = new Set(makers.map(maker => value(maker!)));
    return found.size === 1 ? [...found][0]! : null;
  };
  const group = all(({ group: name }) => name);
  const organic = all(({ organic: carbon }) => carbon);
  const nature = all(({ nature: kind }) => kind);
  const names: string[] = [];
  if (group === 'alcohol') names.push('alcohols');
  if (group === 'terpene') names.push('terpenes');
  if (group === 'hydrocarbon') names.push('hydrocarbons');
  if (group === 'caustic alkali') names.push('caustic-alkali');
  if (organic === false) names.push('inorganic');
  if (nature && organic !== null)
    names.push(`${nature === 'acid' ? 'acidic' : 'basic'}-${organic ? 'organic' : 'inorganic'}`);
  return names;
}
