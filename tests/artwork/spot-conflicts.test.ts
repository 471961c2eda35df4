import { PDFName } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { readArt } from '../../src/artwork/read-art.ts';
import { spotConflicts } from '../../src/draft/spot-conflicts.ts';
import { operators, pageOf } from './files.ts';

const EVEN = { FunctionType: 2, Domain: [0, 1], C0: [0, 0, 0, 0], C1: [0.7, 0, 0.9, 0], N: 1 };

const logo = async (tint: Record<string, unknown>, ink = 'Leaf Green') => {
  const bytes = await pageOf([30, 15], (page, document) => {
    operators(page, document, '/S cs 1 scn 0 0 60 30 re f');
    const space = ['Separation', ink, 'DeviceCMYK', tint] as never;
    page.node.normalizedEntries().Resources.set(PDFName.of('ColorSpace'), document.context.obj({ S: space }));
  });
  const rules = { inkLimit: 300, dpi: 300, reservedInks: [], cutInks: [] };
  const read = await readArt('logo.pdf', bytes, null, rules);
  if (!read.ok) throw new Error('the logo does not read');
  return read.value;
};

// ISO 15930-7, from memory: one name of an ink has one alternate space and one tint transform in a file.
describe('a spot ink of two sources', () => {
  const brand = (cmyk: readonly [number, number, number, number]) => ({ spot: 'Leaf Green', cmyk });

  it('is one plate where both define it alike', async () => {
    expect(spotConflicts(brand([70, 0, 90, 0]), [await logo(EVEN)], 'maker.yaml')).toEqual([]);
    expect(
      spotConflicts(brand([70, 0, 90, 0]), [await logo({ ...EVEN, C1: [1, 0, 0, 0] }, 'Sky')], undefined),
    ).toEqual([]);
    expect(spotConflicts(null, [await logo(EVEN), await logo(EVEN)], undefined)).toEqual([]);
  });

  it.each([
    ['other inks', { ...EVEN, C1: [0, 1, 0, 0] }, 'cmyk(0, 100, 0, 0)'],
    ['a bent curve', { ...EVEN, N: 2 }, 'a curve of its own'],
  ])('is refused with %s, with both definitions', async (_, tint, told) => {
    const [found] = spotConflicts(brand([70, 0, 90, 0]), [await logo(tint)], 'maker.yaml');
    expect(found).toMatchObject({ code: 'spot-conflict', severity: 'error', at: { file: 'maker.yaml' } });
    expect(found!.message).toBe(
      `the spot ink "Leaf Green" is cmyk(70, 0, 90, 0) in the brand color and ${told} in logo.pdf`,
    );
    expect(spotConflicts(null, [await logo(EVEN), await logo(tint)], undefined)).toHaveLength(1);
  });
});
