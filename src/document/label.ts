import type { LabelElements, PrecautionGroup } from '../labelling/label-elements.ts';
import type { Millimetres } from '../quantity/length.ts';
import { marked } from '../quantity/print.ts';
import type { CompleteRecord, Maker, Pack } from '../record/product-record.ts';
import { label as englishLabel } from '../words/en/label.ts';
import { lawTerms as englishTerms } from '../words/en/terms.ts';
import { inTerms } from '../words/in-terms.ts';
import type { LabelWords } from '../words/label-words.ts';
import type { SheetWords } from '../words/sheet-words.ts';
import { type ForeignText, markForeign } from './foreign.ts';
import { netContents } from './net-contents.ts';
import type { Element } from './nodes.ts';
import { pictogramTitle } from './pictogram-title.ts';
import { paragraphsOf, unbroken } from './statement-paragraphs.ts';
import type { Template } from './template.ts';
import type { TypeRules } from './type-rules.ts';

/** What a template of a purpose asks for beside name, maker, contents and the elements, by the name of its fields. */
export type LabelSections = Readonly<Record<string, unknown>>;

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
  readonly sections?: LabelSections;
  /** What the law of the purpose asks of the type. */
  readonly type?: TypeRules | null;
  /** In which language it is; English where absent. */
  readonly said?: LabelLanguage;
  /** Texts in another language than that. */
  readonly foreign?: readonly ForeignText[];
  /** Elements said once more in another language, after the whole label. */
  readonly added?: { readonly elements: LabelElements; readonly said: LabelLanguage } | null;
}

/** What a label takes of a language. */
export interface LabelLanguage {
  /** BCP 47 */
  readonly language: string;
  readonly words: LabelWords;
  readonly terms: SheetWords['terms'];
  readonly decimalMark: string;
}

const ENGLISH: LabelLanguage = {
  language: 'en-US',
  words: englishLabel,
  terms: englishTerms,
  decimalMark: '.',
};

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
  /** What the law of the purpose asks of the type; null where the press decides. */
  readonly type: TypeRules | null;
}

/** Groups of precautionary statements in their order (29 CFR 1910.1200 App. C, C.2.4.1); the first has no heading. */
const GROUPS: readonly PrecautionGroup[] = ['general', 'prevention', 'response', 'storage', 'disposal'];

/** Fills the label template; its sections keep the order and the wording that the template gives them. */
export function labelDocument(input: LabelInput, template: Template): LabelModel {
  const { record, pack, elements, draft, date, only, sections = {}, type = null } = input;
  const { said = ENGLISH, foreign = [], added = null } = input;
  const { words } = said;
  const whole = only !== 'precautions';
  const gtin = whole ? pack.gtin : null;
  const hazards = hazardData(elements, said);
  const filled = template.fill({
    language: said.language,
    phrases: words,
    translation: added && {
      language: added.said.language,
      title: added.said.words.translation,
      ...hazardData(added.elements, added.said),
    },
    draft,
    whole,
    name: record.name,
    code: record.code,
    tagline: record.copy.tagline,
    directions: record.copy.directions,
    dilutions: input.dilutions ?? [],
    directed: record.copy.directions.length + (input.dilutions ?? []).length > 0,
    maker: makerData(record.maker),
    contents: marked(netContents(pack.contents)?.text ?? pack.contents.written, said.decimalMark),
    gtin,
    lot: pack.lotWindow !== 'none',
    // Without a hazard there is nothing that the least label of a small container could leave out.
    reduced: hazards.hazard && pack.smallContainer?.part === 'container',
    outer: pack.smallContainer?.part === 'outer-package',
    ...hazards,
    ...sections,
  });
  const root = markForeign(filled, foreign);
  return {
    root,
    title: words.title(record.name, pack.id),
    subject: draft ? words.subject.draft : words.subject.final,
    language: root.attributes.lang ?? said.language,
    date,
    gtin,
    barCode: pack.barCode ?? null,
    container: pack.container,
    lotWindow: pack.lotWindow === 'none' ? null : pack.lotWindow,
    panel: !whole,
    notices: draft ? (input.notices ?? []) : [],
    type,
  };
}

const makerData = ({ name, address, telephone, emergency }: Maker) => ({
  name,
  address,
  telephone: unbroken(telephone),
  emergency: { telephone: unbroken(emergency.telephone), hours: unbroken(emergency.hours) },
});

function hazardData(
  { signalWord, pictograms, hazardStatements, precautionaryStatements, supplemental }: LabelElements,
  { words, terms }: LabelLanguage,
) {
  const precautions = GROUPS.map(group => ({
    heading: group === 'general' ? null : words.groups[group],
    paragraphs: paragraphsOf(precautionaryStatements.filter(statement => statement.group === group)),
  })).filter(({ paragraphs }) => paragraphs.length > 0);
  return {
    hazard: Boolean(signalWord) || hazardStatements.length + pictograms.length + supplemental.length > 0,
    signalWord: signalWord && inTerms(terms.signalWords, signalWord),
    pictograms: pictograms.map(code => ({
      code,
      title: inTerms(terms.pictograms, pictogramTitle(code)),
    })),
    hazardStatements,
    supplemental,
    precautions,
  };
}
