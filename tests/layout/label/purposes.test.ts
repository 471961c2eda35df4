import { beforeAll, describe, expect, it } from 'vitest';
import { loadFonts } from '../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { expectTrial, PURPOSES } from './purposes.ts';
import { CONTENTS, DIES } from './trials.ts';

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

/** A quarter of the matrix, in which every content and every die stands; `npm run fuzz` goes through all of it. */
const cells = Object.keys(CONTENTS).flatMap((content, row) =>
  Object.keys(DIES)
    .filter((_, column) => (row + column) % 4 === 0)
    .map(die => [content, die] as const),
);

// Workplace labels: tests/layout/label/trials.test.ts goes through all of theirs.
describe.each(PURPOSES.filter(purpose => purpose !== 'us-workplace'))('%s', purpose => {
  it.each(cells)('%s on %s is held by its die, or refused with dies that hold it', async (content, die) => {
    expect(['fits', 'refused']).toContain(await expectTrial(purpose, CONTENTS[content]!, DIES[die]!, fonts));
  });
});
