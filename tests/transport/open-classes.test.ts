import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transportData } from '../../src/draft/draft-transport.ts';
import { Exact } from '../../src/quantity/exact.ts';
import type { TransportInput } from '../../src/transport/input.ts';
import { transport } from '../../src/transport/transport.ts';

const data = transportData();

const hazard = fc.constantFrom(
  ['Skin Corr.', '1B', null],
  ['Skin Corr.', '1', null],
  ['Met. Corr.', '1', null],
  ['Acute Tox.', '2', 'oral'],
  ['Acute Tox.', '4', 'dermal'],
  ['Ox. Liq.', '2', null],
  ['Org. Perox.', 'D', null],
  ['Eye Irrit.', '2', null],
) as fc.Arbitrary<readonly [string, string, 'oral' | 'dermal' | null]>;

/** Classes of which 49 CFR part 173 has one of its own for a liquid. */
const deciding = [
  'Flam. Liq.',
  'Skin Corr.',
  'Met. Corr.',
  'Acute Tox.',
  'Ox. Liq.',
  'Pyr. Liq.',
  'Water-react.',
  'Org. Perox.',
  'Self-react.',
  'Expl.',
];

const temperature = (celsius: number) =>
  ({ kind: 'temperature', celsius: Exact.decimal(celsius), cup: 'closed' }) as const;

const material: fc.Arbitrary<TransportInput> = fc
  .record({
    hazards: fc.uniqueArray(hazard, { maxLength: 3, selector: ([name]) => name }),
    open: fc.uniqueArray(fc.constantFrom(...deciding, 'Carc.'), { maxLength: 3 }),
    flash: fc.constantFrom(null, 'none' as const, -5, 22, 23, 45, 60, 61, 92, 93),
    boil: fc.constantFrom(null, 30, 35, 36, 100),
    percent: fc.constantFrom(1, 5, 12, 25, 60, 100),
    cas: fc.constantFrom(null, '7681-52-9', '67-63-0', '64-19-7', '7722-84-1', '5989-27-5', '127-18-4'),
    millilitres: fc.constantFrom(20, 946, 5000, 20_000, 1_000_000),
  })
  .map(({ hazards, open, flash, boil, percent, cas, millilitres }) => ({
    form: 'liquid' as const,
    hazards: hazards.map(([hazardClass, category, route]) => ({
      hazardClass,
      category,
      route,
      form: null,
      tested: false,
    })),
    // A class is classified or open, not both; a measured flash point settles its own.
    open: open
      .filter(name => !hazards.some(([own]) => own === name) && !(name === 'Flam. Liq.' && flash !== null))
      .map(hazardClass => ({ hazardClass, route: null })),
    ateMix: { oral: null, dermal: null, gas: null, vapour: null, mist: null },
    flashPoint: flash === null ? null : flash === 'none' ? { kind: 'none' as const } : temperature(flash),
    initialBoilingPoint: boil === null ? null : Exact.decimal(boil),
    pH: null,
    density: Exact.decimal(1),
    constituents: [
      {
        name: 'part',
        cas,
        low: Exact.decimal(percent),
        high: Exact.decimal(percent),
        hazards: [],
        water: false,
      },
      {
        name: 'water',
        cas: '7732-18-5',
        low: Exact.decimal(100 - percent),
        high: Exact.decimal(100 - percent),
        hazards: [],
        water: true,
      },
    ],
    pack: { id: 'p', millilitres, grams: null, written: `${millilitres} mL`, count: 4, tareKilograms: 1 },
  }));

describe('any material', () => {
  it('is never not regulated while a class that decides is open', () => {
    fc.assert(
      fc.property(material, input => {
        const { answer } = transport(input, data);
        const open = input.open.some(
          ({ hazardClass }) =>
            deciding.includes(hazardClass) &&
            // Corrosion of skin settles Class 8 with corrosion of metals.
            !(hazardClass === 'Met. Corr.' && input.hazards.some(own => own.hazardClass === 'Skin Corr.')),
        );
        if (answer === 'not-regulated') expect(open).toBe(false);
      }),
      { numRuns: 2000, seed: 49 },
    );
  });

  it('is undecided only with something missing or a combination that the law does not order', () => {
    fc.assert(
      fc.property(material, input => {
        const { answer, missing, because } = transport(input, data);
        if (answer !== 'undecided') return;
        const ids = because.map(({ id }) => id);
        expect(
          missing.length > 0 ||
            ids.includes('no-precedence') ||
            ids.includes('no-generic-entry') ||
            ids.some(id => id.startsWith('package-')),
        ).toBe(true);
      }),
      { numRuns: 2000, seed: 173 },
    );
  });

  it('has a description whose parts are those of its row', () => {
    fc.assert(
      fc.property(material, input => {
        const outcome = transport(input, data);
        for (const each of [outcome, ...outcome.alternatives]) {
          if (each.answer !== 'regulated') continue;
          expect(each.entry).not.toBeNull();
          expect(each.class).toBe(each.entry!.hazardClass);
          expect(each.packingGroup).toBe(each.entry!.packingGroup);
          for (const hazardClass of each.entry!.subsidiary) expect(each.subsidiary).toContain(hazardClass);
        }
      }),
      { numRuns: 2000, seed: 172 },
    );
  });
});
