import type { SheetKey } from '../../../record/sheet-keys.ts';
import type { TransportAnswer } from '../../../transport/answer.ts';
import { bodyOf, type ItemBody, nothing, paragraphs, type SectionBodies } from '../content.ts';
import { ingredients } from '../disclosure.ts';
import { fill } from '../fill.ts';
import { sheetForm } from '../form.ts';
import type { SheetInput } from '../input.ts';
import { measure } from '../parts.ts';
import { secretsOf } from '../secrets.ts';
import { statementsFor } from '../statements.ts';
import { described, packed } from '../transport.ts';

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
 * Section 14 (Annex II, 14.1 to 14.7; GHS, Table 1.5.2, 14). Number, name, class and packing group of an entry that the
 * table of 49 CFR 172.101 shares with the UN Model Regulations; the texts of ADR, RID, ADN, IMDG and ICAO are not held,
 * so the rest is open, and so is all where the entry is one of the United States alone. Where the record says any of the
 * four, it says all: two sources would not be told apart.
 */
export function transport(input: SheetInput): SectionBodies {
  const { ghs: words } = input.words.sheet;
  const own = paragraphs(input.record.sheet['transport.bulk']);
  const bulk = bodyOf('product record', { text: own }) ?? packed(input) ?? nothing;
  const answered = identity.some(key => key in input.record.sheet || key in input.record.sheetSearched);
  if (answered) return { bulk };
  const of = input.transport.every(({ answer }) => isShared(answer)) ? described(input) : null;
  if (!of || of.un.length === 0) return { 'un-number': { ...nothing, notes: [words.carriage] }, bulk };
  const shared = (text: readonly string[]): ItemBody => bodyOf('reference tables', { text }) ?? nothing;
  return {
    'un-number': { ...shared(of.un), notes: [words.carriageShared] },
    'shipping-name': shared(of.name),
    'transport-class': shared(of.hazardClass),
    'packing-group': shared(of.packingGroup),
    bulk,
  };
}

const identity: readonly SheetKey[] = [
  'adr.un-number',
  'adr.proper-shipping-name',
  'adr.hazard-class',
  'adr.packing-group',
];

/** An entry with a UN number that is neither domestic (49 CFR 172.101(b)(3)) nor of combustible liquids. */
const isShared = ({ answer, entry, class: name }: TransportAnswer): boolean =>
  answer === 'regulated' &&
  entry !== null &&
  entry.id.startsWith('UN') &&
  !entry.symbols.includes('D') &&
  name !== 'Comb liq';

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
