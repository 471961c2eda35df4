import { describe, expect, it } from 'vitest';
import { classifyLines } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };
const test = (hazardClass: string, result: string, more: Record<string, unknown> = {}) => ({
  class: hazardClass,
  result,
  kind: 'test',
  method: 'study',
  source: 'report',
  ...more,
});

// CLP Annex I, Table 3.1.3: one statement for each route and category of acute toxicity.
describe('a test by one route', () => {
  it.each([
    ['oral', 'Acute Tox. 4', 'H302'],
    ['dermal', 'Acute Tox. 3', 'H311'],
    ['inhalation', 'Acute Tox. 2', 'H330'],
  ])('%s beside the result %s gives %s, as in its brackets', async (route, result, statement) => {
    for (const evidence of [
      [test('Acute Tox.', result, { route })],
      [test('Acute Tox.', `${result} (${route})`)],
    ]) {
      const { hazards } = await classifyLines([water], 'us-hcs', { evidence });
      expect(hazards).toMatchObject([{ code: result, route, statements: [statement] }]);
    }
  });
});

// 29 CFR 1910.1200 App. A, A.8.2.2: the two effects of Category 3; neither replaces Categories 1 and 2.
describe('a test that gives STOT SE 3', () => {
  const toxic = { name: 'a', percent: 20, hazards: ['STOT SE 1 (kidney)'], source: 'supplier' };

  it('is not used without its effect, and that is told', async () => {
    const evidence = [test('STOT SE', 'STOT SE 3')];
    const { hazards, warnings } = await classifyLines([toxic, water], 'us-hcs', { evidence });
    expect(hazards.map(({ code }) => code)).toEqual(['STOT SE 1']);
    expect(warnings).toContainEqual(
      expect.objectContaining({ id: 'evidence-not-used', text: expect.stringContaining('names no effect') }),
    );
  });

  it('is used with its effect', async () => {
    const evidence = [test('STOT SE', 'STOT SE 3 (narcotic effects)')];
    const { hazards } = await classifyLines([toxic, water], 'us-hcs', { evidence });
    expect(hazards.map(({ statements }) => statements)).toEqual([['H370'], ['H336']]);
  });
});
