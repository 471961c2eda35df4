import { labelPurposes, workplaceStatements } from '../labelling/purposes.ts';
import { tellAll } from '../words/telling.ts';
import type { Words } from '../words/words.ts';
import type { ClassifiedProduct } from './classified-product.ts';

/** What a reviewer must look at before anything leaves: warnings, missing data, choices, open words of statements. */
export function reviewPoints(
  { record, classification, elements }: ClassifiedProduct,
  words: Words,
): string[] {
  const telling = tellAll(classification);
  const undecided = classification.otherClasses.filter(({ outcome }) => outcome === 'insufficient-data');
  const unread = undecided.map(({ class: name, route }) => `${name}${route ? ` (${route})` : ''}`);
  const evidence = classification.hazards.filter(({ calculated }) => calculated).map(({ code }) => code);
  const lifted = classification.otherClasses
    .filter(({ outcome, calculated }) => outcome === 'not-classified' && calculated)
    .map(({ class: name, route, calculated }) => ({
      title: `${name}${route ? ` (${route})` : ''}`,
      calculated: calculated!.outcome,
    }));
  const { review, statements: told } = words;
  return [
    ...classification.warnings
      // A line that is still a proposal says it by itself.
      .filter(({ id }) => id !== 'reactive-alone' || elements.proposed.length === 0)
      .map(warning => words.warning(warning, telling)),
    ...(unread.length > 0 ? [review.undecided(unread)] : []),
    ...(evidence.length > 0 ? [review.byEvidence(evidence)] : []),
    ...(lifted.length > 0 ? [review.liftedByEvidence(lifted)] : []),
    ...record.choices.map(({ reading, take, reason }) => review.choice(reading, take, reason)),
    ...elements.missing.map(({ what, why }) => `${what}: ${told.why(why)}`),
    ...told.conditionals(elements.conditional),
    ...told.proposed(elements.proposed),
    ...told.combined(elements.precautionaryStatements),
    ...words.purposes(labelPurposes(record.soldTo, classification.hazards.length > 0)),
    ...(record.soldTo?.users.includes('consumers')
      ? words.workplaceWords(workplaceStatements(elements.precautionaryStatements))
      : []),
    ...elements.unused.map(each => told.unused(each)),
    ...elements.omitted.map(({ what, why }) => review.leftOff(what, told.why(why))),
  ];
}
