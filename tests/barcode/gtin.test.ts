import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { examineNumber, groupingGtin, labelSymbol } from '../../src/barcode/gtin.ts';
import { compressToUpcE, expandUpcE } from '../../src/barcode/upc-e.ts';

const only = (input: string, complete = false) => {
  const report = examineNumber(input, { complete });
  expect(report.readings).toHaveLength(1);
  return { ...report.readings[0]!, problem: report.problem };
};

describe('check digits', () => {
  // GS1 Hong Kong, check digit calculator: worked example of a GTIN-13. GS1 Sweden, "Så beräknas kontrollsiffran".
  // The SSCC 3 7610425 002123456 9 is the example of GS1 General Specifications 7.9 (from memory).
  it.each([
    ['629104150021', '6291041500213', 'GTIN-13'],
    ['730001100001', '7300011000017', 'GTIN-13'],
  ])('completes %s to %s', (body, whole, kind) => {
    expect(only(body, true)).toMatchObject({ kind, completed: whole, valid: true, problem: null });
    expect(only(whole)).toMatchObject({ kind, valid: true, problem: null });
  });

  // Coupon numbers printed with their check digits: GS1 Greece, "The numbering of coupons".
  it.each(['9813765030011', '9828508010106'])('accepts %s and knows it for a coupon', number => {
    const reading = only(number);
    expect(reading.valid).toBe(true);
    expect(reading.prefixes.map(({ kind }) => kind)).toEqual(['coupon']);
  });

  it('accepts an SSCC written in groups', () => {
    expect(only('3 7610425 002123456 9')).toMatchObject({
      kind: 'SSCC-18',
      valid: true,
      symbols: ['GS1-128'],
    });
  });

  it('names the right digit and the neighbours that were changed over', () => {
    const report = examineNumber('6219041500213');
    expect(report.problem).toBe('check-digit');
    const [reading] = report.readings;
    expect(reading!.checkDigit).toEqual({ given: '3', right: '7' });
    expect(reading!.transpositions.map(({ digits }) => digits)).toContain('6291041500213');
  });

  it('finds every single wrong digit and every change of neighbours that do not differ by five', () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^\d{12}$/),
        fc.nat(12),
        fc.integer({ min: 1, max: 9 }),
        (body, at, by) => {
          const whole = only(body, true).completed;
          const wrong = whole.slice(0, at) + ((Number(whole[at]) + by) % 10) + whole.slice(at + 1);
          expect(examineNumber(wrong).problem).toBe('check-digit');
          const [a, b] = [Number(whole[at]), Number(whole[at + 1] ?? whole[at])];
          if (a === b) return;
          const swapped = whole.slice(0, at) + b + a + whole.slice(at + 2);
          const problem = examineNumber(swapped).problem;
          expect(problem).toBe(Math.abs(a - b) === 5 ? null : 'check-digit');
        },
      ),
    );
  });
});

describe('lengths', () => {
  it('sees that 12 digits may be a GTIN-12 or a GTIN-13 without its check digit', () => {
    const report = examineNumber('614141000418');
    expect(report.readings.map(({ kind }) => kind)).toEqual(['GTIN-12']);
    expect(report.otherwise.map(({ kind, completed }) => [kind, completed])).toEqual([
      ['GTIN-13', '6141410004180'],
    ]);
    expect(only('614141000418', true).kind).toBe('GTIN-13');
  });

  it.each([
    ['', 'empty'],
    ['  ', 'empty'],
    ['12a4', 'not-digits'],
    ['-5', 'not-digits'],
    ['١٢٣٤٥٦٧٨', 'not-digits'],
    ['12345', 'length'],
    ['123456789', 'length'],
    ['1234567890123456', 'length'],
  ])('refuses "%s" as %s', (input, problem) => {
    expect(examineNumber(input)).toMatchObject({ problem, readings: [] });
  });

  it('does not complete a number that is as long as any', () => {
    expect(examineNumber('61414100041812', { complete: true }).problem).toBe('length');
  });
});

describe('forms and symbols', () => {
  it('fills up and strips zeros', () => {
    const { forms, symbols } = only('0614141000418');
    expect(forms).toEqual({
      'GTIN-8': null,
      'GTIN-12': '614141000418',
      'GTIN-13': '0614141000418',
      'GTIN-14': '00614141000418',
    });
    expect(symbols).toEqual(['UPC-A']);
  });

  it('goes to a grouping and back', () => {
    expect(groupingGtin('614141000418', 1)).toBe('10614141000415');
    expect(only('10614141000415')).toMatchObject({ indicator: 1, contained: '614141000418' });
    expect(only(groupingGtin('614141000418', 9))).toMatchObject({ indicator: 9, contained: null });
  });

  it.each([
    ['0614141000418', 'UPC-A', '614141000418'],
    ['6291041500213', 'EAN-13', '6291041500213'],
    ['96385074', 'EAN-8', '96385074'],
    ['10614141000415', 'ITF-14', '10614141000415'],
    ['00614141000418', 'UPC-A', '614141000418'],
  ])('labels %s with %s', (gtin, name, digits) => {
    expect(labelSymbol(gtin)).toEqual({ name, digits });
  });
});

describe('UPC-E', () => {
  // The four ranges of the manufacturer's and item number are those of a label printer's manual (section UPC-E);
  // 12300-00064 -> 123643 is its example, 59300-00066 -> 593663 that of a bar code font's manual.
  it.each([
    ['123643', '01230000064'],
    ['593663', '05930000066'],
    ['345670', '03400000567'],
    ['345671', '03410000567'],
    ['345672', '03420000567'],
    ['345673', '03450000067'],
    ['345674', '03456000007'],
    ['345675', '03456700005'],
    ['345679', '03456700009'],
  ])('expands %s to %s', (six, eleven) => {
    expect(expandUpcE(six)).toBe(eleven);
    expect(compressToUpcE(`${eleven}0`)).toBe(six);
  });

  it.each(['614141000418', '012345678905', '112300000640', '012300000110'])(
    'does not compress %s',
    number => {
      const compressed = compressToUpcE(number);
      if (number === '012300000110') expect(compressed).toBe('123113');
      else expect(compressed).toBeNull();
    },
  );

  it('never compresses to another number', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^\d{6}$/), six => {
        const compressed = compressToUpcE(`${expandUpcE(six)}0`);
        expect(compressed && expandUpcE(compressed)).toBe(expandUpcE(six));
      }),
    );
  });

  it('gives both readings of eight digits that are right as GTIN-8 and as UPC-E', () => {
    const { readings } = examineNumber('01234565');
    expect(readings.map(({ kind, valid }) => [kind, valid])).toEqual([
      ['GTIN-8', true],
      ['UPC-E', true],
    ]);
    expect(readings[1]).toMatchObject({ symbols: ['UPC-E', 'UPC-A'], forms: { 'GTIN-12': '012345000065' } });
    expect(examineNumber('01236432').readings.map(({ kind }) => kind)).toEqual(['UPC-E']);
  });
});
