import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { compositionsOf } from '../../src/classify/ranges/compositions.ts';
import { findConstituent } from '../../src/headroom/find-constituent.ts';
import type { HeadroomInput } from '../../src/headroom/headroom.ts';
import { vary } from '../../src/headroom/variation.ts';
import { indexOf, inputFor, must, water } from './_headroom.ts';

const compositionsIn = ({ record, formula, basis, lookup }: HeadroomInput) =>
  compositionsOf(record, formula, basis, lookup);

const lines = [
  { name: 'alpha', percent: 10, hazards: [], source: 'test' },
  { name: 'beta', cas: '50-00-0', percent: 30, hazards: [], source: 'test' },
  water,
];

async function percentsAt(
  of: string,
  others: 'water' | 'scaled',
  x: Fraction,
): Promise<Record<string, string>> {
  const input = await inputFor(lines, { of });
  const { formula } = must(vary(input.formula, compositionsIn(input), indexOf(input, of), others)).at(x);
  return Object.fromEntries(formula.constituents.map(({ name, high }) => [name, high.exact.toFraction()]));
}

describe('vary', () => {
  it('takes from the water alone', async () => {
    expect(await percentsAt('alpha', 'water', new Fraction(12.5))).toEqual({
      alpha: '25/2',
      beta: '30',
      water: '115/2',
    });
  });

  it('scales all others', async () => {
    // 30 and 60 of 90 share what is left of 100.
    expect(await percentsAt('alpha', 'scaled', new Fraction(25))).toEqual({
      alpha: '25',
      beta: '25',
      water: '50',
    });
  });

  it('leaves out what has come to nothing', async () => {
    expect(await percentsAt('alpha', 'water', new Fraction(70))).toEqual({ alpha: '70', beta: '30' });
    expect(await percentsAt('alpha', 'water', new Fraction(0))).toEqual({ beta: '30', water: '70' });
    expect(await percentsAt('alpha', 'scaled', new Fraction(100))).toEqual({ alpha: '100' });
  });

  it('ends where the water of any corner is used up', async () => {
    const input = await inputFor(
      [{ ...lines[0], percent: [5, 10] }, { ...lines[1], percent: [20, 30] }, water],
      { of: 'alpha' },
    );
    const { domain, at } = must(vary(input.formula, compositionsIn(input), indexOf(input, 'alpha'), 'water'));
    expect(domain.map(each => each.valueOf())).toEqual([0, 70]);
    // The range of the varied constituent is gone; that of the other remains.
    expect(at(new Fraction(7)).formula.chosen).toHaveLength(2);
  });

  it('refuses where nothing can give way', async () => {
    const code = async (
      formula: readonly Record<string, unknown>[],
      of: string,
      others: 'water' | 'scaled',
    ) => {
      const input = await inputFor(formula, { of });
      return vary(input.formula, compositionsIn(input), indexOf(input, of), others).diagnostics.map(
        found => found.code,
      );
    };
    expect(await code(lines, 'water', 'water')).toEqual(['water-for-water']);
    expect(await code([{ ...lines[0], percent: 100 }], 'alpha', 'scaled')).toEqual(['single-constituent']);
    expect(await code([{ ...lines[0], percent: 70 }, lines[1]!], 'alpha', 'water')).toEqual(['no-water']);
  });
});

describe('findConstituent', () => {
  it('by CAS number, by name whatever its case, else what is near', async () => {
    const { formula } = await inputFor(lines, { of: 'alpha' });
    const name = (found: ReturnType<typeof findConstituent>) =>
      'index' in found ? formula.constituents[found.index]!.name : found.near;
    expect(name(findConstituent(formula, '50-00-0'))).toBe('beta');
    expect(name(findConstituent(formula, ' ALPHA '))).toBe('alpha');
    expect(name(findConstituent(formula, 'alpa'))).toEqual(['alpha']);
    expect(name(findConstituent(formula, 'zzz'))).toEqual([]);
  });
});
