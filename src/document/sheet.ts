import type { Element } from './nodes.ts';
import type { SheetInput } from './sheet/input.ts';
import { revisionOf } from './sheet/other-information.ts';
import { fill, phrases } from './sheet/phrases.ts';
import { sheetSections } from './sheet/sections.ts';
import type { Template } from './template.ts';

export { sheetHtml } from './sheet/html.ts';
export type { SheetInput } from './sheet/input.ts';
export { sheetJson } from './sheet/json.ts';

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
  };
}

/**
 * Fills the template of the data sheet: the sections and subheadings of 29 CFR 1910.1200(g)(2) and Appendix D.
 * @throws TemplateError where the template asks for what is not there
 */
export function sheetDocument(input: SheetInput, template: Template): SheetModel {
  const { record, classification, draft, date } = input;
  const { frame } = phrases;
  const revision = revisionOf(input);
  const standing = [
    fill(frame.code, { code: record.code }),
    ...(revision ? [fill(frame.revision, { revision })] : []),
    fill(frame.date, { date: date.slice(0, 10) }),
    fill(frame.basis, { basis: classification.basis.title }),
  ];
  const sections = sheetSections(input).map(section => ({
    ...section,
    items: section.items.map(item => ({
      ...item,
      id: `${section.number}-${item.key}`,
      lines: [...item.text, ...item.list, ...item.notes],
    })),
  }));
  const root = template.fill({
    language: 'en-US',
    phrases: frame,
    name: record.name,
    standing,
    draft: draft ? frame.draft : null,
    sections,
  });
  return {
    root,
    title: `${frame.kind}: ${record.name}`,
    subject: draft ? `${frame.kind}, draft for qualified review` : frame.kind,
    language: root.attributes.lang ?? 'en-US',
    date,
    running: {
      product: record.name,
      kind: frame.kind,
      draft: draft ? frame.runningDraft : null,
      foot: [...standing.slice(0, -1), record.maker.name].join(' · '),
    },
  };
}
