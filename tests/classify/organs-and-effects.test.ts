import { describe, expect, it } from 'vitest';
import { labelElements } from '../../src/labelling/elements.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { classifyLines } from '../support/cases.ts';

const line = (name: string, percent: number, ...hazards: readonly string[]) => ({
  name,
  percent,
  hazards,
  source: 'test',
});
const water = { name: 'water', amount: 'balance' };

const shown = async (basis: BasisId, ...lines: readonly Record<string, unknown>[]) => {
  const classification = await classifyLines([...lines, water], basis);
  const { hazardStatements } = labelElements(classification, await loadLabelData(basis), { form: 'liquid' });
  return {
    hazards: classification.hazards.map(({ code, organs }) => [code, ...organs]),
    texts: hazardStatements.map(({ text }) => text),
  };
};

// 29 CFR 1910.1200 App. A, A.9.3.4.1 with Table A.9.3; App. C, C.2.2.1: hazard statements of every hazard, "state all
// organs affected, if known".
describe('an organ that a worker must know of is not lost', () => {
  it('of Category 2 beside Category 1 for another organ', async () => {
    const { hazards, texts } = await shown(
      'us-hcs',
      line('a', 12, 'STOT RE 1 (kidney)'),
      line('b', 12, 'STOT RE 2 (liver)'),
    );
    expect(hazards).toEqual([
      ['STOT RE 1', 'kidney'],
      ['STOT RE 2', 'liver'],
    ]);
    expect(texts).toEqual([
      expect.stringContaining('Causes damage to organs (kidney)'),
      expect.stringContaining('May cause damage to organs (liver)'),
    ]);
  });

  it('and one of Category 2 is not called certain', async () => {
    const { hazards } = await shown('us-hcs', line('a', 12, 'STOT RE 1 (kidney)', 'STOT RE 2 (liver)'));
    expect(hazards).toEqual([
      ['STOT RE 1', 'kidney'],
      ['STOT RE 2', 'liver'],
    ]);
  });

  it('and an organ that is not known leaves no list that reads as complete', async () => {
    const { hazards, texts } = await shown(
      'us-hcs',
      line('a', 12, 'STOT RE 1 (kidney)'),
      line('b', 12, 'STOT RE 1'),
    );
    expect(hazards).toEqual([['STOT RE 1']]);
    expect(texts).toEqual(['Causes damage to organs through prolonged or repeated exposure']);
  });

  // CLP Annex I, Table 3.9.4: Category 1 from 10 %, Category 2 from 1 % of a Category 1 ingredient.
  it('of a second Category 1 ingredient between 1 and 10 % under eu-clp', async () => {
    const { hazards } = await shown(
      'eu-clp',
      line('a', 12, 'STOT RE 1 (kidney)'),
      line('b', 5, 'STOT RE 1 (liver)'),
    );
    expect(hazards).toEqual([
      ['STOT RE 1', 'kidney'],
      ['STOT RE 2', 'liver'],
    ]);
  });

  it('and the same organ is not told twice', async () => {
    const { hazards } = await shown(
      'us-hcs',
      line('a', 12, 'STOT RE 1 (kidney)'),
      line('b', 12, 'STOT RE 2 (kidney)'),
    );
    expect(hazards).toEqual([['STOT RE 1', 'kidney']]);
  });
});

// App. C, C.4 prints H360 "(state specific effect if known)" and H350 "(state route of exposure if …)".
describe('an effect and a route that the supplier names stand in the US statement', () => {
  it.each([
    ['Repr. 1B; H360D', 'May damage the unborn child'],
    ['Repr. 1B; H360F', 'May damage fertility'],
    ['Repr. 2; H361d', 'Suspected of damaging the unborn child'],
    ['Repr. 1B', 'May damage fertility or the unborn child'],
    ['Repr. 1B; H360Fd', 'May damage fertility or the unborn child'],
    ['Carc. 1B; H350i', 'May cause cancer if inhaled'],
    ['Carc. 1B', 'May cause cancer'],
  ])('%s: %s', async (hazard, text) => {
    expect((await shown('us-hcs', line('a', 5, hazard))).texts).toEqual([text]);
  });

  it('and not where another ingredient leaves it open', async () => {
    const { texts } = await shown('us-hcs', line('a', 5, 'Carc. 1B; H350i'), line('b', 5, 'Carc. 2'));
    expect(texts).toEqual(['May cause cancer']);
  });
});
