import { type Bound, splitBound } from '../quantity/bound.ts';
import { Exact, zero } from '../quantity/exact.ts';
import { type Measure, readMeasure } from '../quantity/measure.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { densityLeaf } from './_amounts.ts';
import { leaf, line, mapping } from './_leaf.ts';
import { measured } from './_measured.ts';
import * as z from './_zod.ts';
import type { FlashPoint } from './product-record.ts';

const absoluteZero = -273.15;

function readTemperature(text: string) {
  const measure = readMeasure(text, 'temperature');
  if (measure.ok && measure.value.base.value < absoluteZero)
    return misreads(`\`${text}\` is below absolute zero`);
  if (!measure.ok && / range,/.test(measure.message))
    return { ...measure, hint: 'give the temperature at which boiling begins' };
  return measure;
}

const lowestTemperature = Exact.decimal(absoluteZero);

/** A flash point and its text. */
export interface FlashPointInput {
  readonly flashPoint: FlashPoint;
  readonly written: string;
  readonly bound?: Bound;
}

/** A measure, or the side of it on which the value lies. */
export interface BoundedMeasure {
  /** The end of what is possible that is the worse. */
  readonly base: Exact;
  readonly written: string;
  readonly bound?: Bound;
}

/**
 * A measure that may be a bound, where low values are the worse: the value taken is the least that is possible.
 * @param least what no value is below.
 */
function readBounded(
  text: string,
  read: (text: string) => Reading<Measure>,
  least: Exact,
): Reading<BoundedMeasure> {
  const split = splitBound(text);
  const measure = read(split?.rest ?? text);
  if (!measure.ok) return measure;
  const { base } = measure.value;
  const written = text.trim();
  if (!split) return reads({ base, written });
  const bound: Bound = { sign: split.sign, limit: base };
  return reads({ base: split.sign.startsWith('<') ? least : base, written, bound });
}

function readViscosity(text: string) {
  const measure = readMeasure(text, 'viscosity');
  return measure.ok && measure.value.base.value < 0 ? misreads(`\`${text}\` is not a viscosity`) : measure;
}

function readFlashPoint(text: string): Reading<FlashPointInput> {
  const written = text.trim();
  if (/^none$/i.test(written)) return reads({ flashPoint: { kind: 'none' }, written });
  const match = /^(.*?)\s*(?:\(?\s*(closed|open)(?:[ -]cup)?\s*\)?)?$/i.exec(written)!;
  const temperature = readBounded(match[1]!, readTemperature, lowestTemperature);
  if (!temperature.ok)
    return { ...temperature, hint: temperature.hint ?? 'write for example `46 C (closed cup)`, or `none`' };
  const cup = (match[2]?.toLowerCase() ?? null) as 'closed' | 'open' | null;
  const { base, bound } = temperature.value;
  return reads({
    flashPoint: { kind: 'temperature', celsius: base, cup },
    written,
    ...(bound && { bound }),
  });
}

function readPH(text: string) {
  const number = readNumber(text);
  // Concentrated acids and bases go somewhat beyond 0 and 14.
  if (number.ok && (number.value.value < -2 || number.value.value > 16))
    return misreads(`\`${text}\` is not a pH`, 'pH runs from 0 to 14');
  return number.ok ? reads({ value: number.value, written: text.trim() }) : number;
}

const plain = (example: string, description: string) =>
  z.optional(measured(line(example, description, 1000)));

/** Properties that only the data sheet prints. */
export const sheetPropertyKeys = [
  'melting-point',
  'vapor-pressure',
  'vapor-density',
  'relative-density',
  'solubility',
  'partition-coefficient',
  'auto-ignition-temperature',
  'decomposition-temperature',
  'evaporation-rate',
  'lower-explosive-limit',
  'upper-explosive-limit',
  'flammability',
  'odor-threshold',
  'particle-characteristics',
  'refractive-index',
  'dynamic-viscosity',
  'voc-content',
] as const;

/** Properties of the finished product. */
export const propertiesSchema = mapping(
  {
    pH: z.optional(measured(leaf(readPH, 'a number', '12.6', 'pH of the product as sold'))),
    density: z.optional(measured(densityLeaf)),
    'flash-point': z.optional(
      measured(
        leaf(readFlashPoint, 'a temperature, or none', '46 C (closed cup)', 'Flash point in C or F, or none'),
      ),
    ),
    'initial-boiling-point': z.optional(
      measured(
        leaf(
          text => readBounded(text, readTemperature, lowestTemperature),
          'a temperature',
          '100 C',
          'Initial boiling point in C or F',
        ),
      ),
    ),
    'kinematic-viscosity-40C': z.optional(
      measured(
        leaf(
          text => readBounded(text, readViscosity, zero),
          'a number with its unit',
          '1.1 mm2/s',
          'Kinematic viscosity at 40 C in mm2/s (cSt)',
        ),
      ),
    ),
    'melting-point': plain('-2 C', 'Melting or freezing point'),
    'vapor-pressure': plain('2.3 kPa at 20 C', 'Vapor pressure'),
    'vapor-density': plain('heavier than air', 'Relative vapor density'),
    'relative-density': plain('1.09', 'Relative density'),
    solubility: plain('miscible with water', 'Solubility'),
    'partition-coefficient': plain('not applicable to a mixture', 'Partition coefficient n-octanol/water'),
    'auto-ignition-temperature': plain('none', 'Auto-ignition temperature'),
    'decomposition-temperature': plain('above 60 C', 'Decomposition temperature'),
    'evaporation-rate': plain('as water', 'Evaporation rate'),
    'lower-explosive-limit': plain('1.1 % by volume', 'Lower explosive limit'),
    'upper-explosive-limit': plain('7 % by volume', 'Upper explosive limit'),
    flammability: plain('not flammable', 'Flammability'),
    'odor-threshold': plain('0.1 ppm', 'Odor threshold'),
    'particle-characteristics': plain('not applicable to a liquid', 'Particle characteristics'),
    'refractive-index': plain('1.36', 'Refractive index'),
    'dynamic-viscosity': plain('1.2 mPa s at 20 C', 'Dynamic viscosity'),
    'voc-content': plain('0.4 %', 'Content of volatile organic compounds'),
  },
  'Properties measured on the finished product; each plain or {value, method, source}',
);
