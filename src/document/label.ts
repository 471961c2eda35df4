import type { LabelElements, PrecautionaryStatement, PrecautionGroup } from '../labelling/label-elements.ts';
import type { Millimetres } from '../quantity/length.ts';
import type { CompleteRecord, Maker, Pack } from '../record/product-record.ts';
import { netContents } from './net-contents.ts';
import type { Element } from './nodes.ts';
import { pictogramTitle } from './pictogram-title.ts';
import type { Template } from './template.ts';

/** What a label is made of. */
export interface LabelInput {
  readonly record: Pick<CompleteRecord, 'name' | 'code' | 'maker' | 'copy'>;
  readonly pack: Pack;
  readonly elements: LabelElements;
  /** No valid sign-off stands beside the record: the label says that it is a draft. */
  readonly draft: boolean;
  /** Longer forms of the notice of a draft, which say what is open, the longest first; the first that has room is taken. */
  readonly notices?: readonly string[];
  /** Lines on how to dilute, which follow the maker's directions. */
  readonly dilutions?: readonly string[];
  /** ISO 8601 instant. */
  readonly date: string;
  /** The regulated panel alone, to drop into artwork. */
  readonly only?: 'precautions';
}

/** A label as a tree of nodes without coordinates, with the facts that its geometry needs. */
export interface LabelModel {
  readonly root: Element;
  readonly title: string;
  readonly subject: string;
  readonly language: string;
  readonly date: string;
  /** GTIN with a right check digit, or null where the pack has none or the panel carries none. */
  readonly gtin: string | null;
  /** How the GTIN is to be printed, where the record says. */
  readonly barCode?: Pack['barCode'];
  readonly container: Pack['container'];
  /** Size of the window for lot and date that the coder needs, or null where the layout may choose. */
  readonly lotWindow: { readonly width: Millimetres; readonly height: Millimetres } | null;
  /** The regulated panel alone, to drop into artwork: without cut line and bleed. */
  readonly panel: boolean;
  /** Longer forms of the notice of a draft, the longest first. */
  readonly notices: readonly string[];
}

/** Headings of the groups of precautionary statements (29 CFR 1910.1200 App. C, C.2.4.1). */
const GROUPS: readonly (readonly [PrecautionGroup, string | null])[] = [
  ['general', null],
  ['prevention', 'Prevention'],
  ['response', 'Response'],
  ['storage', 'Storage'],
  ['disposal', 'Disposal'],
];

/** Fills the label template; its sections keep the order and the wording that the template gives them. */
export function labelDocument(input: LabelInput, template: Template): LabelModel {
  const { record, pack, elements, draft, date, only } = input;
  const whole = only !== 'precautions';
  const gtin = whole ? pack.gtin : null;
  const hazards = hazardData(elements);
  const root = template.fill({
    language: 'en-US',
    draft,
    whole,
    name: record.name,
    code: record.code,
    tagline: record.copy.tagline,
    directions: record.copy.directions,
    dilutions: input.dilutions ?? [],
    directed: record.copy.directions.length + (input.dilutions ?? []).length > 0,
    maker: makerData(record.maker),
    contents: netContents(pack.contents)?.text ?? pack.contents.written,
    gtin,
    lot: pack.lotWindow !== 'none',
    // Without a hazard there is nothing that the least label of a small container could leave out.
    reduced: hazards.hazard && pack.smallContainer?.part === 'container',
    outer: pack.smallContainer?.part === 'outer-package',
    ...hazards,
  });
  return {
    root,
    title: `${record.name}, label for ${pack.id}`,
    subject: draft ? 'Draft label for qualified review' : 'Label',
    language: root.attributes.lang ?? 'en-US',
    date,
    gtin,
    barCode: pack.barCode ?? null,
    container: pack.container,
    lotWindow: pack.lotWindow === 'none' ? null : pack.lotWindow,
    panel: !whole,
    notices: draft ? (input.notices ?? []) : [],
  };
}

/** A telephone number stays on one line. */
const unbroken = (text: string): string => text.replaceAll(' ', '\u00a0');

const makerData = ({ name, address, telephone, emergency }: Maker) => ({
  name,
  address,
  telephone: unbroken(telephone),
  emergency: { telephone: unbroken(emergency.telephone), hours: unbroken(emergency.hours) },
});

function hazardData({
  signalWord,
  pictograms,
  hazardStatements,
  precautionaryStatements,
  supplemental,
}: LabelElements) {
  const precautions = GROUPS.map(([group, heading]) => ({
    heading,
    paragraphs: paragraphsOf(precautionaryStatements.filter(statement => statement.group === group)),
  })).filter(({ paragraphs }) => paragraphs.length > 0);
  return {
    hazard: Boolean(signalWord) || hazardStatements.length + pictograms.length + supplemental.length > 0,
    signalWord,
    pictograms: pictograms.map(code => ({ code, title: pictogramTitle(code) })),
    hazardStatements,
    supplemental,
    precautions,
  };
}

/** Longest lead-in that stays on one line. */
const SHORT_LEAD = 14;

const shortUnbroken = (lead: string): string => (lead.length <= SHORT_LEAD ? unbroken(lead) : lead);

/** Statements on spills, which would seem to go with the lead-in of the statement before them. */
const SPILL = /^P39[01]$/;

/** Statements set as one paragraph: those without a condition run on, each condition begins one of its own. */
interface StatementParagraph {
  readonly lead: string | null;
  readonly statements: readonly string[];
}

/**
 * Statements as paragraphs: those on spills first; a condition with what is to be done starts a line, and a
 * condition that follows another is named once where both have the same
 * (29 CFR 1910.1200 App. C, C.2.4.6: statements may be combined to improve readability).
 */
function paragraphsOf(statements: LabelElements['precautionaryStatements']): readonly StatementParagraph[] {
  const spill = statements.filter(({ code }) => SPILL.test(code));
  const others = statements.filter(({ code }) => !SPILL.test(code));
  const paragraphs: { lead: string | null; statements: string[] }[] = [];
  for (const statement of [...spill, ...others]) {
    const { lead, rest } = leadIn(statement);
    const last = paragraphs.at(-1);
    if (last && last.lead === lead) last.statements.push(rest);
    else paragraphs.push({ lead, statements: [rest] });
  }
  return paragraphs;
}

/** `If in eyes:` is set apart, so that the way of contact is found at a glance. */
function leadIn({ text, lead }: PrecautionaryStatement): {
  readonly lead: string | null;
  readonly rest: string;
} {
  return lead ? { lead: shortUnbroken(lead), rest: text.slice(lead.length + 1) } : { lead: null, rest: text };
}
