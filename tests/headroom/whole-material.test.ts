import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { classify } from '../../src/classify/engine.ts';
import { headroomJson } from '../../src/headroom/headroom-json.ts';
import { headroomText } from '../../src/headroom/headroom-text.ts';
import { apart, linesOfMaterial } from '../../src/headroom/raw-material.ts';
import { rounded, shopAmount } from '../../src/headroom/shop-amount.ts';
import { Exact } from '../../src/quantity/exact.ts';
import { en } from '../../src/words/en/index.ts';
import { readRecord, recordAround } from '../support/cases.ts';
import { inputFor, water } from './_headroom.ts';
import { headroomOfDrum } from './_material.ts';

const agent = { name: 'agent', hazards: ['Skin Corr. 1B'], source: 'test' };
const drum = (percent: unknown) => ({
  name: 'alkali drum',
  density: '1.2 g/mL',
  formula: [{ ...agent, percent }, water],
});
/** 100 lb of the drum in 1000 lb, and 1 % of the same agent by itself. */
const product = (percent: unknown = 20) => [
  { use: drum(percent), amount: '100 lb' },
  { ...agent, percent: 1 },
  water,
];
const asked = { of: 'alkali drum', more: { batch: '1000 lb' } };
const places = (found: {
  readonly breakpoints: readonly { readonly at: Fraction; readonly side: string }[];
}) => found.breakpoints.map(({ at, side }) => `${side} ${at.toFraction()}`);

describe('a whole raw material', () => {
  // Worked by hand from 29 CFR 1910.1200 Tables A.2.3 and A.3.3 (3 % eye, 5 % skin): the agent is 1 + x / 5, so
  // 3 % at x = 10 and 5 % at x = 20. The water of other lines is 89 % beside 10 % of the drum: it ends at x = 99.
  it('counts what other lines bring of its constituents', async () => {
    const found = await headroomOfDrum(product(), asked);
    expect(found.of).toEqual({ name: 'alkali drum', cas: null });
    expect(found.current.map(String)).toEqual(['10', '10']);
    expect(found.domain.map(String)).toEqual(['0', '99']);
    expect(places(found)).toEqual(['at 10', 'at 20']);
  });

  it('is found inside of another raw material', async () => {
    // Half of 200 lb of a premix is the same drum, half is water: the same mixture, and the same limits.
    const premix = { name: 'premix', formula: [{ use: drum(20), percent: 50 }, water] };
    const [, ...others] = product();
    const found = await headroomOfDrum([{ use: premix, amount: '200 lb' }, ...others], asked);
    expect(found.of).toEqual({ name: 'alkali drum', cas: null });
    expect(found.current.map(String)).toEqual(['10', '10']);
    expect(found.domain.map(String)).toEqual(['0', '99']);
    expect(places(found)).toEqual(['at 10', 'at 20']);
  });

  it('ends at the raw material as delivered where all others give way', async () => {
    // The agent is x / 5 + (100 - x) / 90 (1 of the other 90 parts): 3 % at x = 10, 5 % at x = 350/17.
    const found = await headroomOfDrum(product(), { ...asked, others: 'scaled' });
    expect(found.domain.map(String)).toEqual(['0', '100']);
    expect(places(found)).toEqual(['at 10', 'at 350/17']);
  });

  it('takes the worse end of what the supplier gives as a range', async () => {
    // 1 + x / 4 for 25 %: 3 % at x = 8, 5 % at x = 16.
    expect(places(await headroomOfDrum(product([15, 25]), asked))).toEqual(['at 8', 'at 16']);
  });

  it('agrees with a formula that is written with as much of the drum', async () => {
    const found = await headroomOfDrum(product([15, 25]), asked);
    for (const pounds of [79.9, 80, 120, 159.9, 160, 400]) {
      const lines = [{ use: drum([15, 25]), amount: `${pounds} lb` }, ...product().slice(1)];
      const { record, formula, basis, lookup } = await inputFor(lines, asked);
      const percent = new Fraction(pounds).div(10);
      const step = found.steps.find(
        ({ from, to, toInclusive }) =>
          percent.gte(from) && (percent.lt(to) || (toInclusive && percent.equals(to))),
      );
      const codes = (hazards: readonly { hazardClass: string; category: string }[]) =>
        hazards.map(({ hazardClass, category }) => `${hazardClass} ${category}`);
      expect(codes(step!.state.classification.hazards), `${pounds} lb`).toEqual(
        codes(classify(record, formula, basis, lookup).hazards),
      );
    }
  });

  it('is not told where two of that name differ', async () => {
    const lines = [{ use: drum(20), amount: '60 lb' }, { use: drum(10), amount: '40 lb' }, water];
    await expect(headroomOfDrum(lines, asked)).rejects.toThrow('several raw materials');
  });

  it('may be known by its hazards alone', async () => {
    const use = { name: 'mystery', hazards: ['Eye Dam. 1'], source: 'test' };
    // 1 % and 3 %: Table A.3.3.
    expect(places(await headroomOfDrum([{ use, percent: 2 }, water], { of: 'mystery' }))).toEqual([
      'at 1',
      'at 3',
    ]);
  });

  it('is not told where its constituents react', async () => {
    const record = readRecord(recordAround({ formula: product(), ...asked.more }));
    const reacting = {
      ...record,
      reacts: [{ consumes: [], forms: [], at: { file: 'x' }, path: 'reacts[0]' }],
    };
    expect(apart(reacting as never, linesOfMaterial(record, 'ALKALI drum', 'name'))).toMatchObject({
      code: 'headroom-reacts',
    });
  });

  it('that gives nothing else room to give way is refused', async () => {
    await expect(
      headroomOfDrum([{ use: drum(20), percent: 100 }], { of: 'alkali drum', others: 'scaled' }),
    ).rejects.toThrow('alkali drum is all there is');
  });
});

describe('units of the shop', () => {
  it('pounds and gallons per batch, and the ratio', async () => {
    const text = headroomText(await headroomOfDrum(product(), asked), en);
    // A gallon at 1.2 g/mL weighs 1.2 x 3785.411784 / 453.59237 = 10.01449 lb (NIST Handbook 44, Appendix C):
    // 100 lb are 9.98553 gal and 200 lb 19.97107 gal.
    expect(text.split('\n').filter(line => / lb/.test(line))).toEqual([
      'alkali drum in a batch of 1000 lb; limits are rounded down',
      '  now: 100 lb = 9.986 gal; 1 part to 10 parts of the product by weight',
      '  room before it gets worse: less than 100 lb = 9.985 gal more in place of water',
      '  from 10 %: 100 lb = 9.985 gal; 1 part to 10 parts of the product by weight',
      '  from 20 %: 200 lb = 19.97 gal; 1 part to 5 parts of the product by weight',
      '  at most 99 %, where no water of other lines is left: 990 lb = 98.85 gal; 1 part to 1.011 parts of the product by weight',
    ]);
  });

  it('says why there are no gallons, or no amounts', async () => {
    const { density: _, ...without } = drum(20);
    const lines = [{ use: without, percent: 10 }, ...product().slice(1)];
    const [withBatch, bare] = [
      await headroomOfDrum(lines, asked),
      await headroomOfDrum(lines, { of: 'alkali drum' }),
    ].map(found => headroomText(found, en));
    expect(withBatch).toContain('(no gallons: its density is not given)');
    expect(withBatch).toContain('  from 20 %: 200 lb; 1 part to 5 parts');
    expect(bare).toContain('the record gives no size of batch');
    expect(bare).toContain('  from 20 %: 1 part to 5 parts of the product by weight');
  });

  it('text has no fractions, JSON has them', async () => {
    const found = await headroomOfDrum(product(), { ...asked, others: 'scaled' });
    expect(headroomText(found, en)).toContain('about 20.5882 %');
    expect(headroomText(found, en)).not.toMatch(/\d\/\d/);
    const json = JSON.parse(JSON.stringify(headroomJson(found, { name: 'T', code: 'T' }, () => () => ({}))));
    expect(json.breakpoints[1]).toMatchObject({
      exact: '350/17',
      amount: { pounds: { exact: '3500/17' }, onePartTo: { exact: '34/7' }, by: 'weight' },
    });
  });

  it('rounds to the side that crosses no limit', () => {
    const third = new Fraction(100, 3);
    expect([rounded(third, 'down'), rounded(third, 'up'), rounded(third, 'nearest')]).toEqual([
      33.33, 33.34, 33.33,
    ]);
    expect(rounded(new Fraction(123456), 'down')).toBe(123400);
    expect(rounded(new Fraction(0), 'up')).toBe(0);
    const shop = { by: 'weight', batchGrams: Exact.decimal('453592.37'), density: null } as const;
    expect(shopAmount(new Fraction(0), shop).onePartTo).toBeNull();
  });
});
