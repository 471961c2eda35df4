import type { MovedConstituent } from '../../classify/facts/stale-measurement.ts';
import type { Warning } from '../../classify/facts/warning.ts';
import type { Telling } from '../words.ts';
import { sharesOf } from './shares.ts';

type OpenPoint = Extract<
  Warning,
  {
    id:
      | 'inhalation-form-worse'
      | 'stale-measurement'
      | 'open-cup'
      | 'ph-missing'
      | 'undecided-with-cause'
      | 'doubtful-measurement'
      | 'category-not-in-basis';
  }
>;

/** `ethanol was 40 %, is 80 %` */
function movedText({ constituent, name, before, now }: MovedConstituent, tell: Telling): string {
  const called = constituent === null ? name : tell.names(constituent);
  const percent = (range: NonNullable<MovedConstituent['now']>): string => {
    const [low, high] = [tell.style.show(range.low.value), tell.style.show(range.high.value)];
    return low === high ? `${high} %` : `${low} to ${high} %`;
  };
  if (!tell.amounts) return `${called} has changed`;
  if (!before) return `${called} was not in it, is ${percent(now!)}`;
  return now
    ? `${called} was ${percent(before)}, is ${percent(now)}`
    : `${called} was ${percent(before)}, is gone`;
}

/** What is open for lack of a measurement, of data or of a category. */
export function openPoint(found: OpenPoint, tell: Telling): string {
  switch (found.id) {
    case 'inhalation-form-worse': {
      const said = (code: string): string => code.replaceAll('-', ' ');
      return `Acute Tox. (inhalation): the form is open for ${found.constituents.map(tell.names).join(', ')} and is judged as ${found.taken}: ${said(found.now)}; as ${found.other}, the form of what is sprayed or dissolved, it would be ${said(found.within)}; write the form with the hazard, or choose reading inhalation-form`;
    }
    case 'stale-measurement': {
      const list = found.properties.map(({ property, measuredOn, moved }) => {
        const by = [measuredOn, ...moved.map(each => movedText(each, tell))].filter(Boolean).join('; ');
        return `${property} (${by})`;
      });
      const now = found.revision
        ? `revision ${found.revision}`
        : found.revised
          ? `the revision of ${found.revised}`
          : 'that of the record';
      return `measured on another formula than ${now}: ${list.join(', ')}; measure again, or say why it still holds`;
    }
    case 'open-cup': {
      const follows = found.moved
        ? `judged as if that much lower, since that changes the class`
        : 'that does not change the class';
      return `flash point ${tell.style.show(found.celsius.value)} ${tell.style.celsius} is of an open cup; a closed cup, which the law asks for, gives up to ${tell.style.show(found.more)} ${tell.style.celsius} less: ${follows}`;
    }
    case 'ph-missing': {
      const judged = found.severe
        ? 'judged as corrosive to skin and eyes from 1 % until then'
        : 'judged by the sum of concentrations until then';
      return `${sharesOf(found.constituents, tell)}: the pH decides of strong acids and bases, and the record has none: measure the pH and give it under \`properties\`; ${judged}`;
    }
    case 'undecided-with-cause': {
      const needs = {
        'flash-point': 'the flash point of the product (closed cup)',
        viscosity: 'the kinematic viscosity of the product at 40 C',
        test: 'a test of the product, given as evidence',
        data: `data on ${found.lacking.map(tell.names).join(', ')}`,
      }[found.needs];
      return `${found.classes.join(', ')}: not decided, although ${found.constituents.map(tell.names).join(', ')} ${found.constituents.length === 1 ? 'is' : 'are'} of the class or a neighbouring one; needed: ${needs}`;
    }
    case 'doubtful-measurement': {
      const value = found.value
        ? found.property === 'pH'
          ? `pH ${tell.style.show(found.value.value)}`
          : `flash point ${tell.style.show(found.value.value)} ${tell.style.celsius}`
        : 'no flash point';
      const hint =
        found.property === 'pH'
          ? 'nothing in the formula accounts for it'
          : 'flammable liquids in this amount nearly always give a lower one';
      return `${value} beside ${sharesOf(found.constituents, tell)}: ${hint}; is the measurement right, and of this formula?`;
    }
    case 'category-not-in-basis':
      return `${tell.names(found.constituent)}: ${found.basis} has no ${found.hazards.join(', ')}; no rule takes it, judge it by what the supplier knows`;
  }
}
