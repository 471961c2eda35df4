import { describe, expect, it } from 'vitest';
import {
  bracketed,
  dataCharacters,
  type ElementString,
  elementDate,
  elementFaults,
  inSymbolOrder,
} from '../../src/barcode/element-strings.ts';
import { makeSscc } from '../../src/barcode/sscc.ts';
import { encodeSymbol } from '../../src/barcode/symbols.ts';
import { gs1CheckDigit } from '../../src/quantity/check-digit.ts';

/** Bars and spaces module by module, as 1 and 0. */
const modules = async (text: string) => {
  const { bars, spec } = await encodeSymbol('GS1-128', text, 'general-distribution');
  const row = Array.from({ length: spec.modules }, () => '0');
  for (const { x, width } of bars) row.fill('1', x, x + width);
  return row.join('');
};

describe('GS1-128', () => {
  // Figures of GS1 General Specifications 20.0 with their modules, as transcribed in the tests of the open encoder
  // zint (backend/tests/test_code128.c, "verified manually"), read 2026-11.
  it.each([
    [
      '5.1-3',
      '(01)09501101530003',
      '11010011100111101011101100110110011001001000110001011101100010010011001101100110111011101101100110010010011000100110100001100011101011',
    ],
    [
      '5.4.2-1',
      '(00)395123451234567895',
      '110100111001111010111011011001100110100010001101110100011101101110101110110001011001110010001011000111000101101100001010010111101000101111000101100011101011',
    ],
    [
      '6.6.5-1',
      '(00)006141411234567890',
      '110100111001111010111011011001100110110011001100100001011000100010110001000101011001110010001011000111000101101100001010011011110110110110110001100011101011',
    ],
    [
      '6.6.5-2, bottom',
      '(00)395011015300000011',
      '110100111001111010111011011001100110100010001100010111011000100100110011011001101110111011011001100110110011001101100110011000100100100011101101100011101011',
    ],
    [
      '6.6.5-5, bottom',
      '(00)000521775138957172',
      '110100111001111010111011011001100110110011001000100110011011100100111101110101101110100010001100010101111010001001101000010011000010110011011001100011101011',
    ],
    [
      '6.6.5-6',
      '(00)395011010013000129',
      '110100111001111010111011011001100110100010001100010111011000100100110011011001101100110010011011100110110011001100110110011100110010111101101101100011101011',
    ],
    [
      '6.6.5-7, bottom',
      '(00)093123450000000012',
      '110100111001111010111011011001100110010010001101100011011101101110101110110001101100110011011001100110110011001101100110010110011100110111010001100011101011',
    ],
    [
      '6.6.5-4, top',
      '(02)00614141000418(15)210228(10)451214(37)20',
      '110100111001111010111011001100110110110011001100100001011000100010110001000101101100110010010001100110011100101011100110011011100100110011001101110011010011001000100101110110001011001110010011001110111101011101000110100011001001110100011110101100011101011',
    ],
    [
      '7.8.5.2-1, second',
      '(10)123456',
      '110100111001111010111011001000100101100111001000101100011100010110110010000101100011101011',
    ],
  ])('figure %s: %s', async (_, text, expected) => {
    expect(await modules(text)).toBe(expected);
  });

  it('refuses a wrong check digit within', async () => {
    await expect(encodeSymbol('GS1-128', '(01)10614141000416', 'general-distribution')).rejects.toThrow();
  });
});

describe('ITF-14', () => {
  /** Narrow and wide bars and spaces in turn. */
  const elements = async (gtin: string) => {
    const { bars } = await encodeSymbol('ITF-14', gtin, 'general-distribution');
    return bars
      .flatMap(({ x, width }, at) => {
        const next = bars[at + 1];
        return [width, ...(next ? [next.x - x - width] : [])];
      })
      .map(width => (width > 1.5 ? 'W' : 'N'))
      .join('');
  };

  // Figures of GS1 General Specifications with their modules, wide elements of three, as transcribed in the tests of
  // the open encoder zint (backend/tests/test_2of5.c), read 2026-11.
  it.each([
    [
      '5.1-2',
      '0950110153000',
      '3',
      '101010100011101110001011101011100010001011100010101011100010001011101110100011100010001110101010101110001110001010001000111011101011101',
    ],
    [
      '5.3.2.4-1',
      '1540014128876',
      '3',
      '101011100010100010111010101110001000111010001011101110100010001011101011100010001110101000111011101010111000100010001110001110101011101',
    ],
    [
      '5.3.6-1',
      '0950110153001',
      '0',
      '101010100011101110001011101011100010001011100010101011100010001011101110100011100010001110101010101110001110001011101010001000111011101',
    ],
  ])('figure %s: %s and check digit %s', async (_, body, check, modules) => {
    expect(gs1CheckDigit(body)).toBe(Number(check));
    const expected = modules.replace(/1+|0+/g, run => (run.length === 3 ? 'W' : 'N'));
    expect(await elements(`${body}${check}`)).toBe(expected);
  });
});

describe('element strings', () => {
  const elements: ElementString[] = [
    { ai: '10', value: '451214' },
    { ai: '02', value: '00614141000418' },
    { ai: '15', value: elementDate('2021-02-28') },
    { ai: '37', value: '20' },
  ];

  it('put those of a predefined length first', () => {
    // Order and text of figure 6.6.5-4 of GS1 General Specifications 20.0.
    expect(bracketed(inSymbolOrder(elements))).toBe('(02)00614141000418(15)210228(10)451214(37)20');
  });

  it('count separators as data', () => {
    // 16 + 8 + 8 characters, one separator after the batch, 4 characters.
    expect(dataCharacters(inSymbolOrder(elements))).toBe(16 + 8 + 8 + 1 + 4);
  });

  it.each([
    [{ ai: '10', value: '' }, 'length'],
    [{ ai: '10', value: 'A'.repeat(21) }, 'length'],
    // A space and a letter with an accent are outside of character set 82 (GS1 General Specifications 7.11).
    [{ ai: '10', value: 'LOT 7' }, 'characters'],
    [{ ai: '10', value: 'Lé7' }, 'characters'],
    [{ ai: '01', value: '10614141000416' }, 'check-digit'],
    [{ ai: '17', value: '270230' }, 'date'],
    [{ ai: '17', value: '271301' }, 'date'],
    [{ ai: '37', value: '2O' }, 'characters'],
  ] as const)('%j: %s', (element, problem) => {
    expect(elementFaults([element]).map(fault => fault.problem)).toEqual([problem]);
  });

  it('take day 00, leap days and right numbers', () => {
    const right: ElementString[] = [
      { ai: '17', value: '270200' },
      { ai: '17', value: '280229' },
      { ai: '00', value: '395123451234567895' },
      { ai: '10', value: 'AB-12/3_4' },
    ];
    expect(elementFaults(right)).toEqual([]);
  });
});

describe('SSCC', () => {
  // Figures 5.4.2-1, 6.6.5-1, 6.6.5-2 and 6.6.5-6 of GS1 General Specifications 20.0 (as above); how their digits part
  // into prefix and serial reference is assumed.
  it.each([
    ['3', '9512345', '123456789', '395123451234567895'],
    ['0', '0614141', '123456789', '006141411234567890'],
    ['3', '950110153', '1', '395011015300000011'],
    ['3', '950110100', '1300012', '395011010013000129'],
    // Figures 6.6.5-5 and 6.6.5-7.
    ['0', '0052177', '513895717', '000521775138957172'],
    ['0', '9312345', '1', '093123450000000012'],
  ])('%s %s %s', (extension, prefix, serial, sscc) => {
    expect(makeSscc(extension, prefix, serial)).toEqual({ sscc, problem: null });
  });

  it.each([
    ['x', '0614141', '1', 'extension'],
    ['0', '061', '1', 'prefix'],
    ['0', '0614141', '1234567890', 'serial'],
    ['0', '0614141', '', 'serial'],
  ])('%s %s %s: wrong %s', (extension, prefix, serial, problem) => {
    expect(makeSscc(extension, prefix, serial)).toEqual({ sscc: null, problem });
  });
});
