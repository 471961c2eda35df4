import { openOnDocuments } from '../../labelling/open-on-documents.ts';
import type { Measured } from '../../record/product-record.ts';
import type { SheetKey } from '../../record/sheet-keys.ts';
import { bodyOf, type ItemBody, nothing, type SectionBodies, type SheetValue, said } from './content.ts';
import { capitalized, fill } from './fill.ts';
import { flashPoint, type PropertyWords, valued } from './flash-point.ts';
import type { SheetInput } from './input.ts';
import { unmeasured } from './property-rules.ts';
import { temperatures } from './units.ts';

/**
 * Section 9 (29 CFR 1910.1200 App. D, Table D.1, 9): what the record gives of the product, else what form, composition
 * and ingredients tell.
 */
export function properties(input: SheetInput): SectionBodies {
  const values = measuredValues(input);
  const rows = Object.entries(recorded(input)).map(([row, body]): [string, ItemBody] => {
    const own = input.record.sheet[`properties.${row}` as SheetKey];
    if (body.source === 'none') return [row, (own ? null : unmeasured(input, row)) ?? body];
    return [row, values[row] ? { ...body, values: [values[row]] } : body];
  });
  return Object.fromEntries(rows);
}

/** The numbers that were measured on the product. */
function measuredValues({ record }: SheetInput): Readonly<Record<string, SheetValue>> {
  const { pH, density, flashPoint: point, initialBoilingPoint, kinematicViscosity40C } = record.properties;
  const values: Record<string, SheetValue> = {};
  const add = (
    row: string,
    property: string,
    of: Measured<unknown> | undefined,
    value: number,
    unit: string | null,
  ) => {
    if (!of) return;
    const bound = of.bound ? { value: of.bound.limit.value, bound: of.bound.sign } : { value };
    values[row] = { property, of: null, ...bound, unit, method: of.method, source: of.source };
  };
  add('ph', 'pH', pH, pH?.value.value ?? 0, null);
  add('density', 'density', density, density?.value.value ?? 0, 'g/mL');
  if (point?.value.kind === 'temperature')
    add('flash-point', 'flashPoint', point, point.value.celsius.value, 'C');
  add(
    'boiling-point',
    'initialBoilingPoint',
    initialBoilingPoint,
    initialBoilingPoint?.value.value ?? 0,
    'C',
  );
  add(
    'viscosity',
    'kinematicViscosity',
    kinematicViscosity40C,
    kinematicViscosity40C?.value.value ?? 0,
    'mm2/s at 40 C',
  );
  return values;
}

/** What the record gives of each row. */
function recorded(input: SheetInput): SectionBodies {
  const { record, classification } = input;
  const { appearance, properties: own, form } = record;
  const { properties: words } = input.words.sheet;
  const measured = (value: Measured<unknown>, text: string) => valued(input.words, value, text);
  const other = (key: string): string | null => {
    const value = own.other[key];
    return value ? measured(value, capitalized(temperatures(value.written, input))) : null;
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
          measured(own.initialBoilingPoint, temperatures(own.initialBoilingPoint.written, input)),
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
