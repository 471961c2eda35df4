import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { casCheckDigit, isCas } from '../../src/notation/cas.ts';

describe('CAS numbers', () => {
  it('computes the check digits of the worked examples', () => {
    // Chemical Abstracts Service, "Check Digit Verification of CAS Registry Numbers": 107-07-3, sum 33.
    expect(casCheckDigit('107-07')).toBe(3);
    // CAS Client Services: 71-23-8, sum 38. Water 7732-18-5, sum 105.
    expect(casCheckDigit('71-23')).toBe(8);
    expect(casCheckDigit('7732-18')).toBe(5);
  });

  it.each(['7732-18-5', '1310-73-2', '50-00-0', '1333-74-0', '5989-27-5', '2097734-14-8'])(
    'takes %s',
    cas => {
      expect(isCas(cas)).toBe(true);
    },
  );

  it.each([
    '7732-18-4',
    '65966-93-2', // misprint of 65996-93-2 in 29 CFR 1910.1000 Table Z-1
    '1310732',
    '0050-00-0',
    '50-0-0',
    ' 50-00-0',
    '12345678-00-0',
    '',
  ])('refuses "%s"', text => {
    expect(isCas(text)).toBe(false);
  });

  it('finds every number of Annex VI Table 3 sound', () => {
    const rows = parse(readFileSync('hazard-data/sources/substances/annex-vi.csv'), { columns: true }) as {
      cas_no: string;
    }[];
    const numbers = rows.flatMap(row => row.cas_no.match(/\d[\d-]*-\d(?![\d-])/g) ?? []);
    expect(numbers.length).toBeGreaterThan(4000);
    expect(numbers.filter(number => !isCas(number))).toEqual([]);
  });
});
