import { type PDFContext, PDFHexString, PDFName, PDFNull, type PDFRef } from 'pdf-lib';
import type { Tag } from '../layout/frame.ts';
import { snapped } from './_number.ts';
import type { Mark } from './content.ts';
import type { StructureTree } from './tag.ts';

interface Bookmark {
  readonly tag: Tag;
  readonly title: string;
  readonly mark: Mark;
  readonly children: Bookmark[];
}

const LEVELS: readonly Tag['type'][] = ['H1', 'H2'];

const within = (tag: Tag, into: Tag[] = []): Tag[] => {
  into.push(tag);
  for (const child of tag.children) within(child, into);
  return into;
};

/** Headings of the first two levels that have content, nested, in the order of the tree. */
const bookmarks = (root: Tag, marks: readonly Mark[]): Bookmark[] => {
  const top: Bookmark[] = [];
  for (const tag of within(root)) {
    if (!LEVELS.includes(tag.type)) continue;
    const parts = new Set(within(tag));
    const content = marks.filter(mark => parts.has(mark.tag));
    const mark = content[0];
    if (!mark) continue;
    const title = content
      .map(({ text }) => text)
      .join('')
      .replace(/\s+/gu, ' ')
      .trim();
    const siblings = tag.type === 'H1' ? top : (top.at(-1)?.children ?? top);
    siblings.push({ tag, title, mark, children: [] });
  }
  return top;
};

const total = (entries: readonly Bookmark[]): number =>
  entries.reduce((sum, { children }) => sum + 1 + total(children), 0);

/** Writes the outline from the headings; undefined where there are none. */
export const writeOutline = (
  context: PDFContext,
  rootTag: Tag,
  marks: readonly Mark[],
  pages: readonly PDFRef[],
  { elements }: StructureTree,
): PDFRef | undefined => {
  const top = bookmarks(rootTag, marks);
  if (top.length === 0) return undefined;
  const write = (entries: readonly Bookmark[], parent: PDFRef): PDFRef[] => {
    const refs = entries.map(() => context.nextRef());
    for (const [index, { tag, title, mark, children }] of entries.entries()) {
      const dict = context.obj({
        Title: PDFHexString.fromText(title),
        Parent: parent,
        Dest: [pages[mark.page], 'XYZ', snapped(mark.box[0]), snapped(mark.box[3]), PDFNull],
        SE: elements.get(tag),
      });
      const link = (key: string, ref: PDFRef | undefined) => ref && dict.set(PDFName.of(key), ref);
      link('Prev', refs[index - 1]);
      link('Next', refs[index + 1]);
      if (children.length > 0) {
        const nested = write(children, refs[index]!);
        link('First', nested[0]);
        link('Last', nested.at(-1));
        dict.set(PDFName.of('Count'), context.obj(total(children)));
      }
      context.assign(refs[index]!, dict);
    }
    return refs;
  };
  const root = context.nextRef();
  const refs = write(top, root);
  context.assign(
    root,
    context.obj({ Type: 'Outlines', First: refs[0], Last: refs.at(-1), Count: total(top) }),
  );
  return root;
};
