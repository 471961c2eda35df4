import type { BatchMaterial } from './material.ts';
import { grouped, namesIn } from './material.ts';
import data from './order.json' with { type: 'json' };

/** Stage of a material: the last of which it holds a group; water is a stage where the material is nothing else. */
function stageOf(material: BatchMaterial): number {
  const all = grouped(material);
  if (material.ingredients.every(({ water }) => water)) return 0;
  const found = data.stages.findLastIndex(
    ({ groups, whole }) => !whole && namesIn(all, groups, data.from.percent).length > 0,
  );
  return found === -1 ? data.stages.findIndex(({ id }) => id === 'plain') : found;
}

/**
 * The order in which materials go into the tank: water first, then plain materials, bases, acids, and what releases
 * chlorine or oxygen last; the largest amount first within a stage (common practice, no source).
 */
export const orderOfAddition = <T extends BatchMaterial>(materials: readonly T[]): readonly T[] =>
  materials
    .map((material, at) => ({ material, at, stage: stageOf(material) }))
    .sort((a, b) => a.stage - b.stage || b.material.high.value - a.material.high.value || a.at - b.at)
    .map(({ material }) => material);
