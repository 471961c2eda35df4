import { expect, it } from 'vitest';
import { loadFonts } from '../../../src/text/font-library.ts';
import { fallingSizes, tryRandomLabels } from './random-labels.ts';

it('random labels on random dies hold their outline and pass preflight; larger dies have no smaller text', async () => {
  const fonts = await loadFonts();
  const counts = await tryRandomLabels(1, 24, fonts);
  expect(counts.failures).toEqual([]);
  expect(counts.fits).toBeGreaterThan(10);
  expect(await fallingSizes(1, 6, fonts)).toEqual([]);
});
