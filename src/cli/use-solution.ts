import { classificationJson } from '../draft/classification-json.ts';
import type { UseSolution } from '../draft/use-solutions.ts';
import { en } from '../words/en/index.ts';
import { briefJson, briefText } from './brief.ts';

/** A use solution in a line: packs, ratio, use, signal word and hazards. */
export function solutionText({ packs, dilution, solution }: UseSolution): string {
  const { record, classification, elements } = solution;
  const use = dilution.use ? ` for ${dilution.use}` : '';
  return `use solution ${dilution.written} in ${dilution.with}${use} (${packs.join(', ')}): ${briefText(record, classification, elements)}`;
}

/** A use solution as a classification with its packs and ratio. */
export function solutionJson({ packs, dilution, solution }: UseSolution, brief: boolean) {
  const { record, classification, elements } = solution;
  const document = classificationJson(record, classification, elements, en);
  const { with: diluent, written: ratio, use } = dilution;
  return { packs, with: diluent, ratio, use, ...(brief ? briefJson(document) : document) };
}
