import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classifyLines } from '../support/cases.ts';
import { byFamily, inventedCas, mixture, worsened } from './random-mixtures.ts';

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

describe('any number of ranges', () => {
  const classified = async (formula: readonly Record<string, unknown>[]) => classifyLines(formula, 'eu-clp');

  // CLP 1.1.1.3: where the composition is known as a range, the result must hold for all of it.
  it('is never milder than any mixture within the ranges, and no worse than the worst of their ends', () =>
    fc.assert(
      fc.asyncProperty(
        mixture,
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 5, maxLength: 5 }),
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 }),
        async (parts, widths, places) => {
          const ends = parts.map(({ amount }, i) => [amount, amount + widths[i]! * 300] as const);
          fc.pre(ends.reduce((sum, [, high]) => sum + high, 0) < 100_000);
          const lineAt = (percents: readonly (number | readonly number[])[]) => [
            ...parts.map(({ line }, i) => ({
              name: `Ingredient ${i + 1}`,
              cas: inventedCas(i),
              percent: percents[i]!,
              ...line,
            })),
            water,
          ];
          const ranged = await classified(lineAt(ends.map(pair => pair.map(end => end / 1000))));
          const inside = ends.map(([low, high], i) => (low + Math.round((high - low) * places[i]!)) / 1000);
          expect(worsened(ranged, await classified(lineAt(inside)))).toEqual([]);
          const corners = await Promise.all(
            Array.from({ length: 2 ** ends.length }, (_, bits) =>
              classified(lineAt(ends.map((pair, i) => pair[(bits >> i) & 1]! / 1000))),
            ),
          );
          for (const corner of corners) expect(worsened(ranged, corner)).toEqual([]);
          // What the ranges give is what one of their ends gives.
          const beyond = [...byFamily(ranged)].filter(([family, hazard]) =>
            corners.every(corner => byFamily(corner).get(family)?.code !== hazard.code),
          );
          expect(beyond.map(([family]) => family)).toEqual([]);
        },
      ),
      { numRuns: 150 },
    ));

  // CLP Annex VI, 605-022-00-X: STOT SE 3; H335 from 0.5 to below 5 %; from 5 % Skin Corr. 1B says more.
  it('finds a specific range inside a wider one: glutaral at 0.1 to 10 % irritates the respiratory tract', async () => {
    const lines = [{ name: 'glutaral', cas: '111-30-8', percent: [0.1, 10] }, water];
    const { hazards } = await classified(lines);
    expect(hazards.map(({ code, effect }) => effect ?? code)).toContain('respiratory irritation');
  });

  it('says what the milder ends give', async () => {
    const lines = [{ name: 'lye', percent: [1, 6], hazards: ['Skin Corr. 1B'], source: 'test' }, water];
    const { hazards } = await classifyLines(lines, 'us-hcs');
    expect(hazards.map(({ code, milder }) => [code, milder])).toEqual([
      ['Skin Corr. 1B', 'Skin Irrit. 2'],
      ['Eye Dam. 1', 'Eye Irrit. 2A'],
    ]);
  });

  it('takes forty ranges without a word of warning', async () => {
    const lines = Array.from({ length: 40 }, (_, i) => ({
      name: `irritant ${i}`,
      percent: [0.5, 2],
      hazards: ['Skin Irrit. 2'],
      source: 'test',
    }));
    const { hazards, warnings } = await classified([...lines, water]);
    expect(hazards.map(({ code }) => code)).toEqual(['Skin Irrit. 2']);
    expect(warnings.map(({ id }) => id)).toEqual([]);
  });
});
