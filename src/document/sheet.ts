import { inTerms } from '../words/in-terms.ts';
import { markForeign } from './foreign.ts';
import type { Element } from './nodes.ts';
import { fill } from './sheet/fill.ts';
import { sheetForm } from './sheet/form.ts';
import { isGhsSheet } from './sheet/ghs/sections.ts';
import type { SheetInput } from './sheet/input.ts';
import { dayOf, revisionOf } from './sheet/revisions.ts';
import { sheetSections } from './sheet/sections.ts';
import type { Template } from './template.ts';

export { claimFindings } from './sheet/claims.ts';
export { isGhsSheet } from './sheet/ghs/sections.ts';
export { sheetHtml } from './sheet/html.ts';
export type { SheetInput, SheetSolution } from './sheet/input.ts';
export { sheetJson } from './sheet/json.ts';
export { openNumbers, sheetQuestions } from './sheet/open-items.ts';
export { sheetSections } from './sheet/sections.ts';
export { transportQuestions } from './sheet/transport.ts';

/** A safety data sheet as a tree of nodes without coordinates, with what runs on every page. */
export interface SheetModel {
  readonly root: Element;
  readonly title: string;
  readonly subject: string;
  readonly language: string;
  /** ISO 8601 instant. */
  readonly date: string;
  readonly running: {
    readonly product: string;
    readonly kind: string;
    /** Notice for the head of every page; null once the sheet is signed. */
    readonly draft: string | null;
    /** Maker, code, revision and date. */
    readonly foot: string;
    /** The number of a page and how many there are. */
    page(number: number, count: number): string;
  };
}

/** Annex II, 0.2.5, has the date of compilation on the first page, of a revised sheet that of the revision. */
function dated(input: SheetInput): string {
  const { frame, ghs } = input.words.sheet;
  if (!isGhsSheet(input)) return frame.date;
  const revision = revisionOf(input);
  return revision === null || revision === '1' ? ghs.compiledOn : ghs.revisedOn;
}

/** Items that follow each other in one numbered sub-section, together. */
function partsOf<T extends { readonly part?: string; readonly id: string }>(
  items: readonly T[],
): readonly { readonly title: string | null; readonly id: string; readonly items: readonly T[] }[] {
  const parts: { title: string | null; id: string; items: T[] }[] = [];
  for (const item of items) {
    const title = item.part ?? null;
    const last = parts.at(-1);
    if (last && last.title === title) last.items.push(item);
    else parts.push({ title, id: `part-${item.id}`, items: [item] });
  }
  return parts;
}

/**
 * Fills the template of the data sheet: the sections and subheadings of the basis.
 * @throws TemplateError where the template asks for what is not there
 */
export function sheetDocument(input: SheetInput, template: Template): SheetModel {
  const { record, classification, draft } = input;
  const { frame } = input.words.sheet;
  const day = dayOf(input);
  const revision = revisionOf(input);
  const standing = [
    fill(frame.code, { code: record.code }),
    ...(revision ? [fill(frame.revision, { revision })] : []),
    fill(dated(input), { date: day }),
    fill(frame.basis, {
      basis: inTerms(input.words.sheet.terms.bases, classification.basis.title),
    }),
  ];
  const sections = sheetSections(input).map(section => ({
    ...section,
    head: section.head ?? `${section.number}. ${section.title}`,
    parts: partsOf(
      section.items.map(item => ({
        ...item,
        id: `item-${section.number}-${item.key}`,
        lines: [...item.text, ...item.list, ...item.notes],
      })),
    ),
  }));
  const language = input.words.language === 'en' ? 'en-US' : input.words.language;
  const asked = sheetForm(classification.basis.id).language;
  const filled = template.fill({
    language,
    phrases: frame,
    name: record.name,
    standing,
    draft: draft ? frame.draft : null,
    translation: asked !== null && asked !== input.words.language ? frame.translation : null,
    sections,
  });
  const root = markForeign(filled, input.foreign ?? []);
  return {
    root,
    // A copy that was saved under any name says of which product and revision it is.
    title: [`${frame.kind}: ${record.name}`, ...standing.slice(0, -1)].join(', '),
    subject: fill(draft ? frame.draftSubject : frame.subject, { kind: frame.kind, copy: frame.copy }),
    language: root.attributes.lang ?? language,
    date: `${day}T00:00:00Z`,
    running: {
      product: record.name,
      kind: frame.kind,
      draft: draft ? frame.runningDraft : null,
      foot: [...standing.slice(0, -1), record.maker.name].join(' · '),
      page: (number, count) => fill(frame.page, { number, count }),
    },
  };
}
