import { bodyOf, nothing, type SectionBodies } from '../content.ts';
import { ingredients } from '../disclosure.ts';
import { fill } from '../fill.ts';
import type { SheetInput } from '../input.ts';
import { measure } from '../parts.ts';
import { secretsOf } from '../secrets.ts';

/** Forms that are neither under pressure nor liquefied by cold. */
const UNPRESSED: ReadonlySet<string> = new Set(['liquid', 'solid']);

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
    thermal: measure(input, {
      own: 'ppe.thermal',
      derived:
        UNPRESSED.has(input.record.form) && !input.record.sheet['ppe.thermal'] ? [words.noThermalHazard] : [],
    }),
    environment: measure(input, {
      own: 'ppe.environment',
      label: environmental(input, /^P273$/u),
      derived: input.record.sheet['ppe.environment'] ? [] : [words.undiluted],
    }),
  };
}

/** Statements of the label on release to the environment. */
export const environmental = (
  { elements }: SheetInput,
  codes: RegExp = /^P(?:273|391)$/u,
): readonly string[] =>
  elements.precautionaryStatements.filter(({ code }) => codes.test(code)).map(({ text }) => text);
