import { type Measure, readMeasure } from '../quantity/measure.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { leaf } from './_leaf.ts';

function readAmount(text: string): Reading<Measure | 'balance'> {
  if (text.trim() === 'balance') return reads('balance');
  if (/^\s*[\d.,]+\s*%\s*$/.test(text))
    return misreads(
      `\`${text}\` is a percentage`,
      `write \`percent: ${text.replace(/\s*%/, '').trim()}\` instead of \`amount\``,
    );
  const measure = readMeasure(text, 'mass', 'volume');
  if (!measure.ok)
    return /^\s*[a-z. ]+$/i.test(text)
      ? misreads(`\`${text}\` is not an amount`, 'write a number and a unit, such as `40 kg`, or `balance`')
      : measure;
  if (measure.value.base.value < 0) return misreads(`\`${text}\` is negative`);
  return measure;
}

/** What is weighed or metered in, or the rest of the batch. */
export const amount = leaf(
  readAmount,
  'an amount',
  '40 kg',
  'Amount weighed or metered in: kg, g, lb, oz, L, mL, gal, fl oz (US); or balance',
);

/** A density, and the temperature at which it was measured, where it is named. */
export interface DensityMeasure extends Measure {
  /** As written, such as `20 C`; null where none is named. */
  readonly at: string | null;
}

/** g/mL, above 0; `1.09 g/mL at 20 C` names its temperature. */
export const densityLeaf = leaf(
  (text): Reading<DensityMeasure> => {
    const [, alone = text, at = null] = /^(.*?)\s+at\s+(.+)$/s.exec(text.trim()) ?? [];
    const temperature = at === null ? null : readMeasure(at, 'temperature');
    if (temperature && !temperature.ok) return temperature;
    const celsius = temperature?.value.base.value ?? 20;
    if (celsius < -60 || celsius > 400)
      return misreads(
        `\`${at}\` is no temperature at which a density is measured`,
        'such as `20 C` or `68 F`',
      );
    const measure = readMeasure(alone, 'density');
    if (!measure.ok) return measure;
    const { value } = measure.value.base;
    // No liquid or solid is denser than osmium, 22.6 g/mL.
    if (value <= 0 || value > 23)
      return misreads(
        `\`${text}\` is not a density that a product can have`,
        'check the unit: water has 1 g/mL, 1000 kg/m3, 8.3 lb/gal',
      );
    return reads({ ...measure.value, written: text.trim(), at: temperature?.value.written ?? null });
  },
  'a number with its unit',
  '1.09 g/mL',
  'Density: g/mL, kg/L, kg/m3, lb/gal; with its temperature as in 1.09 g/mL at 20 C',
);

/** The size of a batch. */
export const batchLeaf = leaf(
  text => {
    const measure = readMeasure(text, 'mass', 'volume');
    return measure.ok && measure.value.base.value <= 0
      ? misreads(`\`${text}\` is not a batch size`)
      : measure;
  },
  'an amount',
  '945 kg',
  'Size of the whole batch; needed where weights stand beside a balance',
);

/** g/mol, above 0. */
export const molarMassLeaf = leaf(
  text => {
    const mass = readMeasure(text, 'molarMass');
    return mass.ok && mass.value.base.value <= 0
      ? misreads(`\`${text}\` is not a molar mass`, 'give a molar mass above 0')
      : mass;
  },
  'a number with its unit',
  '242.23 g/mol',
  'Molar mass',
);
