import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { decimalText, readNumber } from '../../src/quantity/number.ts';

const value = (text: string) => {
  const read = readNumber(text);
  return read.ok ? read.value.exact.toFraction() : read.message;
};

describe('readNumber', () => {
  it('reads decimals exactly, as a fraction of whole numbers', () => {
    expect(value('4.1')).toBe('41/10');
    expect(value('0.1')).toBe('1/10');
    expect(value('-20')).toBe('-20');
    expect(value('−20')).toBe('-20');
    expect(value('.5')).toBe('1/2');
    expect(value('1e-3')).toBe('1/1000');
  });

  it.each([
    ['4,1', '`4.1`'],
    ['1,000', '`1000`'],
    ['12,345.5', '`12345.5`'],
  ])('refuses the comma in %s and shows the number with a point', (text, fix) => {
    const read = readNumber(text);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.hint).toContain(fix);
  });

  it.each(['', 'abc', '1 2', '0x1F', '.inf', 'NaN', '1-2', '> 60', '--1', '1e999', '9'.repeat(200)])(
    'refuses %j',
    text => {
      expect(readNumber(text).ok).toBe(false);
    },
  );

  it('never throws', () => {
    fc.assert(fc.property(fc.string(), text => typeof readNumber(text).ok === 'boolean'));
  });
});

describe('decimalText', () => {
  it('rounds to four decimals and drops trailing zeros', () => {
    expect(decimalText(new Fraction(1, 3))).toBe('0.3333');
    expect(decimalText(new Fraction(2, 3))).toBe('0.6667');
    expect(decimalText(new Fraction(104))).toBe('104');
    expect(decimalText(new Fraction('4.50'))).toBe('4.5');
  });
});
