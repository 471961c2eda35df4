import { bodyOf, nothing, type SectionBodies } from '../content.ts';
import { ingredients } from '../disclosure.ts';
import { fill } from '../fill.ts';
import type { SheetInput } from '../input.ts';
import { secretsOf } from '../secrets.ts';

/** Section 8, control parameters (Annex II, 8.1): the record's limits with their dates; no list of the Union is held. */
export function exposureLimits(input: SheetInput): SectionBodies {
  const { name } = secretsOf(input);
  const { exposure, ghs: words } = input.words.sheet;
  const list = ingredients(input)
    .filter(({ listed }) => listed)
    .flatMap(({ own, index }) =>
      (own?.limits ?? []).map(({ list: title, value, date }) =>
        fill(exposure.limit, { name: name(index), list: title, value, date: date ? ` (${date})` : '' }),
      ),
    );
  return {
    limits: bodyOf('product record', { list, notes: [words.limitsNote] }) ?? {
      ...nothing,
      notes: [words.limitsNote],
    },
    environment: bodyOf('label elements', { list: environmental(input) }) ?? nothing,
  };
}

/** Statements of the label on release to the environment. */
export const environmental = ({ elements }: SheetInput): readonly string[] =>
  elements.precautionaryStatements.filter(({ code }) => /^P(?:273|391)$/u.test(code)).map(({ text }) => text);
