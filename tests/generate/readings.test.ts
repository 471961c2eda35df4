import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { packagePath } from '../../src/environment/package-files.ts';
import { readingsTable } from '../../src/generate/readings.ts';

describe('hazard-data/READINGS.md', () => {
  it('is what the readings of the code give', () => {
    expect(readFileSync(packagePath('hazard-data', 'READINGS.md'), 'utf8')).toBe(readingsTable());
  });
});
