import { describe, expect, it } from 'vitest';
import { transportWorking } from '../../src/words/en/transport.ts';
import { transportCondition, transportNeed } from '../../src/words/en/transport-cases.ts';
import { described, type Material, ship } from './_ship.ts';

const solvent = (flash: string, boil?: number, more: Partial<Material> = {}): Material => ({
  flash,
  ...(boil === undefined ? {} : { boil }),
  formula: [
    { name: 'a solvent', percent: 60, hazards: ['Asp. Tox. 1'] },
    { name: 'another solvent', percent: 40, hazards: [] },
  ],
  ...more,
});

const mild: Material = {
  flash: 'none',
  boil: 100,
  pH: 7,
  formula: [{ name: 'a surfactant', percent: 5, hazards: ['Eye Irrit. 2'] }],
};

describe('flash point and boiling point', () => {
  // 49 CFR 173.120, 173.121(a)(1): at most 60 C is Class 3; below 23 C packing group II; at most 35 C boiling is I.
  // 173.120(b): above 60 C and below 93 C is a combustible liquid, not subject in a non-bulk packaging, 173.150(f)(2).
  it.each([
    ['22.9 C', 35.1, '3', 'II'],
    ['23 C', 35.1, '3', 'III'],
    ['60 C', 150, '3', 'III'],
    ['23 C', 35, '3', 'I'],
    ['-10 C', 35, '3', 'I'],
    ['-10 C', 36, '3', 'II'],
  ])('%s and %s C', async (flash, boil, hazardClass, group) => {
    const answer = await ship(solvent(flash, boil));
    expect([answer.class, answer.packingGroup]).toEqual([hazardClass, group]);
    expect(answer.answer).toBe('regulated');
  });

  it.each([
    ['60.1 C', 'combustible-non-bulk'],
    ['92.9 C', 'combustible-non-bulk'],
    ['93 C', 'no-class'],
  ])('%s is not regulated in a bottle: %s', async (flash, reason) => {
    const answer = await ship(solvent(flash, 200));
    expect(answer.answer).toBe('not-regulated');
    expect(answer.because.map(({ id }) => id)).toContain(reason);
  });

  it('a combustible liquid that a metal test may make corrosive has both outcomes', async () => {
    const formula = [
      { name: 'a solvent', percent: 4, hazards: ['Skin Irrit. 2'] },
      { name: 'an amine salt', percent: 2, hazards: ['Skin Corr. 1B'] },
    ];
    const { answer, alternatives } = await ship({ flash: '70 C', pH: 7, formula });
    expect(answer).toBe('undecided');
    expect(alternatives.map(each => [each.answer, each.when[0]!.id])).toEqual([
      ['not-regulated', 'none-of-them'],
      ['regulated', 'corrodes-metal'],
    ]);
    expect(alternatives[0]!.because.map(({ id }) => id)).toContain('combustible-non-bulk');
  });

  // 173.150(f)(1): from 38 C.
  it.each([
    ['37.9 C', false],
    ['38 C', true],
  ])('%s may be reclassed as combustible: %s', async (flash, may) => {
    const { alternatives } = await ship(solvent(flash, 150));
    const reclassed = alternatives.filter(({ when }) =>
      when.some(({ id }) => id === 'reclassed-combustible'),
    );
    expect(reclassed.map(({ answer }) => answer)).toEqual(may ? ['not-regulated'] : []);
  });

  it('without a boiling point the packing group is open, and each is shown', async () => {
    const answer = await ship(solvent('10 C'));
    expect(answer.answer).toBe('undecided');
    expect(answer.missing.map(({ id }) => id)).toEqual(['initial-boiling-point']);
    expect(answer.alternatives.map(({ packingGroup }) => packingGroup)).toEqual(['II', 'I']);
  });

  it('an open cup does not decide', async () => {
    const answer = await ship(solvent('50 C (open cup)', 150));
    expect(answer.answer).toBe('undecided');
    expect(answer.missing.map(({ id }) => id)).toEqual(['closed-cup-flash-point']);
  });
});

describe('not regulated', () => {
  it('has a reason where every class is settled', async () => {
    const answer = await ship({ ...mild, tests: [{ class: 'Met. Corr.', result: 'not classified' }] });
    expect(answer.answer).toBe('not-regulated');
    expect(answer.because.map(({ id }) => id)).toContain('no-class');
    expect(answer.missing).toEqual([]);
  });

  it('is never given while a class is open', async () => {
    const answer = await ship({
      ...mild,
      formula: [...mild.formula, { name: 'a blend nobody knows', percent: 2 }],
    });
    expect(answer.answer).toBe('undecided');
    expect(answer.missing.length).toBeGreaterThan(0);
    const free = answer.alternatives.filter(other => other.answer === 'not-regulated');
    expect(free.map(({ when }) => when.map(({ id }) => id))).toEqual([['none-of-them']]);
    expect(answer.alternatives.some(other => other.class === '8')).toBe(true);
  });

  it('a mixture without a flash point is undecided', async () => {
    const answer = await ship({ formula: [{ name: 'propan-2-ol', cas: '67-63-0', percent: 15 }], boil: 90 });
    expect(answer.answer).toBe('undecided');
    expect(answer.missing.map(({ id }) => id)).toContain('flash-point');
  });
});

describe('an entry for other modes', () => {
  // UN1910 has the symbol A (49 CFR 172.101, Column 1): subject by aircraft alone.
  it('calcium oxide is not regulated by highway', async () => {
    const answer = await ship({
      form: 'solid',
      formula: [
        {
          name: 'calcium oxide',
          cas: '1305-78-8',
          percent: 100,
          hazards: ['Skin Irrit. 2', 'Eye Dam. 1'],
        },
      ],
    });
    expect(answer.answer).toBe('not-regulated');
    expect(answer.because.map(({ id }) => id)).toContain('other-modes-alone');
    expect(answer.alternatives.map(described)[0]).toBe('UN1910, Calcium oxide, 8, III');
  });
});

describe('a range of concentration', () => {
  const peroxide = (percent: readonly [number, number]): Material => ({
    flash: 'none',
    boil: 100,
    formula: [{ name: 'hydrogen peroxide', cas: '7722-84-1', percent }],
  });

  // UN2984 runs from 8 % to below 20 %, UN2014 from 20 % (49 CFR 172.101).
  it('that entries divide is undecided, with the answer at both ends', async () => {
    const answer = await ship(peroxide([15, 25]));
    expect(answer.answer).toBe('undecided');
    expect(answer.missing[0]!.id).toBe('concentration');
    expect(answer.alternatives.map(({ entry }) => entry?.id)).toEqual(['UN2984', 'UN2014']);
  });

  it('within one entry is that entry', async () => {
    expect((await ship(peroxide([21, 39]))).entry?.id).toBe('UN2014');
  });
});

describe('corrosion', () => {
  // 49 CFR 173.137(c)(2); 173.154(d)(1): aluminum alone, packing group III.
  it('of metals alone is Class 8, packing group III, with the exception for aluminum', async () => {
    const answer = await ship({
      ...mild,
      formula: [{ name: 'a builder', percent: 5, hazards: ['Eye Irrit. 2'] }],
      tests: [{ class: 'Met. Corr.', result: 'Met. Corr. 1' }],
    });
    expect([answer.class, answer.packingGroup]).toEqual(['8', 'III']);
    const exception = answer.alternatives.find(({ when }) => when[0]!.id === 'aluminum-alone');
    expect(exception?.answer).toBe('not-regulated');
  });

  it('of skin by calculation asks for the test and shows the other packing groups', async () => {
    const answer = await ship({
      flash: 'none',
      boil: 100,
      pH: 13,
      formula: [{ name: 'sodium hypochlorite', cas: '7681-52-9', percent: 12 }],
    });
    expect(described(answer)).toBe('UN1791, Hypochlorite solutions, 8, II');
    expect(answer.missing.map(({ id }) => id)).toEqual(['skin-corrosion-test']);
    expect(answer.alternatives.map(described)).toContain('UN1791, Hypochlorite solutions, 8, III');
  });

  it('of skin without a subcategory leaves the packing group open', async () => {
    const answer = await ship({
      flash: 'none',
      boil: 100,
      formula: [{ name: 'a corrosive blend', percent: 20, hazards: ['Skin Corr. 1'] }],
    });
    expect(answer.answer).toBe('undecided');
    const described8 = answer.alternatives.filter(({ entry }) => entry?.id === 'UN1760');
    expect(described8.map(({ packingGroup }) => packingGroup)).toEqual(['I', 'II', 'III']);
  });
});

describe('limited quantities', () => {
  const acid = (contents: string, count: number, category: string): Material => ({
    flash: 'none',
    boil: 100,
    pH: 1,
    density: 1.1,
    contents,
    count,
    formula: [{ name: 'hydrochloric acid', cas: '7647-01-0', percent: 15 }],
    tests: [{ class: 'Skin Corr.', result: `Skin Corr. ${category}` }],
  });

  // 49 CFR 173.154(b): 1 L in packing group II, 5 L in III, 30 kg gross.
  it.each([
    ['1 L', 12, '1B', true],
    ['1.01 L', 12, '1B', false],
    ['5 L', 4, '1C', true],
    ['5.01 L', 4, '1C', false],
    ['1 L', 27, '1B', false],
    ['1 gal', 4, '1B', false],
  ])('%s, %s in a case, category %s: %s', async (contents, count, category, allowed) => {
    const { limitedQuantity } = await ship(acid(contents, count, category));
    expect(limitedQuantity?.allowed).toBe(allowed);
    expect(limitedQuantity?.grossLimit).toBe('30 kg');
  });

  // Column 8A of 172.101: None for packing group I of Class 8, 150 for packing group I of Class 3.
  it('none in Class 8 packing group I, 0.5 L in Class 3', async () => {
    const corrosive = await ship({ ...acid('0.1 L', 1, '1A') });
    expect(corrosive.limitedQuantity).toMatchObject({ allowed: false, innerLimit: null });
    const flammable = await ship(solvent('-30 C', 30, { contents: '0.5 L' }));
    expect(flammable.limitedQuantity).toMatchObject({ allowed: true, innerLimit: '0.5 L' });
  });
});

describe('excepted quantities', () => {
  // 49 CFR 173.4a(b), (c), (d): 30 mL inside, 500 mL outside in packing group II; passenger aircraft not forbidden.
  it.each([
    ['30 mL', 16, true],
    ['30.1 mL', 16, false],
    ['30 mL', 17, false],
  ])('acetone in %s, %s in a case: %s', async (contents, count, may) => {
    const { alternatives } = await ship({
      flash: '-20 C',
      boil: 56,
      contents,
      count,
      formula: [{ name: 'acetone', cas: '67-64-1', percent: 100 }],
    });
    const found = alternatives.filter(({ when }) => when[0]!.id === 'excepted-quantity');
    expect(found.map(({ answer }) => answer)).toEqual(may ? ['not-regulated'] : []);
  });
});

describe('marine pollutants', () => {
  // 49 CFR 171.8: 10 %, or 1 % of a severe marine pollutant; Appendix B to 172.101 lists both.
  it.each([
    ['tetrachloroethylene', '127-18-4', 10, true],
    ['tetrachloroethylene', '127-18-4', 9.9, false],
    ['cupric sulfate', '7758-98-7', 1, true],
    ['cupric sulfate', '7758-98-7', 0.9, false],
  ])('%s (%s) %s %%: %s', async (name, cas, percent, expected) => {
    const answer = await ship({ flash: 'none', boil: 100, formula: [{ name, cas, percent }] });
    expect(answer.marinePollutant).toBe(expected);
  });
});

describe('words', () => {
  it('stand for every fact of these answers', async () => {
    const materials: Material[] = [
      mild,
      solvent('10 C'),
      solvent('45 C', 150),
      solvent('70 C', 150),
      { ...mild, formula: [{ name: 'a blend nobody knows', percent: 50 }] },
      { ...mild, form: 'aerosol' },
    ];
    for (const material of materials) {
      const answer = await ship(material);
      for (const fact of answer.because)
        expect(transportWorking(fact)).not.toMatch(/undefined|unknown [a-z]+Limit/);
      for (const item of answer.missing) expect(transportNeed(item)).not.toContain('undefined');
      for (const { when, because } of answer.alternatives) {
        for (const fact of when) expect(transportCondition(fact)).not.toContain('undefined');
        for (const fact of because) expect(transportWorking(fact)).not.toContain('undefined');
      }
    }
  });
});
