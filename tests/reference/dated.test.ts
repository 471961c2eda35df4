import { describe, expect, it } from 'vitest';
import { inForceOn } from '../../src/reference/dated.ts';

// The shape is our own; dates are those of Delegated Regulation (EU) 2023/707 as an example.
const figures = {
  skin: {
    corrosive: {
      '2010-12-01': { value: { percent: 5 }, cite: '3.2.3.3.3', source: 'a', checked: '2026-01-01' },
      '2026-05-01': { value: { percent: 4 }, cite: '3.2.3.3.4', source: 'b', checked: '2026-06-01' },
    },
    order: { '2010-12-01': { cite: '3.2.3.1' } },
  },
  later: { '2026-05-01': { table: { 'ED HH 1': true }, cite: '3.11' } },
  single: { '2010-12-01': { value: 25, cite: '4.1' } },
  absent: null,
};

describe('figures in force on a day', () => {
  it('are those of the newest date up to it, with their paragraph', () => {
    expect(inForceOn(figures, '2026-04-30')).toEqual({
      skin: { corrosive: { percent: 5, cite: '3.2.3.3.3' }, order: { cite: '3.2.3.1' } },
      single: 25,
      absent: null,
    });
    expect(inForceOn(figures, '2026-05-01')).toMatchObject({
      skin: { corrosive: { percent: 4, cite: '3.2.3.3.4' } },
      later: { 'ED HH 1': true },
    });
  });

  it('are none before the first', () => {
    expect(inForceOn(figures, '2010-11-30')).toEqual({ skin: {}, absent: null });
  });
});
