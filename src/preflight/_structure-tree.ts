import { type PDFDocument, PDFNumber, type PDFObject, PDFRef } from 'pdf-lib';
import { asDict, asName, asNumber, entry, members, rawEntry, rawMembers } from './_objects.ts';

/** An element of the structure tree as read back. */
export interface StructureElement {
  readonly object: PDFObject;
  readonly type: string;
  readonly children: readonly StructureElement[];
  /** Content as `page object number:identifier`. */
  readonly content: readonly string[];
  readonly parentIsRight: boolean;
}

export const contentKey = (page: PDFObject | undefined, mcid: number): string =>
  `${page instanceof PDFRef ? page.objectNumber : '?'}:${mcid}`;

/** Reads the tree of a file; undefined where it has none. Elements already seen are not entered again. */
export const readStructure = (document: PDFDocument): StructureElement[] | undefined => {
  const root = entry(document.catalog, 'StructTreeRoot');
  if (!root) return undefined;
  const seen = new Set<PDFObject>();
  const read = (object: PDFObject, parent: PDFObject): StructureElement => {
    seen.add(object);
    const page = rawEntry(object, 'Pg');
    const children: StructureElement[] = [];
    const content: string[] = [];
    for (const kid of kidsOf(object)) {
      if (kid instanceof PDFNumber) content.push(contentKey(page, kid.asNumber()));
      else if (asName(entry(kid, 'Type')) === 'MCR')
        content.push(contentKey(rawEntry(kid, 'Pg') ?? page, asNumber(entry(kid, 'MCID')) ?? -1));
      else if (asDict(kid) && !seen.has(kid)) children.push(read(kid, object));
    }
    const type = asName(entry(object, 'S')) ?? '';
    return { object, type, children, content, parentIsRight: entry(object, 'P') === parent };
  };
  const kidsOf = (object: PDFObject): PDFObject[] => members(entry(object, 'K'));
  return kidsOf(root).map(kid => read(kid, root));
};

/** All elements of a tree in reading order. */
export const flattened = (
  elements: readonly StructureElement[],
  into: StructureElement[] = [],
): StructureElement[] => {
  for (const element of elements) {
    into.push(element);
    flattened(element.children, into);
  }
  return into;
};

/** The parent tree: element by `StructParents` key of the page and identifier (ISO 32000-1 14.7.4.4). */
export const parentTreeOf = (document: PDFDocument): Map<number, readonly (PDFObject | undefined)[]> => {
  const found = new Map<number, readonly (PDFObject | undefined)[]>();
  const walk = (node: PDFObject | undefined): void => {
    const nums = members(entry(node, 'Nums'));
    for (let index = 0; index + 1 < nums.length; index += 2) {
      const parents = rawMembers(nums[index + 1]).map(parent => document.context.lookup(parent));
      found.set(asNumber(nums[index]) ?? -1, parents);
    }
    for (const kid of members(entry(node, 'Kids'))) walk(kid);
  };
  walk(entry(entry(document.catalog, 'StructTreeRoot'), 'ParentTree'));
  return found;
};
