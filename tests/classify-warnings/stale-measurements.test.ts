import { expect, it } from 'vitest';
import { staleMeasurements } from '../../src/classify/warnings/stale-measurements.ts';
import { readRecord, recordAround } from '../support/cases.ts';

const told = (measuredOn: string, more: Record<string, unknown>) =>
  staleMeasurements(
    readRecord(
      recordAround({
        formula: [{ name: 'water', percent: 100 }],
        properties: {
          'flash-point': { value: '40 C', 'measured-on': measuredOn },
          pH: { value: 7, 'measured-on': measuredOn },
        },
        ...more,
      }),
    ),
  );

// 29 CFR 1910.1200(g)(5); that a measurement belongs to its formula: common practice, no source.
it('a flash point of the formula before is told, in one line', () => {
  expect(told('revision 2', { revision: '3' })).toHaveLength(1);
  expect(told('2026-01-05', { revised: '2026-02-11' })).toMatchObject([
    { properties: [{ property: 'pH' }, { property: 'flash-point' }] },
  ]);
});

it('and that of this formula is not', () => {
  expect(told('revision 3', { revision: '3' })).toEqual([]);
  expect(told('2026-02-12', { revised: '2026-02-11' })).toEqual([]);
  expect(told('revision 3', {})).toEqual([]);
});
