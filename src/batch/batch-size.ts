import Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import { readMeasure, splitMeasure } from '../quantity/measure.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { containerMillilitres, findContainer } from './containers.ts';

/** How large a batch shall be. */
export type BatchSize = { readonly written: string } & (
  | { readonly kind: 'mass'; readonly grams: Exact }
  | { readonly kind: 'volume'; readonly millilitres: Exact }
);

const EXAMPLES = 'write such as 250 gal, 945 kg, 2000 lb, 3 drums or 2 1/2 drums';

/** Reads the size of a batch: a mass, a volume, or containers with fractions (`2 1/2 drums`). */
export function readBatchSize(written: string): Reading<BatchSize> {
  const text = written.trim();
  const fraction = /^(?:(\d{1,4})\s+)?(\d{1,3})\/(\d{1,3})\s*(.*)$/.exec(text);
  const parts = fraction
    ? { number: mixed(fraction[1], fraction[2]!, fraction[3]!), unit: fraction[4]! }
    : plain(text);
  if (!parts?.number) return misreads(`\`${written}\` is no size of a batch`, EXAMPLES);
  const container = findContainer(parts.unit);
  if (container) {
    if (parts.number.value <= 0) return misreads(`\`${written}\` is no size of a batch`, EXAMPLES);
    const millilitres = Exact.fraction(containerMillilitres(container).exact.mul(parts.number.exact));
    return reads({ kind: 'volume', millilitres, written: text });
  }
  const asDecimal = fraction ? `${parts.number.value} ${parts.unit}` : text;
  const measure = readMeasure(asDecimal, 'volume', 'mass');
  if (!measure.ok) return { ...measure, hint: EXAMPLES };
  const { base, kind } = measure.value;
  if (base.value <= 0) return misreads(`\`${written}\` is no size of a batch`, EXAMPLES);
  return reads(
    kind === 'mass'
      ? { kind: 'mass', grams: base, written: text }
      : { kind: 'volume', millilitres: base, written: text },
  );
}

function mixed(whole: string | undefined, above: string, below: string): Exact | null {
  if (Number(below) === 0) return null;
  return Exact.fraction(new Fraction(Number(above), Number(below)).add(Number(whole ?? 0)));
}

function plain(text: string): { readonly number: Exact | null; readonly unit: string } | null {
  const parts = splitMeasure(text);
  if (!parts) return null;
  const number = readNumber(parts.number);
  // A number that cannot be read is told with its unit, below.
  return { number: number.ok ? number.value : Exact.decimal(1), unit: parts.unit };
}
