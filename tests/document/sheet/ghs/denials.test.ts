import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import forbidden from '../../../../hazard-data/eu-clp/sheet/forbidden.json' with { type: 'json' };
import { forbiddenFindings } from '../../../../src/document/sheet/ghs/claims.ts';
import { sheetJson } from '../../../../src/document/sheet.ts';
import { inputAround } from '../sheet-input.ts';

// Regulation (EC) No 1907/2006, Annex II, 0.2.4 (read): statements that no sheet may make.

const hazards = [
  'Skin Corr. 1B',
  'Skin Irrit. 2',
  'Eye Dam. 1',
  'Flam. Liq. 2',
  'Acute Tox. 3 (oral)',
  'Skin Sens. 1A',
  'STOT SE 3 (narcotic effects)',
  'Carc. 1B',
  'Asp. Tox. 1',
  'Aquatic Chronic 1',
];
const line = fc.oneof(
  fc.record({
    name: fc.nat(99).map(n => `trial ${n}`),
    percent: fc.integer({ min: 1, max: 9 }),
    hazards: fc.uniqueArray(fc.constantFrom(...hazards), { maxLength: 3 }),
    source: fc.constant('test'),
  }),
  fc.record({ name: fc.nat(99).map(n => `unknown ${n}`), percent: fc.integer({ min: 1, max: 9 }) }),
);
const record = fc.record({
  form: fc.constantFrom('liquid', 'solid', 'aerosol'),
  properties: fc.oneof(
    fc.constant({}),
    fc.record({ pH: fc.integer({ min: 0, max: 14 }) }),
    fc.constant({ 'flash-point': 'none' }),
  ),
  formula: fc
    .uniqueArray(line, { minLength: 1, maxLength: 5, selector: ({ name }) => name })
    .map(lines => [...lines, { name: 'water', cas: '7732-18-5', amount: 'balance' }]),
});

describe.each(['eu-clp', 'un-ghs'] as const)('no sheet of %s', basis => {
  it('denies a hazard', async () => {
    const seen = { unclassified: 0, undecided: 0, aquatic: 0 };
    await fc.assert(
      fc.asyncProperty(record, async parts => {
        const input = await inputAround(parts, {}, basis);
        const { hazards: found, otherClasses } = input.classification;
        const { sections } = sheetJson(input);
        const text = JSON.stringify(sections);
        for (const phrase of [...forbidden.phrases, ...forbidden.others])
          expect(text.toLowerCase()).not.toMatch(new RegExp(`(?<![a-z])${phrase}(?![a-z])`, 'u'));
        const open = otherClasses.filter(({ outcome }) => outcome === 'insufficient-data');
        if (/does not meet the criteria for classification/u.test(text)) {
          seen.unclassified += 1;
          expect(found.length + open.length).toBe(0);
        }
        // Undecided classes stand by name in section 2, and no line says of them that criteria are not met.
        if (open.length > 0) {
          seen.undecided += 1;
          expect(JSON.stringify(sections[1])).toContain('Not enough data to decide');
        }
        const ecology = JSON.stringify(sections[11]);
        for (const { hazardClass } of found.filter(each => each.hazardClass.startsWith('Aquatic'))) {
          seen.aquatic += 1;
          const title = hazardClass === 'Aquatic Acute' ? 'acute hazard' : 'long-term hazard';
          expect(ecology).not.toMatch(new RegExp(`${title}: Based on`, 'u'));
        }
        // What the Union asks about and nobody has answered stays open.
        if (basis === 'eu-clp')
          for (const [section, key] of [
            [2, 'pbt'],
            [2, 'endocrine'],
            [12, 'pbt-assessment'],
          ] as const)
            expect(sections[section - 1]!.items.find(item => item.key === key)).toMatchObject({
              state: 'open',
            });
      }),
      { numRuns: 60, seed: 7 },
    );
    expect(seen.undecided).toBeGreaterThan(5);
    expect(seen.aquatic).toBeGreaterThan(5);
  });
});

describe("the maker's own words", () => {
  it.each([
    ['This product is harmless to skin.', 'error'],
    ['It may be dangerous.', 'error'],
    ['Safe under most conditions of use.', 'error'],
    ['A non-toxic formula.', 'warning'],
  ] as const)('%s is found under the law of the Union alone', async (text, severity) => {
    const parts = {
      formula: [{ name: 'water', cas: '7732-18-5', percent: 100 }],
      sds: { handling: text },
    };
    expect(forbiddenFindings(await inputAround(parts, {}, 'eu-clp'))).toMatchObject([
      { code: 'forbidden-statement', severity, path: 'sds.handling' },
    ]);
    expect(forbiddenFindings(await inputAround(parts))).toEqual([]);
  });

  it('are left in peace where they say something else', async () => {
    const input = await inputAround(
      {
        formula: [{ name: 'water', cas: '7732-18-5', percent: 100 }],
        sds: { handling: 'Harmlessness was not tested. Hazardous to fish.' },
      },
      {},
      'eu-clp',
    );
    expect(forbiddenFindings(input)).toEqual([]);
  });
});
