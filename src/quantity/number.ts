import Fraction from 'fraction.js';
import { Exact } from './exact.ts';
import { misreads, type Reading, reads } from './reading.ts';

const decimal = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d{1,2})?$/;
// A longer number is a slip, and exact arithmetic on it costs time.
const maxLength = 40;

/** Reads a decimal number with a point, exactly as written; a minus sign of typography is read as one. */
export function readNumber(written: string): Reading<Exact> {
  const text = written.trim().replace(/^[−–]/, '-');
  if (decimal.test(text) && text.length <= maxLength) return reads(Exact.decimal(text));
  if (text === '') return misreads('a number is missing');
  if (/^[-+]?\d{1,3}(,\d{3})+(\.\d+)?$/.test(text)) {
    const plain = text.replaceAll(',', '');
    const asDecimal = /^[-+]?\d+,\d{3}$/.test(text)
      ? `, or \`${text.replace(',', '.')}\` if the comma is a decimal comma`
      : '';
    return misreads(`\`${written}\` has a comma in the number`, `write \`${plain}\`${asDecimal}`);
  }
  if (/^[-+]?\d*,\d+$/.test(text))
    return misreads(`\`${written}\` has a decimal comma`, `write \`${text.replace(',', '.')}\``);
  if (/^[-+]?[\d.]+\s*(-|–|to)\s*[\d.]+$/.test(text))
    return misreads(`\`${written}\` is a range, where one number is needed`);
  if (/^[<>≤≥~≈]/.test(text))
    return misreads(`\`${written}\` is not one number`, 'give the number alone, without < or >');
  if (decimal.test(text)) return misreads(`\`${text.slice(0, 20)}…\` has too many digits`);
  return misreads(`\`${written}\` is not a number`, 'write digits with a decimal point, such as 4.1');
}

/** An exact number as a decimal with at most `places` decimals, without trailing zeros: `33.3333`. */
export function decimalText(number: Exact | Fraction, places = 4): string {
  const fraction = number instanceof Fraction ? number : number.exact;
  const text = fraction.round(places).toString(places);
  return text.includes('(') ? fraction.valueOf().toFixed(places) : text;
}
