import type { ClassifiedHazard, OtherClass } from '../../../classify/classification.ts';
import {
  findClass,
  findCode,
  followingStatement,
  type HazardKind,
  hazardClasses,
} from '../../../notation/classes.ts';
import type { Hazard } from '../../../notation/hazard.ts';
import { printHazardIn } from '../../../notation/print-hazard.ts';
import { inTerms } from '../../../words/in-terms.ts';
import { classesOf, classTitle, hazardTitle } from '../hazards.ts';
import type { SheetInput } from '../input.ts';

const kindOf = (name: string): HazardKind | undefined => findClass(classesOf(name)[0]!)?.kind;

/** Place of a class in the order of CLP Annex I. */
export const orderOf = (name: string): number =>
  hazardClasses.findIndex(each => each.class === classesOf(name)[0]);

export const hazardsOfKind = (
  { classification }: SheetInput,
  ...kinds: readonly HazardKind[]
): readonly ClassifiedHazard[] =>
  classification.hazards.filter(({ hazardClass }) => kinds.includes(kindOf(hazardClass)!));

export const othersOfKind = (
  { classification }: SheetInput,
  ...kinds: readonly HazardKind[]
): readonly OtherClass[] => classification.otherClasses.filter(each => kinds.includes(kindOf(each.class)!));

/** Statement codes of a hazard of an ingredient. */
export const statementCodes = (hazard: Hazard): readonly string[] => {
  if (hazard.statement) return [hazard.statement];
  const entry = findCode(hazard.code);
  const code = entry && followingStatement(entry.category, hazard.route, hazard.effect);
  return code ? [code] : [];
};

/** Classification of an ingredient as Table 1.1 of CLP Annex VI abbreviates it, with codes: `Skin Corr. 1B; H314`. */
export const hazardAndCode = (hazard: Hazard, { words }: SheetInput): string => {
  const { effects, organs } = words.sheet.terms;
  const printed = printHazardIn(hazard, word => inTerms(effects, inTerms(organs, word)));
  const codes = statementCodes(hazard).filter(code => !printed.includes(code));
  return [printed, ...codes].join('; ');
};

/** Class and category of the mixture in words with its codes. */
export const titleAndCode = (hazard: ClassifiedHazard, { words }: SheetInput): string =>
  [hazardTitle(hazard, words.sheet), ...hazard.statements].join('; ');

/** What a class that the mixture does not have comes to: the words of Annex II, 11.1 only where data are conclusive. */
export const outcomeText = ({ outcome }: OtherClass, { words }: SheetInput): string =>
  words.sheet.ghs.outcomes[outcome];

export const titleOf = (other: OtherClass, { words }: SheetInput): string => classTitle(other, words.sheet);
