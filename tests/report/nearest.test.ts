import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/report/nearest.ts';

describe('the nearest known word', () => {
  const keys = ['form', 'formula', 'name', 'use', 'code', 'copy'];

  it.each([
    ['fomr', 'form'],
    ['nmae', 'name'],
    ['forn', 'form'],
    ['formla', 'formula'],
  ])('%s is meant for %s', (written, known) => {
    expect(nearest(written, keys)).toBe(known);
  });

  it('is none where no word is near, and the word itself where it is there', () => {
    expect(nearest('colour', keys)).toBeNull();
    expect(nearest('use', keys)).toBe('use');
  });
});
