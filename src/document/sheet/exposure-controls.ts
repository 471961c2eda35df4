import type { SheetKey } from '../../record/sheet-keys.ts';
import { bodyOf, type ItemBody, nothing, type SectionBodies, said } from './content.ts';
import { ingredients } from './disclosure.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';
import { lookUps } from './look-ups.ts';
import { measure } from './parts.ts';
import { secretsOf } from './secrets.ts';
import { statementsFor } from './statements.ts';
import { maskedLimits } from './withheld-look-ups.ts';

/** Section 8 (29 CFR 1910.1200 App. D, Table D.1, 8). */
export function exposureControls(input: SheetInput): SectionBodies {
  const { elements } = input;
  const equipment = statementsFor(elements, 'protection');
  const part = (place: string, own: SheetKey): ItemBody => measure(input, { place, own });
  return {
    pel: limitTable(input),
    tlv: ownLimits(input, true),
    'other-limits': ownLimits(input, false),
    engineering: measure(input, {
      place: 'engineering',
      own: 'ppe.engineering',
      label: elements.precautionaryStatements.filter(({ code }) => code === 'P271').map(({ text }) => text),
    }),
    protection:
      bodyOf('label elements', { list: equipment }) ??
      said('hazard classes', input.words.sheet.exposure.below),
    'protection-eyes': part('protection-eyes', 'ppe.eyes'),
    'protection-hands': part('protection-hands', 'ppe.hands'),
    'protection-skin': part('protection-skin', 'ppe.skin'),
    'protection-respiratory': measure(input, {
      place: 'protection-respiratory',
      own: 'ppe.respiratory',
      label: statementsFor(elements, 'protection-respiratory'),
    }),
  };
}

/** Limits that the record gives for single ingredients: those of the ACGIH, or the others. */
function ownLimits(input: SheetInput, threshold: boolean): ItemBody {
  const { name } = secretsOf(input);
  const { exposure } = input.words.sheet;
  const list = ingredients(input).flatMap(({ own, index }) =>
    (own?.limits ?? [])
      .filter(({ list: title }) => /\bTLV/u.test(title) === threshold)
      .map(({ list: title, value, date }) =>
        fill(exposure.limit, { name: name(index), list: title, value, date: date ? ` (${date})` : '' }),
      ),
  );
  return bodyOf('product record', { list }) ?? nothing;
}

/** OSHA limits of every ingredient that section 3 lists (Table D.1, 8 (a)). */
function limitTable(input: SheetInput): ItemBody {
  const found = lookUps(input).limits;
  const { limits: words } = input.words.sheet;
  const secrets = secretsOf(input);
  const sought = ingredients(input)
    .filter(({ listed }) => listed)
    .map(({ index }) => ({
      name: secrets.name(index),
      withheld: secrets.identity.has(index),
      limits: found[index]!,
    }));
  const rows = sought.flatMap(({ name, limits, withheld }) =>
    words.rows(name, withheld ? maskedLimits(limits, name) : limits, withheld),
  );
  const several = words.averaged(sought.map(({ limits }) => limits)) > 1;
  const notes = several ? [words.note, words.mixture] : [words.note];
  const body = bodyOf('reference tables', { table: { columns: words.columns, rows }, notes });
  return body ?? said('reference tables', words.noIngredients);
}
