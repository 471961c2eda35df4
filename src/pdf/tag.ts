import {
  type PDFContext,
  type PDFDict,
  PDFHexString,
  PDFName,
  type PDFObject,
  type PDFRef,
  PDFString,
} from 'pdf-lib';
import type { Tag } from '../layout/frame.ts';
import { snapped } from './_number.ts';
import type { Mark } from './content.ts';

interface Kid {
  readonly order: number;
  readonly object: PDFObject;
}

/** The written structure tree and where its elements are. */
export interface StructureTree {
  readonly root: PDFRef;
  readonly elements: ReadonlyMap<Tag, PDFRef>;
}

const attributes = (context: PDFContext, tag: Tag, marks: readonly Mark[]): PDFObject | undefined => {
  if (tag.scope || tag.colSpan) {
    return context.obj({
      O: 'Table',
      ...(tag.scope && { Scope: tag.scope }),
      ...(tag.colSpan && { ColSpan: tag.colSpan }),
    });
  }
  if (tag.listNumbering) return context.obj({ O: 'List', ListNumbering: tag.listNumbering });
  if (tag.type !== 'Figure' || marks.length === 0) return undefined;
  const corner = (index: 0 | 1 | 2 | 3, pick: (...values: number[]) => number) =>
    snapped(pick(...marks.map(({ box }) => box[index])));
  const BBox = [corner(0, Math.min), corner(1, Math.min), corner(2, Math.max), corner(3, Math.max)];
  return context.obj({ O: 'Layout', Placement: 'Block', BBox });
};

/**
 * Writes the structure tree (ISO 32000-1 14.7.2) with its parent tree. Children keep their declared order; own
 * content of an element goes before the first child that is marked later.
 * @throws Error where content points to a tag that is not in the tree, or one tag stands in it twice
 */
export const writeStructure = (
  context: PDFContext,
  rootTag: Tag,
  marks: readonly Mark[],
  pages: readonly PDFRef[],
): StructureTree => {
  const root = context.nextRef();
  const elements = new Map<Tag, PDFRef>();
  const own = new Map<Tag, { mark: Mark; order: number }[]>();
  for (const [order, mark] of marks.entries())
    own.set(mark.tag, [...(own.get(mark.tag) ?? []), { mark, order }]);

  const write = (tag: Tag, parent: PDFRef): Kid => {
    if (elements.has(tag)) throw new Error(`a ${tag.type} stands twice in the structure tree`);
    const element = context.nextRef();
    elements.set(tag, element);
    const mine = own.get(tag) ?? [];
    const page = mine[0] ? pages[mine[0].mark.page] : undefined;
    const content = mine.map(({ mark, order }): Kid => {
      const target = pages[mark.page]!;
      const object =
        target === page ? context.obj(mark.id) : context.obj({ Type: 'MCR', Pg: target, MCID: mark.id });
      return { order, object };
    });
    const kids: PDFObject[] = [];
    let first = content[0]?.order ?? Number.POSITIVE_INFINITY;
    for (const child of tag.children) {
      const kid = write(child, element);
      first = Math.min(first, kid.order);
      while (content[0] && content[0].order < kid.order && Number.isFinite(kid.order))
        kids.push(content.shift()!.object);
      kids.push(kid.object);
    }
    kids.push(...content.map(({ object }) => object));
    const dict: PDFDict = context.obj({ Type: 'StructElem', S: tag.type, P: parent });
    if (page) dict.set(PDFName.of('Pg'), page);
    if (kids.length > 0) dict.set(PDFName.of('K'), context.obj(kids));
    if (tag.alt) dict.set(PDFName.of('Alt'), PDFHexString.fromText(tag.alt));
    if (tag.lang) dict.set(PDFName.of('Lang'), PDFString.of(tag.lang));
    const attached = attributes(
      context,
      tag,
      mine.map(({ mark }) => mark),
    );
    if (attached) dict.set(PDFName.of('A'), attached);
    context.assign(element, dict);
    return { order: first, object: element };
  };

  const top = write(rootTag, root).object;
  const nums = pages.flatMap((_, page) => {
    const parents = marks
      .filter(mark => mark.page === page)
      .map(({ tag }) => {
        const element = elements.get(tag);
        if (!element) throw new Error(`content is tagged with a ${tag.type} outside the structure tree`);
        return element;
      });
    return [context.obj(page), context.register(context.obj(parents))];
  });
  const parentTree = context.register(context.obj({ Nums: nums }));
  context.assign(
    root,
    context.obj({
      Type: 'StructTreeRoot',
      K: [top],
      ParentTree: parentTree,
      ParentTreeNextKey: pages.length,
    }),
  );
  return { root, elements };
};
