import { readFileSync } from 'node:fs';
import { openHarmonised } from '../../../src/reference/harmonised/open-harmonised.ts';

export const substances = 'hazard-data/substances';
export const bytes = readFileSync(`${substances}/harmonised.tsv`);
export const table = openHarmonised(bytes);
