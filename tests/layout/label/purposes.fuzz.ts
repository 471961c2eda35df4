import { expect, it } from 'vitest';
import { loadFonts } from '../../../src/text/font-library.ts';
import { expectTrial, PURPOSES } from './purposes.ts';
import { CONTENTS, DIES } from './trials.ts';

it.each(PURPOSES)('8 contents on 14 outlines: %s', async purpose => {
  const fonts = await loadFonts();
  const counts = { fits: 0, refused: 0 };
  for (const options of Object.values(CONTENTS))
    for (const die of Object.values(DIES)) counts[await expectTrial(purpose, options, die, fonts)] += 1;
  console.log(`${purpose}: ${counts.fits} fit, ${counts.refused} refused, each with dies that hold it`);
  expect(counts.fits).toBeGreaterThan(0);
});
