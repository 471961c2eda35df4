import { expect, it } from 'vitest';
import { isDay } from '../../src/quantity/day.ts';

// ISO 8601: year-month-day; the Gregorian calendar has a 29 February in 2028 and none in 2026 or 2100.
it.each(['2026-11-25', '2028-02-29', '2000-02-29'])('%s is a day', text => expect(isDay(text)).toBe(true));

it.each([
  '2026-02-29',
  '2100-02-29',
  '2026-13-01',
  '2026-00-10',
  '2026-04-31',
  '2026-4-3',
  '26-04-03',
  '2026-04-03 ',
  'yesterday',
])('%s is none', text => expect(isDay(text)).toBe(false));
