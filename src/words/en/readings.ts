import type { ReadingId } from '../../classify/readings.ts';
import type { ReadingWords } from '../words.ts';
import { acuteToxicity } from './readings/acute-toxicity.ts';
import { buildingBlocks } from './readings/building-blocks.ts';
import { general } from './readings/general.ts';
import { otherHealth } from './readings/other-health.ts';
import { physicalAndEnvironmental } from './readings/physical-and-environmental.ts';
import { skinAndEye } from './readings/skin-and-eye.ts';
import { supplemental } from './readings/supplemental.ts';

/** Every reading of the law in words. */
export const readings: Readonly<Record<ReadingId, ReadingWords>> = {
  ...general,
  ...acuteToxicity,
  ...skinAndEye,
  ...otherHealth,
  ...physicalAndEnvironmental,
  ...supplemental,
  ...buildingBlocks,
};
