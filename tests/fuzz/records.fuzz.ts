import { expect, it } from 'vitest';
import { countsText, fuzzRecords } from './records.ts';

it('100,000 random records are refused or hold every line', () => {
  const counts = fuzzRecords(1_000_000, 100_000);
  console.log(countsText(counts));
  expect(counts.failures.slice(0, 5)).toEqual([]);
});
