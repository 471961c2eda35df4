import { classificationJson } from '../draft/classification-json.ts';
import type { UseSolution } from '../draft/use-solutions.ts';
import { readRatio } from '../record/dilution-schema.ts';
import type { Dilution } from '../record/record-blocks.ts';
import { en } from '../words/en/index.ts';
import { UsageError } from './arguments.ts';
import { briefJson, briefText } from './brief.ts';

/** A ratio of the command line. */
export function askedDilution(ratio: string | null): readonly Dilution[] {
  if (ratio === null) return [];
  const reading = readRatio(ratio);
  if (!reading.ok) throw new UsageError(`--dilution: ${reading.message}; ${reading.hint}`);
  const at = { file: '--dilution' };
  return [{ with: 'water', ...reading.value, use: null, at }];
}

/** A use solution in a line: packs, ratio, use, signal word and hazards. */
export function solutionText({ packs, dilution, solution }: UseSolution): string {
  const { record, classification, elements } = solution;
  const use = dilution.use ? ` for ${dilution.use}` : '';
  const of = packs.length > 0 ? ` (${packs.join(', ')})` : '';
  return `use solution ${dilution.written} in ${dilution.with}${use}${of}: ${briefText(record, classification, elements)}`;
}

/** A use solution as a classification with its packs and ratio. */
export function solutionJson({ packs, dilution, solution }: UseSolution, brief: boolean) {
  const { record, classification, elements } = solution;
  const document = classificationJson(record, classification, elements, en);
  const { with: diluent, written: ratio, use } = dilution;
  return { packs, with: diluent, ratio, use, ...(brief ? briefJson(document) : document) };
}
