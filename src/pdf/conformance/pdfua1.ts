import type { PagedDocument, Tag } from '../../layout/frame.ts';

type TagType = Tag['type'];

// ISO 14289-1 7.2 with ISO 32000-1 14.8.4.3: what may stand in what.
const ALLOWED_IN: Partial<Readonly<Record<TagType, readonly TagType[]>>> = {
  Table: ['Caption', 'THead', 'TBody', 'TR'],
  THead: ['TR'],
  TBody: ['TR'],
  TR: ['TH', 'TD'],
  L: ['Caption', 'LI'],
  LI: ['Lbl', 'LBody'],
};

/** A tag with all below it, in reading order. */
const all = (tag: Tag, into: Tag[] = []): Tag[] => {
  into.push(tag);
  for (const child of tag.children) all(child, into);
  return into;
};

const rows = (table: Tag): Tag[] => all(table).filter(({ type }) => type === 'TR');

const tableFaults = (table: Tag): string[] => {
  const faults: string[] = [];
  const count = (type: TagType) => table.children.filter(child => child.type === type).length;
  if (count('THead') > 1) faults.push('7.2: a table has more than one head');
  if (count('THead') > 0 && count('TBody') === 0) faults.push('7.2: a table has a head without a body');
  const widths = rows(table).map(row => row.children.reduce((sum, { colSpan = 1 }) => sum + colSpan, 0));
  if (new Set(widths).size > 1)
    faults.push(`7.2: rows of ${[...new Set(widths)].join(' and ')} cells in one table`);
  return faults;
};

const headingFaults = (tags: readonly Tag[]): string[] => {
  let level = 0;
  const faults: string[] = [];
  for (const { type } of tags) {
    const next = /^H([1-6])$/u.exec(type)?.[1];
    if (next === undefined) continue;
    if (Number(next) > level + 1)
      faults.push(`7.4.2: H${next} follows ${level === 0 ? 'no heading' : `H${level}`}`);
    level = Number(next);
  }
  return faults;
};

const validLanguage = (language: string): boolean => {
  try {
    return Intl.getCanonicalLocales(language).length === 1;
  } catch {
    return false;
  }
};

/**
 * What keeps a document from claiming PDF/UA-1, each with its clause of ISO 14289-1; the lines marked "model" in the
 * checklist beside this file.
 */
export const pdfua1Faults = ({ title, language, root, attachments }: PagedDocument): string[] => {
  const faults: string[] = [];
  const tags = all(root);
  if (title.trim() === '') faults.push('7.1: the document has no title');
  for (const tag of [language, ...tags.flatMap(({ lang }) => lang ?? [])])
    if (!validLanguage(tag)) faults.push(`7.2: "${tag}" is not a language tag`);
  if (root.type !== 'Document') faults.push(`7.1: the tree starts with ${root.type}`);
  for (const tag of tags) {
    const { type, children, scope, alt } = tag;
    const allowed = ALLOWED_IN[type];
    for (const child of children)
      if (allowed && !allowed.includes(child.type)) faults.push(`7.2: ${child.type} in ${type}`);
    if (type === 'TH' && !scope) faults.push('7.5: a header cell without scope');
    if (type === 'Figure' && !alt?.trim()) faults.push('7.3: a figure without alternative text');
    if (type === 'Table') faults.push(...tableFaults(tag));
  }
  for (const { name, description } of attachments)
    if (description.trim() === '') faults.push(`7.11: the attached file ${name} has no description`);
  return [...faults, ...headingFaults(tags)];
};
