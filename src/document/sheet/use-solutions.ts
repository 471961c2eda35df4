import { bodyOf, type ItemBody } from './content.ts';
import { fill } from './fill.ts';
import { classTitle, hazardTitle, isOfStandard } from './hazards.ts';
import type { SheetInput, SheetSolution } from './input.ts';

/**
 * What the user holds after dilution, apart from the product as sold: hazards of use that can be foreseen (29 CFR
 * 1910.1200(d)(1)(ii)). Hazards alone, no ingredient. Null where the record names no dilution.
 */
export function useSolutionsText(input: SheetInput): ItemBody | null {
  const { solutions = [] } = input;
  const { solutions: words } = input.words.sheet.other;
  if (solutions.length === 0) return null;
  return bodyOf('calculation', {
    text: [words.apart],
    list: solutions.map(solution => solutionText(input, solution)),
  });
}

function solutionText(
  input: SheetInput,
  { ratio, with: diluent, use, classification, elements }: SheetSolution,
): string {
  const { sheet } = input.words;
  const { solutions: words } = sheet.other;
  const hazards = classification.hazards.filter(({ hazardClass }) => isOfStandard(hazardClass));
  const open = classification.otherClasses.filter(
    ({ outcome, class: name }) => outcome === 'insufficient-data' && isOfStandard(name),
  );
  const titles = (texts: readonly string[]) => [...new Set(texts)].join('; ');
  const statements = elements.hazardStatements.map(({ text }) => text).join('. ');
  return [
    fill(use ? words.forUse : words.plain, { ratio, diluent, use: use ?? '' }),
    hazards.length > 0
      ? fill(words.classified, {
          signalWord: elements.signalWord ?? words.noSignalWord,
          titles: titles(hazards.map(hazard => hazardTitle(hazard, sheet))),
          statements,
        })
      : words.notClassified,
    open.length > 0 ? fill(words.open, { titles: titles(open.map(each => classTitle(each, sheet))) }) : '',
  ]
    .filter(Boolean)
    .join(' ');
}
