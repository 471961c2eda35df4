import { describe, expect, it } from 'vitest';
import { stateVoc } from '../../src/duties/state-voc.ts';
import { Exact } from '../../src/quantity/exact.ts';
import { stateVocLimits } from '../../src/reference/duties/state-voc-data.ts';
import { vocData } from '../../src/reference/duties/voc-data.ts';

const held = (state: string, category: string | null, ethanol: string, consumer: boolean | null = true) =>
  stateVoc(
    state,
    stateVocLimits(state),
    {
      constituents: [{ name: 'ethanol', cas: '64-17-5', water: false, stated: null }],
      most: () => [Exact.decimal(ethanol)],
      category,
      aerosol: false,
      consumer,
      dilutions: [{ written: '1:10', share: Exact.decimal('0.1') }],
    },
    vocData,
  );

// COMAR 26.11.32.04B, Table 1, as on the page of the Division of State Documents of Maryland; "in excess of".
describe('limits of a state', () => {
  it.each([
    ['bathroom-and-tile-cleaner', 5],
    ['windshield-washer-fluid', 35],
    ['carburetor-and-choke-cleaner', 45],
    ['fabric-protectant', 60],
    ['dusting-aid', 7],
    ['air-freshener-liquid', 18],
  ])('of %s: %d %%', (category, limit) => {
    expect(held('MD', category, String(limit - 0.01))?.outcome).toBe('within');
    expect(held('MD', category, String(limit))?.outcome).toBe('within');
    expect(held('MD', category, String(limit + 0.01))?.outcome).toBe('above');
  });

  it('are not met by silence', () => {
    expect(held('MD', 'glass-cleaner', '0.1')?.outcome).toBe('not-held');
    expect(held('CA', 'dusting-aid', '0.1')?.outcome).toBe('not-held');
    expect(held('CA', null, '0.1')?.outcome).toBe('not-held');
    expect(held('MD', null, '0.1')?.outcome).toBe('no-category');
    expect(held('MD', 'none', '0.1')?.outcome).toBe('none-fits');
  });

  it('bind no product of the trade alone', () => {
    expect(held('MD', 'dusting-aid', '50', false)).toBeNull();
  });

  it('has a row of Table 1 of 40 CFR 59 for each of its own', () => {
    const known = vocData.categories.map(({ id }) => id);
    for (const { id } of stateVocLimits('MD')!.categories) expect(known).toContain(id);
  });
});
