import { expect, it } from 'vitest';
import { loadFonts } from '../../../src/text/font-library.ts';
import { fallingSizes, tryRandomLabels } from './random-labels.ts';

it('10,000 random labels hold their outline and pass preflight', async () => {
  const counts = await tryRandomLabels(1_000_000, 10_000, await loadFonts());
  console.log(`${counts.fits} fit, ${counts.refused} refused, ${counts.failures.length} failures`);
  expect(counts.failures.slice(0, 5)).toEqual([]);
});

it('2,000 sweeps: text never falls as the die grows', async () => {
  const falls = await fallingSizes(2_000_000, 2_000, await loadFonts());
  console.log(`${falls.length} falls in 2,000 sweeps of 8 dies`);
  expect(falls.slice(0, 5)).toEqual([]);
});
