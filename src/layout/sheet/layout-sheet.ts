import type { SheetModel } from '../../document/sheet.ts';
import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { type PlacedStrip, paginate } from '../flow/paginate.ts';
import { moved, type Strip } from '../flow/strip.ts';
import type { Attachment, Frame, PagedDocument, Tag } from '../frame.ts';
import { snapFrame } from '../snap.ts';
import { furniture } from './furniture.ts';
import { type PaperName, pageMeasures } from './measures.ts';
import { sheetStrips } from './sections.ts';
import type { Setting } from './setting.ts';

export type { PaperName } from './measures.ts';

export interface SheetLayout {
  readonly paper: PaperName;
  /** Files to carry along, such as the record and the classification. */
  readonly attachments?: readonly Attachment[];
}

/**
 * Sets a data sheet on pages: text in one flow, head and foot on every page, structure tree for readers.
 * @throws MissingGlyphError where the fonts lack a character of the record
 */
export function layoutSheet(
  model: SheetModel,
  fonts: FontLibrary,
  { paper, attachments = [] }: SheetLayout,
): PagedDocument {
  const setting: Setting = { fonts, page: pageMeasures(paper) };
  const { width, height, left, top, textHeight } = setting.page;
  const root: Tag = { type: 'Document', children: [], lang: model.language };
  const pages = filled(sheetStrips(setting, model.root, root), textHeight);
  const frames = pages.map((placed, at): Frame => {
    const flow = placed.flatMap(({ strip, y }) => strip.items.map(item => moved(item, left, top + y)));
    const items = [...furniture(setting, model, at + 1, pages.length), ...flow];
    return snapFrame({ width, height, bleed: 0, slug: 0, items });
  });
  const { title, language, subject, date } = model;
  return { frames, root, title, language, subject, date, attachments };
}

/** A last page that holds less is to be done without. */
const NEARLY_EMPTY = 0.3;
/** How much more a page may hold, and how much of the space between parts is kept, to save a page. */
const TIGHTER: readonly { readonly more: Millimetres; readonly space: number }[] = [
  { more: 3.5, space: 1 },
  { more: 3.5, space: 0.6 },
  { more: 4, space: 0.3 },
];

/** How much less a page may hold, so that the last one is not nearly empty where it cannot be saved. */
const SHORTER: readonly Millimetres[] = [6, 12, 18, 24, 30];

/** The pages; where the last would be nearly empty, set a little tighter if that saves it, else spread over all. */
function filled(strips: readonly Strip[], height: Millimetres): readonly (readonly PlacedStrip[])[] {
  const pages = paginate(strips, height);
  if (pages.length < 2 || !isNearlyEmpty(pages, height)) return pages;
  for (const { more, space } of TIGHTER) {
    const closer = strips.map(each => ({ ...each, before: each.before * space }));
    const fewer = paginate(closer, height + more);
    if (fewer.length < pages.length) return fewer;
  }
  const spread = SHORTER.map(less => paginate(strips, height - less)).find(
    other => other.length === pages.length && !isNearlyEmpty(other, height),
  );
  return spread ?? pages;
}

function isNearlyEmpty(pages: readonly (readonly PlacedStrip[])[], height: Millimetres): boolean {
  const last = pages.at(-1)?.at(-1);
  return last !== undefined && last.y + last.strip.height <= NEARLY_EMPTY * height;
}
