import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readingsTable } from '../../src/generate/readings.ts';
import { packagePath } from '../../src/reference/package-files.ts';

describe('hazard-data/READINGS.md', () => {
  it('is what the readings of the code give', () => {
    expect(readFileSync(packagePath('hazard-data', 'READINGS.md'), 'utf8')).toBe(readingsTable());
  });
});
