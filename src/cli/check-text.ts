import type { Resolved } from '../classify/resolve.ts';
import type { CheckedProduct } from '../draft/checked-product.ts';
import type { MeasuredFormula } from '../draft/measured-formulas.ts';
import type { Duty } from '../duties/duty.ts';
import type { WeighOut } from '../formula/weigh-out.ts';
import { Exact } from '../quantity/exact.ts';
import { inUnit } from '../quantity/measure.ts';
import { show } from '../quantity/print.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { dutiesHead, dutyLines } from '../words/en/duties.ts';

const range = (low: number, high: number): string =>
  show(low) === show(high) ? show(high) : `${show(low)} to ${show(high)}`;

const unknownOf = ({ data }: Resolved): string =>
  data.noData ? 'no data at all' : [...data.unknown].join(', ');

/** What `check` says of one record. @param notes questions that hinder nothing */
export function checkText(
  { product, resolved, readAs, entryNames, weighOut, measuredOn }: CheckedProduct,
  notes: readonly Diagnostic[],
): string {
  const { record, formula } = product;
  const rows = formula.constituents.map(({ name, cas, low, high, via, undisclosed }, i) => {
    const unknown = unknownOf(resolved[i]!);
    const from = via.length > 0 ? `  comes with ${via.join(', ')}` : '';
    const whole = undisclosed ? '  composition not given by its supplier' : '';
    const called = cas === null ? undefined : entryNames.get(cas);
    return `  ${range(low.value, high.value).padStart(18)} %  ${name}${cas ? ` (${cas})` : ''}${called ? `, in the table: ${called}` : ''}${from}${whole}${unknown ? `  [unknown: ${unknown}]` : ''}`;
  });
  const unknown = resolved.filter(each => unknownOf(each) !== '').length;
  const basis = record.form === 'gas' ? 'by volume' : 'by weight';
  return [
    `${record.name} (${record.code}): ${formula.constituents.length} constituents, 100 % ${basis}`,
    ...rows,
    unknown === 0
      ? '  every constituent has data'
      : `  ${unknown} of ${resolved.length} constituents have unknown endpoints`,
    ...readAs.map(({ name, written, read }) => `  ${name}: "${written}" is read as ${read.join(' and ')}`),
    ...(weighOut ? weighOutText(weighOut) : []),
    ...measuredOn.flatMap(measuredOnText),
    ...notes.map(({ message, hint }) => `  note: ${message}${hint ? `; ${hint}` : ''}`),
    '',
  ].join('\n');
}

/** What to write so that a later change of the formula is noticed; nothing where the record has it. */
function measuredOnText({ property, parts, kept }: MeasuredFormula): string[] {
  if (kept || parts.length === 0) return [];
  const written = parts.map(({ name, percent }) => `${quoted(name)}: ${percent}`).join(', ');
  return [
    `  ${property}: if it was measured on this formula, keep \`measured-on: {${written}}\` beside its value`,
  ];
}

/** A key of YAML: in quotes where it has a sign that would end it. */
const quoted = (name: string): string => (/^[\w][\w .()+/-]*$/.test(name) ? name : JSON.stringify(name));

/** Duties around the label: those that ask for something in full, the others by their number. */
export function dutiesText(duties: readonly Duty[]): string {
  const asking = duties.filter(({ state }) => state === 'due' || state === 'open');
  const lines = [dutiesHead(duties.length - asking.length), ...dutyLines(asking).map(each => `  ${each}`)];
  return lines.map(line => `  ${line}\n`).join('');
}

function weighOutText({ grams, assumed, lines }: WeighOut): string[] {
  const kilograms = (value: Exact) => inUnit(value, 'mass', 'kg').value;
  const pounds = (value: Exact) => inUnit(value, 'mass', 'lb').value;
  const head = `  to weigh out for ${show(kilograms(grams))} kg (${short(pounds(grams))} lb)${assumed ? ', as the record names no batch' : ''}:`;
  return [
    head,
    ...lines.map(({ name, lowGrams, highGrams, density }) => {
      const both = (of: (value: Exact) => number) => {
        const [low, high] = [short(of(lowGrams)), short(of(highGrams))];
        return low === high ? high : `${low} to ${high}`;
      };
      const gallons = density
        ? `  ${both(value => inUnit(Exact.fraction(value.exact.div(density.exact)), 'volume', 'gal').value)} gal`
        : '';
      return `  ${both(kilograms).padStart(18)} kg  ${both(pounds)} lb${gallons}  ${name}`;
    }),
  ];
}

const short = (value: number): string => String(Number(value.toPrecision(4)));
