import { bodyOf, type ItemBody, nothing, paragraphs, type SectionBodies } from '../content.ts';
import { ingredients } from '../disclosure.ts';
import { fill } from '../fill.ts';
import { sheetForm } from '../form.ts';
import type { SheetInput } from '../input.ts';
import { measure } from '../parts.ts';
import { secretsOf } from '../secrets.ts';
import { statementsFor } from '../statements.ts';

const isUnion = ({ classification }: SheetInput): boolean => sheetForm(classification.basis.id).reach;

/** Section 13 (Annex II, 13.1; GHS, Table 1.5.2, 13). */
export function disposal(input: SheetInput): SectionBodies {
  const { ghs: words } = input.words.sheet;
  return {
    disposal: measure(input, {
      place: 'disposal',
      own: 'disposal',
      label: statementsFor(input.elements, 'disposal'),
      notes: [isUnion(input) ? words.wasteUnion : words.waste],
    }),
    'waste-codes': { ...nothing, notes: [words.wasteCodes] },
  };
}

/**
 * Section 14 (Annex II, 14.1 to 14.7; GHS, Table 1.5.2, 14) from the record alone: the rules of the United States are
 * not those of ADR, RID, ADN, IMDG and ICAO, whose texts are not held.
 */
export function transport({ words }: SheetInput): SectionBodies {
  return { 'un-number': { ...nothing, notes: [words.sheet.ghs.carriage] } };
}

/** Section 15 (Annex II, 15.1 and 15.2; GHS, Table 1.5.2, 15). */
export function regulation(input: SheetInput): SectionBodies {
  const { ghs: words, composition } = input.words.sheet;
  if (!isUnion(input)) return {};
  const { name } = secretsOf(input);
  const listed = ingredients(input).flatMap(({ index, own, listed: named }) =>
    named && own?.candidateList
      ? [fill(composition.withName, { name: name(index), text: own.candidateList })]
      : [],
  );
  const text = paragraphs(input.record.sheet['regulatory-eu']);
  const body: ItemBody = text.length > 0 ? bodyOf('product record', { text, list: listed })! : nothing;
  return { regulations: { ...body, notes: [words.actsToLookUp, ...(text.length === 0 ? listed : [])] } };
}
