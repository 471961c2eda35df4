import { describe, expect, it } from 'vitest';
import { type SuppliedProduct, supplyPackaging } from '../../src/duties/supply-packaging.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';
import { Exact } from '../../src/quantity/exact.ts';

const asked = (
  hazards: readonly string[],
  { form = 'liquid', parts = [] }: { form?: SuppliedProduct['form']; parts?: [string, string][] } = {},
) =>
  supplyPackaging({
    form,
    hazards: hazards.map(text => {
      const read = parseHazard(text);
      if (!read.ok) throw new Error(read.message);
      return read.value;
    }),
    constituents: parts.map(([cas, percent]) => ({ name: cas, cas, high: Exact.decimal(percent) })),
  }).map(({ what, cite }) => `${what} ${cite.slice(-7)}`);

// CLP Annex II, 3.1.1.1 to 3.1.1.3 in a secondary text of the regulation; 3.2.1 as the Belgian and Polish authorities
// give it.
describe('packages for the general public', () => {
  it.each([
    ['Acute Tox. 3 (oral)', ['child-resistant 3.1.1.1', 'tactile , 3.2.1']],
    ['Acute Tox. 4 (oral)', ['tactile , 3.2.1']],
    ['Skin Corr. 1', ['child-resistant 3.1.1.1', 'tactile , 3.2.1']],
    ['Skin Corr. 1C', ['child-resistant 3.1.1.1', 'tactile , 3.2.1']],
    ['Skin Irrit. 2', []],
    ['Eye Dam. 1', []],
    ['STOT SE 1', ['child-resistant 3.1.1.1', 'tactile , 3.2.1']],
    ['STOT SE 2', ['tactile , 3.2.1']],
    ['STOT SE 3', []],
    ['STOT RE 1', ['child-resistant 3.1.1.1', 'tactile , 3.2.1']],
    ['STOT RE 2', ['tactile , 3.2.1']],
    ['Asp. Tox. 1', ['child-resistant 3.1.1.2', 'tactile , 3.2.1']],
    ['Muta. 2', ['tactile , 3.2.1']],
    ['Carc. 2', ['tactile , 3.2.1']],
    ['Repr. 2', ['tactile , 3.2.1']],
    ['Resp. Sens. 1', ['tactile , 3.2.1']],
    ['Skin Sens. 1', []],
    ['Flam. Liq. 1', ['tactile , 3.2.1']],
    ['Flam. Liq. 2', ['tactile , 3.2.1']],
    ['Flam. Liq. 3', []],
    ['Aquatic Chronic 1', []],
  ])('%s', (hazard, expected) => {
    expect(asked([hazard])).toEqual(expected);
  });

  it('spares aerosols the fastening for aspiration alone', () => {
    expect(asked(['Asp. Tox. 1'], { form: 'aerosol' })).toEqual(['tactile , 3.2.1']);
    expect(asked(['Skin Corr. 1B'], { form: 'aerosol' })).toHaveLength(2);
  });

  it.each([
    ['67-56-1', '3', 1],
    ['67-56-1', '2.999', 0],
    ['75-09-2', '1', 1],
    ['75-09-2', '0.999', 0],
  ])('%s at %s %%', (cas, percent, count) => {
    expect(asked([], { parts: [[cas, percent]] })).toHaveLength(count);
  });
});
