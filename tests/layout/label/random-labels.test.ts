import { expect, it } from 'vitest';
import { loadFonts } from '../../../src/text/font-library.ts';
import { fallingSizes, tryRandomLabels } from './random-labels.ts';

const fonts = await loadFonts();

it('random labels on random dies hold their outline and pass preflight; larger dies have no smaller text', async () => {
  const counts = await tryRandomLabels(1, 24, fonts);
  expect(counts.failures).toEqual([]);
  expect(counts.fits).toBeGreaterThan(10);
  expect(await fallingSizes(1, 6, fonts)).toEqual([]);
});

// Found by the long form of this test.
it.each([
  [1_000_184, 'an oval of 41 x 207 mm, whose end is narrower than the notice of a draft'],
  [1_000_505, 'an oval of 56 x 216 mm, whose end comes near it'],
])('random label %i, %s, holds its outline', async seed => {
  const counts = await tryRandomLabels(seed, 1, fonts);
  expect(counts).toEqual({ fits: 1, refused: 0, failures: [] });
});
