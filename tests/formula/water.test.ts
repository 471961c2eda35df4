import { expect, it } from 'vitest';
import { isWater, WATER_CAS, waterDensity } from '../../src/formula/water.ts';
import { casCheckDigit } from '../../src/notation/cas.ts';

// Jones and Harris, J. Res. Natl. Inst. Stand. Technol. 97 (1992) 335: density of air-saturated water, kg/m3.
const jonesHarris = (t: number) =>
  999.85308 + 6.32693e-2 * t - 8.523829e-3 * t ** 2 + 6.943248e-5 * t ** 3 - 3.821216e-7 * t ** 4;

it('has the density of water at 20 C', () => {
  expect(waterDensity.value).toBeCloseTo(jonesHarris(20) / 1000, 4);
});

it('goes by the CAS number where there is one', () => {
  expect(casCheckDigit(WATER_CAS.slice(0, -2))).toBe(Number(WATER_CAS.at(-1)));
  expect(isWater('sodium hydroxide', WATER_CAS)).toBe(true);
  expect(isWater('water', '1310-73-2')).toBe(false);
  expect(isWater('  Deionized  water ', null)).toBe(true);
});
