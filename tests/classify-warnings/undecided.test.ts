import { describe, expect, it } from 'vitest';
import type { BasisId } from '../../src/reference/basis.ts';
import { classifyLines } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };
const ethanol = (percent: number) => ({ name: 'ethanol', cas: '64-17-5', percent });
const kerosine = (percent: number) => ({
  name: 'kerosine',
  percent,
  hazards: ['Asp. Tox. 1', 'Flam. Liq. 3'],
  source: 'test',
});

const told = async (
  id: string,
  lines: readonly Record<string, unknown>[],
  more: Record<string, unknown> = {},
  basis: BasisId = 'us-hcs',
) =>
  (await classifyLines([...lines], basis, more)).warnings
    .filter(warning => warning.id === id)
    .map(({ text }) => text);

// 29 CFR 1910.1200(d)(2): the full range of available evidence; App. B, Table B.6.1 needs a flash point, App. A,
// A.10.3.3.2.1 a viscosity.
describe('a class that an ingredient leaves open is told', () => {
  it('of a flammable product without a flash point', async () => {
    const [text] = await told('undecided-with-cause', [ethanol(90), water]);
    expect(text).toContain('Flam. Liq.: not decided, although ethanol');
    expect(text).toContain('flash point');
  });

  it('of a thin solvent without a viscosity', async () => {
    const texts = await told('undecided-with-cause', [kerosine(90), water], {
      properties: { 'flash-point': '45 C (closed cup)' },
    });
    expect(texts).toHaveLength(1);
    expect(texts[0]).toContain('Asp. Tox.: not decided');
    expect(texts[0]).toContain('viscosity');
  });

  it('in one line for classes that wait for the same', async () => {
    const texts = await told('undecided-with-cause', [
      { name: 'a', percent: 20, hazards: ['Ox. Liq. 2', 'Org. Perox. D', 'Self-react. C'], source: 'test' },
      water,
    ]);
    expect(texts).toHaveLength(1);
    expect(texts[0]).toMatch(/Self-react\., .*Ox\. Liq\./);
  });

  it('and not where nothing points to it, or where it is decided', async () => {
    expect(await told('undecided-with-cause', [water])).toEqual([]);
    expect(
      await told('undecided-with-cause', [ethanol(90), water], {
        properties: { 'flash-point': '17 C (closed cup)', 'initial-boiling-point': '78 C' },
      }),
    ).toEqual([]);
  });
});

// App. A, A.10.2 and App. B, B.6.2 classify substances: a product that is one substance has its class.
describe('a single substance keeps its class without a measurement', () => {
  const codes = async (line: Record<string, unknown>, basis: BasisId) =>
    (await classifyLines([line], basis)).hazards.map(({ code }) => code);

  it.each(['us-hcs', 'eu-clp', 'un-ghs'] as const)('under %s', async basis => {
    expect(await codes(ethanol(100), basis)).toContain('Flam. Liq. 2');
    expect(await codes(kerosine(100), basis)).toContain('Asp. Tox. 1');
  });
});

describe('a measurement that cannot be true beside the ingredients is a question', () => {
  const doubted = (lines: readonly Record<string, unknown>[], properties: Record<string, unknown>) =>
    told('doubtful-measurement', lines, { properties });

  // Flash point of ethanol 90 %: 17 C (from memory).
  it.each(['none', '95 C (closed cup)'])('flash point %s with 90 %% ethanol', async flash => {
    const [text] = await doubted([ethanol(90), water], { 'flash-point': flash });
    expect(text).toContain('90 % ethanol');
  });

  it('and none with 5 %, or a low one', async () => {
    expect(await doubted([ethanol(5), water], { 'flash-point': 'none' })).toEqual([]);
    expect(await doubted([ethanol(90), water], { 'flash-point': '17 C' })).toEqual([]);
  });

  it('a neutral pH with an acid and nothing against it', async () => {
    const acid = { name: 'sulfuric acid', cas: '7664-93-9', percent: 4 };
    const [text] = await doubted([acid, water], { pH: 7 });
    expect(text).toContain('4 % sulfuric acid');
    const soda = { name: 'sodium carbonate', cas: '497-19-8', percent: 5 };
    expect(await doubted([acid, soda, water], { pH: 7 })).toEqual([]);
    expect(await doubted([acid, water], { pH: 1 })).toEqual([]);
  });
});

describe('a category that the basis has not is told', () => {
  // App. A, A.2.2: Categories 1 and 2 alone.
  it('and no rule drops it', async () => {
    const line = { name: 'a', percent: 50, hazards: ['Skin Irrit. 3'], source: 'test' };
    expect((await told('category-not-in-basis', [line, water]))[0]).toContain('has no Skin Irrit. 3');
    expect(await told('category-not-in-basis', [line, water], {}, 'un-ghs')).toEqual([]);
  });
});
