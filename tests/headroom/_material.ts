import { expandFormula } from '../../src/formula/expand.ts';
import { weighOut } from '../../src/formula/weigh-out.ts';
import { type Headroom, headroomOfMaterial } from '../../src/headroom/headroom.ts';
import { apart, linesOfMaterial } from '../../src/headroom/raw-material.ts';
import { readRecord, recordAround } from '../support/cases.ts';
import { type Asked, inputFor, must } from './_headroom.ts';

/** Breakpoints of a raw material, by its name, among formula lines. */
export async function headroomOfDrum(
  lines: readonly Record<string, unknown>[],
  asked: Asked,
): Promise<Headroom> {
  const input = await inputFor(lines, asked);
  const record = readRecord(recordAround({ formula: lines, ...asked.more }));
  const used = linesOfMaterial(record, asked.of, 'name');
  const parts = apart(record, used);
  if ('code' in parts) throw new Error(parts.message);
  const weighed = weighOut(record);
  const material = {
    name: used[0]!.material.name,
    rest: must(expandFormula(parts.rest)),
    alone: must(expandFormula(parts.alone)),
    shop: {
      by: 'weight',
      batchGrams: weighed && !weighed.assumed ? weighed.grams : null,
      density: used[0]!.density,
    },
  } as const;
  return must(headroomOfMaterial(input, material, asked.others ?? 'water'));
}
