import { describe, expect, it } from 'vitest';
import { gs1CheckDigit, readGtin } from '../../src/quantity/check-digit.ts';

describe('GS1 check digit', () => {
  // GS1, "How to calculate a check digit manually": 629104150021 -> 3; GS1 US example company prefix 0614141.
  it.each([
    ['629104150021', 3],
    ['061414100041', 8],
    ['1061414100041', 5],
    ['9638507', 4],
  ])('%s is completed by %i', (body, digit) => {
    expect(gs1CheckDigit(body)).toBe(digit);
  });

  it('finds every single wrong digit, as a modulo 10 check with weights 3 and 1 does', () => {
    const right = '0614141000418';
    for (let place = 0; place < right.length; place++)
      for (let digit = 0; digit < 10; digit++) {
        const other = right.slice(0, place) + digit + right.slice(place + 1);
        expect(readGtin(other).ok).toBe(other === right);
      }
  });

  it('says which digit would be right, and what is wrong with other texts', () => {
    expect(readGtin('0614141000417')).toMatchObject({
      hint: 'compare every digit; if the others are right, it would end in 8: "0614141000418"',
    });
    expect(readGtin('0-614141-00041-8')).toMatchObject({ hint: 'write the digits alone: "0614141000418"' });
    expect(readGtin('614141000418').ok).toBe(true);
    expect(readGtin('12345')).toMatchObject({ message: 'GTIN `12345` has 5 digits' });
    expect(readGtin('A614141000418').ok).toBe(false);
  });
});
