import type { Alternative } from '../../transport/answer.ts';
import type { SheetInput } from './input.ts';
import { technicalNames, withheldEntry } from './withheld-transport.ts';

/** Texts of section 14. */
export interface Described {
  readonly un: readonly string[];
  readonly name: readonly string[];
  readonly hazardClass: readonly string[];
  readonly packingGroup: readonly string[];
  readonly precautions: readonly string[];
}

/** As many outcomes of what is missing as a reader can take in. */
const MOST_CASES = 4;

/** What an undecided product comes to, outcome by outcome of a missing test; null where they are many, open or would tell a withheld name. */
export function byCase(input: SheetInput): Described | null {
  const { transport: words } = input.words.sheet;
  const undecided = input.transport.filter(({ answer }) => answer.answer === 'undecided');
  const cases = undecided.flatMap(({ answer }) => answer.alternatives);
  const told = (each: Alternative): boolean =>
    each.answer !== 'undecided' && withheldEntry(input, each) === null;
  const few = undecided.every(
    ({ answer: { alternatives } }) => alternatives.length > 1 && alternatives.length <= MOST_CASES,
  );
  if (undecided.length !== input.transport.length || undecided.length === 0 || !few || !cases.every(told))
    return null;
  const each = (say: (outcome: Alternative) => string | null): readonly string[] => [
    ...new Set(
      undecided.flatMap(({ answer }) =>
        answer.alternatives.flatMap(outcome => {
          const text = outcome.answer === 'regulated' ? say(outcome) : words.notApplicable;
          return text === null ? [] : [words.inCase(outcome.when, text)];
        }),
      ),
    ),
  ];
  return {
    un: each(({ entry }) => entry && words.unNumber(entry.id)),
    name: each(({ name, technical }) => name && words.shippingName(name, technicalNames(input, technical))),
    hazardClass: each(outcome => words.hazardClass(outcome)),
    packingGroup: each(({ packingGroup }) => words.packingGroup(packingGroup)),
    precautions: [
      ...each(({ limitedQuantity }) => limitedQuantity && words.limitedQuantity(limitedQuantity)),
      words.modes,
    ],
  };
}
