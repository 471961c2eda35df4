import { expect, it } from 'vitest';
import { countsText, fuzzRecords } from './records.ts';

it('random records are refused or hold every line', () => {
  const counts = fuzzRecords(1, 1500);
  console.log(countsText(counts));
  expect(counts.failures).toEqual([]);
  // Both ends are reached, so that neither check is empty.
  expect(counts.accepted).toBeGreaterThan(200);
  expect(counts.refused).toBeGreaterThan(200);
});
