import { describe, expect, it } from 'vitest';
import { nodeFiles } from '../../src/cli/files.ts';
import { classifyProduct } from '../../src/draft/classified-product.ts';
import { draftLabel } from '../../src/draft/draft-label.ts';
import { draftSheet } from '../../src/draft/draft-sheet.ts';
import { openProduct } from '../../src/draft/open-product.ts';
import { openReference } from '../../src/draft/open-reference.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { en } from '../../src/words/en/index.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('\n'));
  return outcome.value;
};

const DATE = '2026-11-25';

// Limits of this project, no source: a file that mail carries, and that a shop keeps by the thousand.
describe.each(['patio-cleaner', 'descaler', 'degreaser'])('the PDF of %s', name => {
  const product = async () =>
    classifyProduct(
      value(openProduct(`templates/demo/${name}.yaml`, nodeFiles)),
      value(await openReference('us-hcs', DATE)),
    );

  it('is under 250 kB for the sheet', async () => {
    const { pdf } = value(
      await draftSheet(await product(), { date: DATE, paper: 'letter' }, await loadFonts(), en),
    );
    expect(pdf.length).toBeGreaterThan(20_000);
    expect(pdf.length).toBeLessThan(250_000);
  });

  it('is under 80 kB for each label without a profile', async () => {
    const classified = await product();
    const fonts = await loadFonts();
    for (const pack of classified.record.packs.filter(({ label }) => label)) {
      const options = { date: DATE, pack, purpose: 'us-workplace' } as const;
      const bytes = value(await draftLabel(classified, options, fonts, en));
      expect(bytes.length).toBeGreaterThan(10_000);
      expect(bytes.length).toBeLessThan(80_000);
    }
  });
});
