import type { SheetKey } from '../../record/sheet-keys.ts';
import type { TransportAnswer } from '../../transport/answer.ts';
import type { Fact } from '../../transport/fact.ts';
import { bodyOf, firstBody, type ItemBody, nothing, paragraphs, type SectionBodies } from './content.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';
import { byCase, type Described } from './transport-by-case.ts';
import { contentsOf } from './units.ts';
import { technicalNames, withheld, withheldEntry } from './withheld-transport.ts';

/** Grounds of "not regulated" that name no constituent. */
const grounds = ['no-class', 'combustible-non-bulk', 'other-modes-alone'];
/** Facts that leave something open. */
const doubts = [
  'no-generic-entry',
  'no-precedence',
  'no-technical-name',
  'package-unknown',
  'package-mass-unknown',
  'reportable-quantity-unknown',
  'by-approval',
];

/** Section 14 (29 CFR 1910.1200 App. D, Table D.1, 14; not mandatory): texts of the record, else what the rules of transport come to. */
export function transport(input: SheetInput): SectionBodies {
  const { record } = input;
  const own = (key: SheetKey): ItemBody | null =>
    bodyOf('product record', { text: paragraphs(record.sheet[key]) });
  const ruled = (texts: readonly string[]): ItemBody | null => bodyOf('reference tables', { text: texts });
  const cases = byCase(input);
  const of = cases ?? described(input);
  // One test decides the number: until then it is open, and the rest says what each outcome comes to.
  const number = cases ? { ...nothing, notes: cases.un } : ruled(of.un);
  return {
    'un-number': firstBody(own('transport.un-number'), number),
    'shipping-name': firstBody(own('transport.proper-shipping-name'), ruled(of.name)),
    'transport-class': firstBody(own('transport.hazard-class'), ruled(of.hazardClass)),
    'packing-group': firstBody(own('transport.packing-group'), ruled(of.packingGroup)),
    'environmental-hazards': firstBody(own('transport.environmental-hazards'), ruled(marine(input))),
    bulk: firstBody(own('transport.bulk'), packed(input)),
    'special-precautions': firstBody(own('transport.notes'), ruled(of.precautions)),
  };
}

/** A product that the record sells in packs alone is no cargo in bulk. */
export function packed(input: SheetInput): ItemBody | null {
  const { record, words } = input;
  const packs = record.packs.map(({ contents }) => contentsOf(contents, input));
  return bodyOf('product record', {
    text: packs.length > 0 ? [words.sheet.transport.packed([...new Set(packs)])] : [],
  });
}

/** Texts by pack; none at all where the answer for one pack is undecided, or where they would tell a withheld name. */
export function described(input: SheetInput): Described {
  const nothing = { un: [], name: [], hazardClass: [], packingGroup: [], precautions: [] };
  if (input.transport.some(({ answer }) => answer.answer === 'undecided')) return nothing;
  const { transport: words } = input.words.sheet;
  const each = (say: (answer: TransportAnswer) => string | null): readonly string[] => perPack(input, say);
  const item =
    (say: (answer: TransportAnswer) => string | null) =>
    (answer: TransportAnswer): string | null =>
      answer.answer === 'regulated' ? say(answer) : words.notApplicable;
  const told = input.transport.every(({ answer }) => withheldEntry(input, answer) === null);
  return {
    un: told
      ? each(answer => (answer.entry ? words.unNumber(answer.entry.id) : notRegulated(input, answer)))
      : [],
    name: told
      ? each(
          item(({ name, technical }) => name && words.shippingName(name, technicalNames(input, technical))),
        )
      : [],
    hazardClass: each(item(answer => words.hazardClass(answer))),
    packingGroup: each(item(({ packingGroup }) => words.packingGroup(packingGroup))),
    precautions: [
      ...each(({ limitedQuantity }) => limitedQuantity && words.limitedQuantity(limitedQuantity)),
      ...each(({ hazardLabels }) => words.hazardLabels(hazardLabels)),
      words.modes,
    ],
  };
}

/** One text where it holds for all packs, else the packs before each. */
function perPack(
  { transport: answers, words }: SheetInput,
  say: (answer: TransportAnswer) => string | null,
): readonly string[] {
  const packs = new Map<string, string[]>();
  for (const { pack, answer } of answers) {
    const text = say(answer);
    if (text !== null) packs.set(text, [...(packs.get(text) ?? []), pack ?? '']);
  }
  return [...packs].map(([text, of]) =>
    of.length === answers.length ? text : words.sheet.transport.ofPacks(of, text),
  );
}

function notRegulated(input: SheetInput, { because }: TransportAnswer): string {
  // The ground of an aqueous alcohol tells its share.
  const told = secretsOf(input).percent.size === 0 ? [...grounds, 'aqueous-alcohol'] : grounds;
  return input.words.sheet.transport.notRegulated(because.filter(({ id }) => told.includes(id)));
}

/** Marine pollutant or not; nothing where an ingredient of unknown identity or condition leaves it open. */
function marine(input: SheetInput): readonly string[] {
  const { transport: words } = input.words.sheet;
  if (input.transport.some(({ answer }) => answer.marinePollutant)) return [words.marinePollutant(true)];
  const { facts, names } = marineDoubts(input);
  return facts.length + names.length > 0 ? [] : [words.marinePollutant(false)];
}

/** What keeps an ingredient from being held against Appendix B to 49 CFR 172.101. */
function marineDoubts({ transport: answers, formula }: SheetInput) {
  const facts = distinct(answers.flatMap(({ answer }) => answer.because)).filter(
    ({ id }) => id === 'marine-pollutant-if',
  );
  const names = formula.constituents.filter(({ cas, water }) => !cas && !water).map(({ name }) => name);
  return { facts, names };
}

const distinct = (facts: readonly Fact[]): readonly Fact[] => [
  ...new Map(
    facts.map(({ id, cite, values }) => [JSON.stringify([id, cite, values]), { id, cite, values }]),
  ).values(),
];

/** What the reviewer must look at in section 14: what is missing, what may change it, what is withheld. */
export function transportQuestions(input: SheetInput): readonly string[] {
  const { transport: words } = input.words.sheet;
  const lines = perPack(input, answer => {
    const open = distinct(answer.because).filter(({ id }) => doubts.includes(id));
    const missing = distinct(answer.missing);
    if (answer.answer === 'undecided') return words.undecided(open, missing);
    return open.length + missing.length > 0 ? words.mayChange(open, missing) : null;
  });
  const { facts, names } = marineDoubts(input);
  const pollutant = input.transport.some(({ answer }) => answer.marinePollutant);
  const secret = withheld(input);
  const { name } = secretsOf(input);
  const entries = input.transport.flatMap(({ answer }) => withheldEntry(input, answer) ?? []);
  const technical = input.transport
    .flatMap(({ answer }) => answer.technical)
    .filter(each => secret.has(each.toLowerCase()));
  return [
    ...lines,
    ...(!pollutant && facts.length + names.length > 0 ? [words.marineOpen(names, facts)] : []),
    ...[...new Set(entries)].map(words.nameWithheld),
    ...[...new Set(technical)].map(each =>
      words.technicalWithheld(each, name(secret.get(each.toLowerCase())!)),
    ),
  ].map(words.review);
}
