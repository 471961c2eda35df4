import type { NumberReading, NumberReport } from './gtin.ts';

/** A report in words, a line each, first the verdict. */
export function gtinText(report: NumberReport): string[] {
  const { input, problem, readings, otherwise } = report;
  switch (problem) {
    case 'empty':
      return ['no number given'];
    case 'not-digits':
      return [`${input}: not a number; only digits, spaces and hyphens may stand in it`];
    case 'length':
      return [lengthText(input)];
    case 'check-digit':
      return [...readings.flatMap(wrongCheckDigit), ...otherwise.map(missingCheckDigit)];
    default:
      return readings.flatMap(rightNumber);
  }
}

function lengthText(input: string): string {
  const digits = input.replace(/\D/g, '').length;
  return `${input}: ${digits} digits make no GTIN-8, 12, 13 or 14, no UPC-E and no SSCC`;
}

function wrongCheckDigit(reading: NumberReading): string[] {
  const { kind, given, checkDigit, completed, transpositions } = reading;
  const lines = [
    `${given}: as ${kind} the check digit is wrong: ${checkDigit.given} should be ${checkDigit.right} (${completed})`,
  ];
  for (const { place, digits } of transpositions) {
    lines.push(`  digits ${place} and ${place + 1} changed over? ${digits} has a right check digit`);
  }
  return lines;
}

const missingCheckDigit = ({ kind, given, completed }: NumberReading): string =>
  `  or, if its check digit is missing: ${given} is ${kind} ${completed} (--complete takes it so)`;

function rightNumber(reading: NumberReading): string[] {
  const { kind, given, completed, checkDigit, forms, upcE, symbols, indicator, contained, prefixes } =
    reading;
  const computed = checkDigit.given === null;
  const lines = [
    computed
      ? `${given}: check digit ${checkDigit.right}, complete ${kind} ${completed}`
      : `${given}: ${kind}, check digit right`,
  ];
  const others = Object.entries(forms ?? {}).filter(([name, value]) => value && name !== kind);
  if (others.length > 0) lines.push(`  also ${others.map(([name, value]) => `${name} ${value}`).join(', ')}`);
  if (kind === 'UPC-E' && forms) lines.push(`  stands for GTIN-12 ${forms['GTIN-12']}`);
  else if (upcE) lines.push(`  UPC-E ${upcE}`);
  else if (forms?.['GTIN-12'] && !forms['GTIN-8']) lines.push('  no UPC-E: its zeros do not allow it');
  lines.push(`  symbol: ${symbols.join(' or ')}`);
  if (indicator === 9) lines.push('  indicator 9: a trade item of variable measure');
  if (contained) lines.push(`  indicator ${indicator}: a grouping; the item inside is ${contained}`);
  for (const { range, meaning } of prefixes) lines.push(`  prefix ${range}: ${meaning}`);
  return lines;
}
