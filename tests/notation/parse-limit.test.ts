import { describe, expect, it } from 'vitest';
import {
  parseLimit,
  parseSupplementalLimit,
  printLimit,
  printSupplementalLimit,
} from '../../src/notation/parse-limit.ts';

const read = (text: string) => {
  const limit = parseLimit(text);
  if (!limit.ok) throw new Error(`${text}: ${limit.message}`);
  const { low, high, ...rest } = limit.value;
  return { ...rest, low: low?.value ?? null, high: high?.value ?? null };
};

// Ranges of CLP Annex VI Table 3: nitric acid, sulphuric acid, sodium hydroxide, cumene hydroperoxide, formic acid.
describe('specific concentration limits', () => {
  it.each([
    ['Skin Corr. 1B; H314: 2 % ≤ C < 5 %', 'Skin Corr. 1B', 'H314', 2, true, 5, false],
    ['Skin Corr. 1B; H314: 5% <= C < 20%', 'Skin Corr. 1B', 'H314', 5, true, 20, false],
    ['Eye Irrit. 2: C >= 5', 'Eye Irrit. 2', null, 5, true, null, false],
    ['Skin Sens. 1B; C >= 1', 'Skin Sens. 1B', null, 1, true, null, false],
    ['STOT SE 3; H335: C >= 1 %', 'STOT SE 3', 'H335', 1, true, null, false],
    ['STOT SE 3 (respiratory irritation): C ≥ 1 %', 'STOT SE 3', 'H335', 1, true, null, false],
    ['STOT SE 3; H335: C < 10 %', 'STOT SE 3', 'H335', null, false, 10, false],
    ['Flam. Liq. 3; H226: C > 85%', 'Flam. Liq. 3', 'H226', 85, false, null, false],
    ['Ox. Liq. 2; H272: C <= 50%', 'Ox. Liq. 2', 'H272', null, false, 50, true],
    ['Repr. 1A; H360D: C >= 0.03%', 'Repr. 1A', 'H360D', 0.03, true, null, false],
    ['Self-react. C; C >= 1 %', 'Self-react. C', null, 1, true, null, false],
    ['Eye Irrit. 2: 5 <= C', 'Eye Irrit. 2', null, 5, true, null, false],
  ] as const)('%s', (text, code, statement, low, lowInclusive, high, highInclusive) => {
    expect(read(text)).toMatchObject({ code, statement, low, lowInclusive, high, highInclusive });
    const limit = parseLimit(text);
    if (limit.ok) expect(read(printLimit(limit.value))).toEqual(read(text));
  });

  it('prints in one way', () => {
    const limit = parseLimit('Skin Corr. 1B;H314:2%<=C<5');
    expect(limit.ok && printLimit(limit.value)).toBe('Skin Corr. 1B; H314: 2 % ≤ C < 5 %');
    const low = parseLimit('Carc. 1B; H350: C>=0.0000001');
    expect(low.ok && printLimit(low.value)).toBe('Carc. 1B; H350: C ≥ 0.0000001 %');
  });

  it.each([
    ['Skin Corr. 1B; H314', 'range'],
    ['Skin Corr. 1B C >= 5', 'range'],
    ['Skin Corr. 1B: 5', 'range'],
    ['Skin Corr. 1B: C = 5', 'C >= 5'],
    ['Skin Corr. 1B: C >= 5 or more', 'C >= 5'],
    ['Skin Corr. 1B: C >= 0,5 %', 'decimal point'],
    ['Skin Corr. 1B: C >= 101 %', 'C >= 5'],
    ['Skin Corr. 1B: C >= 0 %', 'C >= 5'],
    ['Skin Corr. 1B: 5 % <= C < 5 %', '2 % <= C < 5 %'],
    ['Skin Corr. 1B: 8 % <= C < 5 %', '2 % <= C < 5 %'],
    ['Skin Corr. 1B: 8 % <= C >= 5 %', '2 % <= C < 5 %'],
    ['Skin Cor. 1B: C >= 5 %', 'Skin Corr. 1B'],
    ['Skin Corr. 1B; H318: C >= 5 %', 'H314'],
  ])('refuses %s: hint %s', (text, hint) => {
    const limit = parseLimit(text);
    expect(limit).toMatchObject({ ok: false, hint: expect.stringContaining(hint) });
  });
});

// Table 3: sodium hypochlorite 017-011-00-1.
it('reads limits of EUH codes', () => {
  const limit = parseSupplementalLimit('EUH031: C >= 5%');
  expect(limit).toMatchObject({
    ok: true,
    value: { statement: 'EUH031', low: { value: 5 }, lowInclusive: true },
  });
  if (limit.ok) expect(printSupplementalLimit(limit.value)).toBe('EUH031: C ≥ 5 %');
  expect(parseSupplementalLimit('Skin Corr. 1B: C >= 5%').ok).toBe(false);
});
