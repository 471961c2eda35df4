import { describe, expect, it } from 'vitest';
import { childResistant, type PackagedProduct } from '../../src/duties/child-resistant.ts';
import { Exact } from '../../src/quantity/exact.ts';
import { childResistantRules } from '../../src/reference/duties/child-resistant-data.ts';

type Parts = readonly (readonly [name: string, cas: string | null, percent: number | string])[];

const product = (parts: Parts, more: Partial<PackagedProduct> = {}): PackagedProduct => ({
  form: 'liquid',
  viscosity: Exact.decimal('1'),
  density: Exact.decimal('1'),
  grams: 500,
  household: true,
  ...more,
  constituents: parts.map(([name, cas, percent]) => ({
    name,
    cas,
    high: Exact.decimal(percent),
    water: cas === '7732-18-5',
  })),
});

const outcome = (id: string, parts: Parts, more: Partial<PackagedProduct> = {}) =>
  childResistant(product(parts, more), childResistantRules()).find(found => found.id === id)?.outcome ??
  'none';

// Limits of 16 CFR 1700.14(a), below, at and above: "10 percent or more" is met at 10, "more than 5 percent" is not at 5.
describe('child-resistant packaging', () => {
  it.each([
    ['hydroxide', '1310-73-2', 1.99, 'not-required'],
    ['hydroxide', '1310-73-2', 2, 'required'],
    ['hydroxide', '1310-58-3', 2.01, 'required'],
    ['turpentine', '8006-64-2', 9.99, 'not-required'],
    ['turpentine', '8006-64-2', 10, 'required'],
    ['methanol', '67-56-1', 3.99, 'not-required'],
    ['methanol', '67-56-1', 4, 'required'],
    ['sulfuric-acid', '7664-93-9', 9.99, 'not-required'],
    ['sulfuric-acid', '7664-93-9', 10, 'required'],
    ['ethylene-glycol', '107-21-1', 9.99, 'not-required'],
    ['ethylene-glycol', '107-21-1', 10, 'required'],
    ['methyl-salicylate', '119-36-8', 5, 'not-required'],
    ['methyl-salicylate', '119-36-8', 5.01, 'required'],
    ['methacrylic-acid', '79-41-4', 5, 'not-required'],
    ['methacrylic-acid', '79-41-4', 5.01, 'required'],
    ['hydrocarbons', '5989-27-5', 9.99, 'not-required'],
    ['hydrocarbons', '5989-27-5', 10, 'required'],
    ['paint-solvent', '108-88-3', 9.99, 'not-required'],
    ['paint-solvent', '108-88-3', 10, 'required'],
    ['furniture-polish', '64742-47-8', 9.99, 'not-required'],
    ['furniture-polish', '64742-47-8', 10, 'required'],
    ['kindling', '8008-20-6', 9.99, 'not-required'],
    ['kindling', '8008-20-6', 10, 'required'],
  ])('%s: %s at %s %% is %s', (id, cas, percent, expected) => {
    expect(outcome(id, [['part', cas, percent]])).toBe(expected);
  });

  it.each([
    [9.99, 'not-required'],
    [10, 'required'],
  ])('sodium hydroxide in dry form at %s %% is %s', (percent, expected) => {
    expect(outcome('hydroxide-dry', [['lye', '1310-73-2', percent]], { form: 'solid' })).toBe(expected);
  });

  // 16 CFR 1700.14(a), each paragraph that the data hold: just below, at and just above its figure. A package of 100 g at
  // 1 g/mL, so that 1 % is 1000 mg and as much weight to volume. (a)(19): more than 600 mg of sodium bromate, more than
  // 50 mg of potassium bromate; (a)(27): more than 50 mg of fluorine and more than 0.5 %, here as 100 % fluorine by
  // sodium fluoride of 45.25 %.
  const atLeast = ['not-required', 'required', 'required'] as const;
  const above = ['not-required', 'not-required', 'required'] as const;
  const thresholds = [
    ['(2)', 'furniture-polish', '64742-47-8', [9.999, 10, 10.001], atLeast],
    ['(3)', 'methyl-salicylate', '119-36-8', [4.999, 5, 5.001], above],
    ['(5) dry', 'hydroxide-dry', '1310-58-3', [9.999, 10, 10.001], atLeast],
    ['(5) other', 'hydroxide', '1310-73-2', [1.999, 2, 2.001], atLeast],
    ['(6)', 'turpentine', '8006-64-2', [9.999, 10, 10.001], atLeast],
    ['(7)', 'kindling', '8008-20-6', [9.999, 10, 10.001], atLeast],
    ['(8)', 'methanol', '67-56-1', [3.999, 4, 4.001], atLeast],
    ['(9)', 'sulfuric-acid', '7664-93-9', [9.999, 10, 10.001], atLeast],
    ['(11)', 'ethylene-glycol', '107-21-1', [9.999, 10, 10.001], atLeast],
    ['(15)', 'paint-solvent', '1330-20-7', [9.999, 10, 10.001], atLeast],
    ['(18)', 'acetonitrile', '75-05-8', [0.499, 0.5, 0.501], above],
    ['(19) sodium', 'sodium-bromate', '7789-38-0', [0.599, 0.6, 0.601], above],
    ['(19) potassium', 'potassium-bromate', '7758-01-2', [0.0499, 0.05, 0.0501], above],
    // 0.5 / 0.4525 = 1.104972...
    ['(27) liquid', 'fluoride-liquid', '7681-49-4', [1.1, 1.1049, 1.105], above],
    ['(27) solid', 'fluoride', '7681-49-4', [1.1, 1.1049, 1.105], above],
    ['(29)', 'methacrylic-acid', '79-41-4', [4.999, 5, 5.001], above],
    ['(31)', 'hydrocarbons', '5989-27-5', [9.999, 10, 10.001], atLeast],
  ] as const;
  const steps = thresholds.flatMap(([paragraph, id, cas, percents, outcomes]) =>
    percents.map((percent, at) => ({ paragraph, id, cas, percent, expected: outcomes[at]! })),
  );
  it.each(steps)('(a)$paragraph: $id of $percent % is $expected', ({ id, cas, percent, expected }) => {
    const form = id === 'hydroxide-dry' || id === 'fluoride' ? 'solid' : 'liquid';
    const found = outcome(id, [['part', cas, percent]], { form, grams: 100 });
    expect(found === 'none' ? 'not-required' : found).toBe(expected);
  });
  it('has a threshold for every rule of the data', () => {
    expect(new Set(thresholds.map(([, id]) => id))).toEqual(
      new Set(childResistantRules().rules.map(({ id }) => id)),
    );
  });

  it('sums sodium and potassium hydroxide, and hydrocarbons, exactly', () => {
    const lyes: Parts = [
      ['lye', '1310-73-2', '1.9'],
      ['potash', '1310-58-3', '0.1'],
    ];
    expect(outcome('hydroxide', lyes)).toBe('required');
    const oils: Parts = [
      ['limonene', '5989-27-5', '9.9'],
      ['distillate', '64742-47-8', '0.1'],
    ];
    expect(outcome('hydrocarbons', oils)).toBe('required');
  });

  // (a)(31): less than 100 SUS at 100 F; 20.5 mm2/s is the equivalent from memory.
  it.each([
    ['20.4', 'required'],
    ['20.5', 'not-required'],
    [null, 'open'],
  ])('hydrocarbons at a viscosity of %s are %s', (viscosity, expected) => {
    const more = { viscosity: viscosity === null ? null : Exact.decimal(viscosity) };
    expect(outcome('hydrocarbons', [['limonene', '5989-27-5', 45]], more)).toBe(expected);
  });

  // (a)(27): more than 50 mg of fluorine in a package and more than 0.5 % weight to volume; NaF is 45.25 % fluorine.
  it.each([
    [1.1, 500, 1, 'not-required'],
    [1.11, 500, 1, 'required'],
    [1.11, 9, 1, 'not-required'],
    [1.11, 10, 1, 'required'],
    [1, 500, 1.2, 'required'],
  ])('sodium fluoride %s %% in %s g at %s g/mL is %s', (percent, grams, density, expected) => {
    const more = { grams, density: Exact.decimal(density) };
    expect(outcome('fluoride-liquid', [['sodium fluoride', '7681-49-4', percent]], more)).toBe(expected);
  });

  // (a)(18): more than 500 mg of acetonitrile in a container.
  it.each([
    [0.1, 500, 'not-required'],
    [0.101, 500, 'required'],
    [0.101, null, 'open'],
  ])('acetonitrile %s %% in %s g is %s', (percent, grams, expected) => {
    expect(outcome('acetonitrile', [['acetonitrile', '75-05-8', percent]], { grams })).toBe(expected);
  });

  it('a petroleum stream counts by the block of its number', () => {
    expect(outcome('hydrocarbons', [['a naphthenic distillate', '64742-52-5', 30]])).toBe('required');
    expect(outcome('hydrocarbons', [['sodium chloride', '7647-14-5', 30]])).toBe('none');
  });

  it('a constituent without a number may count: open, and named', () => {
    const found = childResistant(
      product([
        ['lye', '1310-73-2', 1.5],
        ['builder blend', null, 3],
      ]),
      childResistantRules(),
    );
    const hydroxide = found.find(({ id }) => id === 'hydroxide')!;
    expect(hydroxide).toMatchObject({ outcome: 'open', missing: ['builder blend'], conditions: ['free'] });
    // 3 % of it cannot be 10 % of sulfuric acid.
    expect(found.map(({ id }) => id)).not.toContain('sulfuric-acid');
  });

  it('keeps the conditions that composition does not say', () => {
    const [found] = childResistant(
      product([['limonene', '5989-27-5', 45]], { household: null }),
      childResistantRules(),
    ).filter(({ id }) => id === 'hydrocarbons');
    expect(found!.conditions).toEqual(['household', 'nonemulsion', 'fhsa-hazardous', 'no-spray-alone']);
    expect(found!.cite).toBe('16 CFR 1700.14(a)(31)');
  });

  it('says nothing of a product that is not sold to households, nor of pressurized sprays where the law excepts them', () => {
    const lye: Parts = [['lye', '1310-73-2', 5]];
    expect(childResistant(product(lye, { household: false }), childResistantRules())).toEqual([]);
    expect(outcome('methanol', [['methanol', '67-56-1', 50]], { form: 'aerosol' })).toBe('none');
    expect(outcome('hydroxide', lye, { form: 'aerosol' })).toBe('required');
  });
});
