import { describe, expect, it } from 'vitest';
import { classifyLines } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };

// CLP Article 6, 29 CFR 1910.1200(i): a range is classified at its worse end, each effect and organ by itself.
describe('a range of which both ends give one category', () => {
  it('has the effects of both: H360FD of a range that adds development', async () => {
    const { hazards } = await classifyLines(
      [
        { name: 'a', percent: 1, hazards: ['Repr. 1B; H360F'] },
        { name: 'b', percent: [0.1, 0.5], hazards: ['Repr. 1B; H360D'] },
        water,
      ],
      'eu-clp',
    );
    expect(hazards.map(({ code, statements }) => [code, ...statements])).toEqual([['Repr. 1B', 'H360FD']]);
  });

  it('is H350 where one end has a carcinogen that is not one by inhalation alone', async () => {
    const { hazards } = await classifyLines(
      [
        { name: 'a', percent: 1, hazards: ['Carc. 1B; H350i'] },
        { name: 'b', percent: [0.05, 0.5], hazards: ['Carc. 1B'] },
        water,
      ],
      'eu-clp',
    );
    expect(hazards.map(({ statements }) => statements)).toEqual([['H350']]);
  });

  it('names the organs of both', async () => {
    const { hazards } = await classifyLines(
      [
        { name: 'a', percent: 12, hazards: ['STOT RE 2 (kidney)'] },
        { name: 'b', percent: [0.5, 12], hazards: ['STOT RE 2 (liver)'] },
        water,
      ],
      'us-hcs',
    );
    expect(hazards.map(({ organs }) => [...organs].sort())).toEqual([['kidney', 'liver']]);
  });
});
