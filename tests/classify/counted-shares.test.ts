import { describe, expect, it } from 'vitest';
import { classifyLines } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };
const useLimits = [{ reading: 'us-specific-limits', take: 'use', reason: 'data of the supplier' }];
const codes = async (formula: Record<string, unknown>[], choices: Record<string, unknown>[] = []) =>
  (await classifyLines([...formula, water], 'us-hcs', { choices })).hazards.map(({ code }) => code);

// 29 CFR 1910.1200 App. A, Table A.3.3, Note b: 2B only where all relevant ingredients are 2B.
describe('Eye Irrit. 2B', () => {
  const mild = { name: 'mild', percent: 12, hazards: ['Eye Irrit. 2B'] };

  it('is not given by an ingredient that counts by its specific limit alone', async () => {
    const limited = { name: 'a', percent: 5, hazards: ['Skin Sens. 1'], limits: ['Eye Irrit. 2; C >= 5'] };
    expect(await codes([limited], useLimits)).toContain('Eye Irrit. 2A');
    expect(await codes([mild, { ...limited, percent: 4 }], useLimits)).toContain('Eye Irrit. 2A');
  });

  it('is not given where a corrosive ingredient below 1 % counts by its specific limit', async () => {
    const corrosive = { name: 'a', hazards: ['Skin Corr. 1A'], limits: ['Eye Irrit. 2: 0.2 <= C < 10'] };
    expect(await codes([{ ...corrosive, percent: 0.6 }], useLimits)).toEqual(['Eye Irrit. 2A']);
    expect(await codes([mild, { ...corrosive, percent: 0.1 }], useLimits)).toEqual(['Eye Irrit. 2B']);
  });
});

// CLP Annex I, 4.1.3.6.1: the percent is of the mixture, so it is that of one composition within the ranges.
describe('percent with unknown hazards to the aquatic environment', () => {
  it('is not added up from upper ends that cannot meet in one mixture', async () => {
    const { unknownAquatic } = await classifyLines(
      [
        { name: 'known', percent: 5, hazards: [], source: 'supplier' },
        { name: 'a', percent: [2, 7], unknown: ['aquatic'], hazards: [], source: 'supplier' },
        { name: 'b', amount: 'balance', unknown: ['aquatic'], hazards: [], source: 'supplier' },
      ],
      'eu-clp',
    );
    expect(unknownAquatic).toBeCloseTo(95, 12);
  });
});

// 29 CFR 1910.1200 App. A, A.1.3.3(a), A.1.3.6.2.4, C.3.3: "relevant ingredients" may be present below 1 %; the
// statement speaks of those at 1 % or more.
describe('a tenth of unknown acute toxicity', () => {
  const toxic = { name: 'toxic', percent: 10, hazards: ['Acute Tox. 3 (oral)'] };
  const mystery = { name: 'mystery', percent: 9.9, unknown: ['acute-oral'], hazards: [], source: 'supplier' };
  const trace = { ...mystery, name: 'trace', percent: 0.2 };
  const oral = async (...formula: Record<string, unknown>[]) => {
    const { ateMix, unknownAcuteToxicity } = await classifyLines(
      [toxic, mystery, ...formula, water],
      'us-hcs',
    );
    return [ateMix.oral, unknownAcuteToxicity.oral];
  };

  it('is passed with a trace that the record marks as relevant', async () => {
    expect(await oral(trace)).toEqual([1000, 9.9]);
    expect(await oral({ ...trace, relevant: true })).toEqual([899, 9.9]);
  });
});
