import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { looksLikeLotCode, lotCode, readLotCode } from '../../src/batch/lot-code.ts';
import { mod11Radix2 } from '../../src/quantity/check-character.ts';

describe('MOD 11-2 of ISO/IEC 7064', () => {
  // ORCID, "Structure of the ORCID Identifier", gives the first two and names the scheme; the third is the ISNI that its
  // agency prints as an example; the last two are those of ISO 7064 as open libraries of check digits quote them.
  it.each([
    ['000000021825009', '7'],
    ['000000021694233', 'X'],
    ['000000012103268', '3'],
    ['079', 'X'],
    ['0794', '0'],
  ])('%s has the check character %s', (digits, check) => {
    expect(mod11Radix2(digits)).toBe(check);
  });
});

const lots = fc.record({
  made: fc
    .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
    .map(date => date.toISOString().slice(0, 10)),
  number: fc.integer({ min: 1, max: 99 }),
});

describe('a lot code', () => {
  it('is decoded to its batch and day', () => {
    fc.assert(
      fc.property(lots, lot => {
        const code = lotCode(lot);
        expect(code).toMatch(/^\d{8}[\dX]$/);
        expect(looksLikeLotCode(code)).toBe(true);
        expect(readLotCode(code)).toEqual({ ok: true, value: lot });
      }),
    );
  });

  // What the scheme promises (ISO/IEC 7064, 4): single substitutions and single transpositions are found.
  it('shows a wrong digit and two neighbours that changed places', () => {
    fc.assert(
      fc.property(lots, fc.nat({ max: 7 }), fc.nat({ max: 9 }), (lot, at, digit) => {
        const code = lotCode(lot);
        const wrong = `${code.slice(0, at)}${digit}${code.slice(at + 1)}`;
        if (wrong !== code) expect(readLotCode(wrong).ok).toBe(false);
        const swapped = `${code.slice(0, at)}${code[at + 1]}${code[at]}${code.slice(at + 2)}`;
        if (swapped !== code) expect(readLotCode(swapped).ok).toBe(false);
      }),
    );
  });

  it('may be typed with blanks, hyphens and a small x', () => {
    const code = Array.from({ length: 99 }, (_, i) => lotCode({ made: '2026-11-25', number: i + 1 })).find(
      each => each.endsWith('X'),
    )!;
    const typed = `${code.slice(0, 6)}-${code.slice(6, 8)} x`;
    expect(readLotCode(typed)).toEqual(readLotCode(code));
  });

  it.each(['26112501', 'L2026A', '2613250100', ''])('is not %j', text => {
    expect(readLotCode(text).ok).toBe(false);
  });

  it('names no day that is not in the calendar', () => {
    const digits = '26022901';
    const read = readLotCode(`${digits}${mod11Radix2(digits)}`);
    expect(read).toMatchObject({ ok: false, message: expect.stringContaining('2026-02-29') });
  });
});
