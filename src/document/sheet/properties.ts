import { openOnDocuments } from '../../labelling/open-on-documents.ts';
import type { Measured } from '../../record/product-record.ts';
import type { SheetWords } from '../../words/sheet-words.ts';
import { bodyOf, type ItemBody, nothing, type SectionBodies, said } from './content.ts';
import { capitalized, fill } from './fill.ts';
import type { SheetInput } from './input.ts';

type PropertyWords = SheetWords['properties'];

/** A measured value with its method and source. */
const valued = (words: PropertyWords, { method, source }: Measured<unknown>, text: string): string =>
  [text, method && fill(words.method, { method }), source && fill(words.source, { source })]
    .filter(Boolean)
    .join('; ');

/** Temperatures with their degree sign and in both scales: `46 C` gives `46 °C (115 °F)`. */
export const temperatures = (text: string): string =>
  text.replace(/(-?\d+(?:\.\d+)?)\s*°?\s*([CF])\b(?!\.)/gu, (_, number: string, scale: string) => {
    const value = Number(number);
    const other = scale === 'C' ? (value * 9) / 5 + 32 : ((value - 32) * 5) / 9;
    return `${number} °${scale} (${Math.round(other)} °${scale === 'C' ? 'F' : 'C'})`;
  });

/** Flash point with its cup, method and source; null where the record has none. */
export function flashPoint({ record, words: language }: SheetInput): string | null {
  const { properties: words } = language.sheet;
  const point = record.properties.flashPoint;
  if (!point) return null;
  const { kind } = point.value;
  if (kind === 'none') return valued(words, point, words.noFlashPoint);
  const cup = point.value.cup && words.cup[point.value.cup];
  const bare = point.written.replace(/\s*\(?\s*(?:closed|open)(?:[ -]cup)?\s*\)?\s*$/iu, '');
  return valued(words, point, [temperatures(bare), cup].filter(Boolean).join(', '));
}

/** Section 9 (29 CFR 1910.1200 App. D, Table D.1, 9). */
export function properties(input: SheetInput): SectionBodies {
  const { record, classification } = input;
  const { appearance, properties: own, form } = record;
  const { properties: words } = input.words.sheet;
  const measured = (value: Measured<unknown>, text: string) => valued(words, value, text);
  const other = (key: string): string | null => {
    const value = own.other[key];
    return value ? measured(value, capitalized(temperatures(value.written))) : null;
  };
  const labelled = (phrase: string, text: string | null) => (text ? [fill(phrase, { text })] : []);
  const isStale = new Set(openOnDocuments(classification).stale);
  const dated = (key: string, text: string | null | undefined) =>
    text && isStale.has(key) ? fill(words.stale, { text }) : text;
  const known = (text: readonly (string | null | undefined)[]): ItemBody =>
    bodyOf('product record', { text: text.filter((part): part is string => Boolean(part)) }) ?? nothing;
  const flammable = classification.hazards.some(({ hazardClass }) => /^(?:Flam|Aerosol)/u.test(hazardClass));
  const threshold = other('odor-threshold');
  const density = own.density && measured(own.density, own.density.written);
  const viscosity = own.kinematicViscosity40C;
  return {
    'physical-state': known([appearance.physicalState ?? words.states[form]]),
    color: known([appearance.color && capitalized(appearance.color)]),
    odor: known([
      appearance.odor ? capitalized(appearance.odor) : null,
      threshold && fill(words.threshold, { text: threshold }),
    ]),
    'melting-point': known([other('melting-point')]),
    'boiling-point': known([
      dated(
        'initial-boiling-point',
        own.initialBoilingPoint &&
          measured(own.initialBoilingPoint, temperatures(own.initialBoilingPoint.written)),
      ),
    ]),
    flammability: known([other('flammability') ?? (flammable ? flammableTitle(input) : null)]),
    'explosion-limits': known([
      ...labelled(words.lower, other('lower-explosive-limit')),
      ...labelled(words.upper, other('upper-explosive-limit')),
    ]),
    'flash-point': known([dated('flash-point', flashPoint(input))]),
    'auto-ignition': known([other('auto-ignition-temperature')]),
    decomposition: known([other('decomposition-temperature')]),
    ph: known([dated('pH', own.pH && measured(own.pH, own.pH.written))]),
    viscosity: known([
      dated(
        'kinematic-viscosity-40C',
        viscosity &&
          measured(viscosity, fill(words.viscosity, { text: viscosity.written.replace('mm2', 'mm²') })),
      ),
    ]),
    solubility: known([other('solubility')]),
    partition: known([other('partition-coefficient')]),
    'vapor-pressure': known([
      ...labelled(words.vapor, other('vapor-pressure')),
      ...labelled(words.evaporation, other('evaporation-rate')),
    ]),
    density: known([
      ...labelled(words.density, dated('density', density) ?? null),
      ...labelled(words.relative, other('relative-density')),
    ]),
    'vapor-density': known([other('vapor-density')]),
    particles:
      form === 'solid'
        ? known([other('particle-characteristics')])
        : said(
            'physical form',
            other('particle-characteristics') ?? fill(words.noParticles, { form: words.forms[form] }),
          ),
    ...otherProperties(words, other),
  };
}

function flammableTitle({ elements }: SheetInput): string | null {
  return elements.hazardStatements.find(({ code }) => /^H22\d/u.test(code))?.text ?? null;
}

function otherProperties(words: PropertyWords, other: (key: string) => string | null): SectionBodies {
  const text = Object.entries(words.other).flatMap(([key, phrase]) => {
    const value = other(key);
    return value ? [fill(phrase, { text: value })] : [];
  });
  const body = bodyOf('product record', { text });
  return body ? { 'other-properties': body } : {};
}
