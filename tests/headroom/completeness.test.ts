import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { classify } from '../../src/classify/engine.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import { type Headroom, type HeadroomInput, headroom } from '../../src/headroom/headroom.ts';
import { holds } from '../../src/headroom/headroom-text.ts';
import { stateOf } from '../../src/headroom/state.ts';
import type { Others } from '../../src/headroom/variation.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { readRecord, recordAround } from '../support/cases.ts';
import { indexOf, inputFor, must } from './_headroom.ts';

// Here mixtures are made through the record and its amounts, not through the search's own variation.

const hazard = fc.constantFrom(
  'Skin Corr. 1A',
  'Skin Corr. 1B',
  'Skin Corr. 1',
  'Skin Irrit. 2',
  'Eye Dam. 1',
  'Eye Irrit. 2',
  'Acute Tox. 2 (oral)',
  'Acute Tox. 3 (oral)',
  'Acute Tox. 4 (oral)',
  'Acute Tox. 3 (dermal)',
  'Acute Tox. 4 (inhalation: vapour)',
  'Acute Tox. 3 (inhalation: mist)',
  'Skin Sens. 1A',
  'Resp. Sens. 1',
  'Muta. 2',
  'Carc. 2',
  'Repr. 1B; H360FD',
  'Repr. 2; H361d',
  'Lact.',
  'STOT SE 1 (liver)',
  'STOT SE 3 (respiratory irritation)',
  'STOT SE 3 (narcotic effects)',
  'STOT RE 2 (kidney)',
  'Asp. Tox. 1',
  'Aquatic Acute 1',
  'Aquatic Chronic 1',
  'Aquatic Chronic 2',
  'Aquatic Chronic 3',
);
const percent = fc.integer({ min: 1, max: 120 }).map(tenths => tenths / 10);
const cut = fc.constantFrom(0.1, 0.5, 1, 2.5, 7);
const limits: Readonly<Record<string, string>> = {
  'Skin Corr. 1A': 'Skin Corr. 1A; C >= ',
  'Skin Corr. 1B': 'Skin Corr. 1B; C >= ',
  'Skin Irrit. 2': 'Skin Irrit. 2; C >= ',
  'Eye Dam. 1': 'Eye Dam. 1; C >= ',
  'Eye Irrit. 2': 'Eye Irrit. 2; C > ',
  'Skin Sens. 1A': 'Skin Sens. 1A; C > ',
  'Repr. 1B; H360FD': 'Repr. 1B; H360D; C >= ',
  'STOT SE 3 (respiratory irritation)': 'STOT SE 3; H335; C >= ',
};

const substance = fc.record({
  percent,
  hazards: fc.uniqueArray(hazard, { maxLength: 4 }),
  limited: fc.option(cut, { nil: null, freq: 3 }),
  oral: fc.option(fc.integer({ min: 1, max: 60 }), { nil: null, freq: 3 }),
  m: fc.constantFrom(1, 1, 10, 100),
  unknown: fc.option(fc.constantFrom('acute-oral', 'acute-dermal', 'aquatic'), { nil: null, freq: 3 }),
  additive: fc.constantFrom(true, true, true, false),
  silent: fc.constantFrom(false, false, false, false, true),
});
const formula = fc.array(substance, { minLength: 1, maxLength: 5 });

type Line = Record<string, unknown> & { readonly name: string; readonly percent: number };

const linesOf = (drawn: readonly (typeof substance extends fc.Arbitrary<infer T> ? T : never)[]): Line[] =>
  drawn.map((each, i) => ({
    name: `agent ${i}`,
    percent: each.percent,
    ...(each.silent ? {} : { hazards: each.hazards, source: 'test' }),
    ...(each.limited === null
      ? {}
      : { limits: each.hazards.flatMap(name => (limits[name] ? [`${limits[name]}${each.limited}`] : [])) }),
    ...(each.oral === null ? {} : { ate: { oral: `${each.oral * 50} mg/kg` } }),
    'm-factors': { acute: each.m, chronic: each.m },
    ...(each.unknown === null ? {} : { unknown: [each.unknown] }),
    additive: each.additive,
  }));

const properties = { pH: 7, 'flash-point': 'none', 'kinematic-viscosity-40C': '3 mm2/s' };

/** The mixture with x of the first agent: percents with water as the balance, or kilograms of which others stay. */
function mixtureWith(
  lines: readonly Line[],
  x: number,
  others: Others,
): { record: Record<string, unknown>; at: Fraction } {
  const [agent, ...rest] = lines;
  if (others === 'water') {
    const first = x > 0 ? [{ ...agent, percent: x }] : [];
    return {
      record: recordAround({
        properties,
        formula: [...first, ...rest, { name: 'water', amount: 'balance' }],
      }),
      at: new Fraction(String(x)),
    };
  }
  const filler = { name: 'filler', percent: 30, hazards: [], source: 'test' };
  const weighed = [{ ...agent!, percent: x }, ...rest, filler].filter(line => line.percent > 0);
  const stay = [...rest, filler].reduce((sum, line) => sum.add(String(line.percent)), new Fraction(0));
  const mass = new Fraction(String(x));
  return {
    record: recordAround({
      properties,
      formula: weighed.map(({ percent: amount, ...line }) => ({ ...line, amount: `${amount} kg` })),
    }),
    at: mass.div(mass.add(stay)).mul(100),
  };
}

function hazardsAt({ basis, lookup }: HeadroomInput, value: Record<string, unknown>): readonly string[] {
  const record = readRecord(value);
  const { hazards, supplemental } = stateOf(
    classify(record, must(expandFormula(record)), basis, lookup),
    null,
  );
  return [...hazards, ...supplemental];
}

const predicted = ({ steps }: Headroom, x: Fraction): readonly string[] => {
  const holding = steps.filter(step => holds(step, x));
  expect(holding).toHaveLength(1);
  const { hazards, supplemental } = holding[0]!.state;
  return [...hazards, ...supplemental];
};

describe('no state that the steps do not predict', () => {
  for (const basis of ['us-hcs', 'eu-clp', 'un-ghs'] as const satisfies readonly BasisId[])
    for (const others of ['water', 'scaled'] as const)
      it(`${basis}, ${others}: random formulas, dense random percents, and beside and on every breakpoint`, async () => {
        await fc.assert(
          fc.asyncProperty(
            formula,
            fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 25, maxLength: 25 }),
            async (drawn, random) => {
              const lines = linesOf(drawn);
              const start = mixtureWith(lines, lines[0]!.percent, others);
              const { formula: written, ...more } = start.record;
              const input = await inputFor(written as Line[], { of: 'agent 0', basis, more });
              const found = must(headroom(input, indexOf(input, 'agent 0'), others));
              const end = found.domain[1].valueOf();
              expect(found.breakpoints.filter(({ changes }) => changes.length === 0)).toEqual([]);
              const around = found.breakpoints.flatMap(({ at }) => {
                const value = at.valueOf();
                const x = others === 'water' ? value : (value / (100 - value)) * stays(lines);
                return [x, x * (1 - 1e-9), x * (1 + 1e-9)].map(each => Number(each.toPrecision(14)));
              });
              const spread = random.map(each => {
                const part = each / 1_000_000;
                // Half of them evenly, half where cut-offs lie.
                return Number((each % 2 === 0 ? part * end : end * 10 ** (-4 * part)).toPrecision(9));
              });
              for (const x of [lines[0]!.percent, ...around, ...spread]) {
                if (!Number.isFinite(x) || x < 1e-12 || (others === 'water' && x > end)) continue;
                const { record, at } = mixtureWith(lines, x, others);
                expect(hazardsAt(input, record), `at ${x}`).toEqual(predicted(found, at));
              }
            },
          ),
          { numRuns: 10 },
        );
      }, 120_000);
});

const stays = (lines: readonly Line[]): number =>
  lines.slice(1).reduce((sum, line) => sum + line.percent, 30);
