import type { PDFDocument } from 'pdf-lib';
import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asName, asNumber, asText, entry, members } from './_objects.ts';
import {
  contentKey,
  flattened,
  parentTreeOf,
  readStructure,
  type StructureElement,
} from './_structure-tree.ts';
import type { PageMarks } from './page-marks.ts';

const UA = 'ISO 14289-1';

const ALLOWED_IN: Readonly<Record<string, readonly string[]>> = {
  Table: ['Caption', 'THead', 'TBody', 'TFoot', 'TR'],
  THead: ['TR'],
  TBody: ['TR'],
  TFoot: ['TR'],
  TR: ['TH', 'TD'],
  L: ['Caption', 'LI'],
  LI: ['Lbl', 'LBody'],
};
const PARENT_OF: Readonly<Record<string, readonly string[]>> = {
  TR: ['Table', 'THead', 'TBody', 'TFoot'],
  TH: ['TR'],
  TD: ['TR'],
  LI: ['L'],
  LBody: ['LI'],
};

const attribute = (element: StructureElement, key: string) =>
  members(entry(element.object, 'A'))
    .map(attributes => entry(attributes, key))
    .find(value => value !== undefined);

const checkRows = (table: StructureElement): Diagnostic[] => {
  const rows = flattened(table.children).filter(({ type }) => type === 'TR');
  const widths = rows.map(({ children }) =>
    children.reduce((sum, cell) => sum + (asNumber(attribute(cell, 'ColSpan')) ?? 1), 0),
  );
  return new Set(widths).size > 1
    ? [finding('table-rows', `rows of one table have ${widths.join(', ')} cells`, `${UA} 7.2`)]
    : [];
};

const checkElement = (element: StructureElement, parent: string): Diagnostic[] => {
  const { type, children, parentIsRight, object } = element;
  const findings: Diagnostic[] = [];
  if (!parentIsRight)
    findings.push(finding('structure-parent', `a ${type} does not point to its parent`, `${UA} 7.1`));
  for (const child of children)
    if (ALLOWED_IN[type] && !ALLOWED_IN[type].includes(child.type))
      findings.push(finding('structure-nesting', `${child.type} stands in ${type}`, `${UA} 7.2`));
  if (PARENT_OF[type] && !PARENT_OF[type].includes(parent))
    findings.push(finding('structure-nesting', `${type} stands in ${parent || 'the root'}`, `${UA} 7.2`));
  if (type === 'TH' && !['Row', 'Column', 'Both'].includes(asName(attribute(element, 'Scope')) ?? ''))
    findings.push(finding('header-scope', 'a header cell does not say what it heads', `${UA} 7.5`));
  if (type === 'Figure' && !(asText(entry(object, 'Alt')) ?? asText(entry(object, 'ActualText')))?.trim())
    findings.push(finding('figure-alt', 'a figure has no alternative text', `${UA} 7.3`));
  if (type === 'Table') findings.push(...checkRows(element));
  return [...findings, ...children.flatMap(child => checkElement(child, type))];
};

const checkHeadings = (elements: readonly StructureElement[]): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  let level = 0;
  for (const { type, content, children } of elements) {
    const next = /^H([1-6])$/u.exec(type)?.[1];
    if (next === undefined) continue;
    if (Number(next) > level + 1)
      findings.push(
        finding('heading-order', `H${next} follows ${level ? `H${level}` : 'no heading'}`, `${UA} 7.4.2`),
      );
    if (flattened(children).every(child => child.content.length === 0) && content.length === 0)
      findings.push(finding('heading-empty', `an ${type} has no content`, `${UA} 7.4`));
    level = Number(next);
  }
  return findings;
};

/** Content on the pages, kids of the elements and parent tree must say the same. */
const checkParentTree = (
  document: PDFDocument,
  elements: readonly StructureElement[],
  pages: readonly PageMarks[],
): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const cite = 'ISO 32000-1 14.7.4.4';
  const parents = parentTreeOf(document);
  const owner = new Map(
    elements.flatMap(({ content, object }) => content.map(key => [key, object] as const)),
  );
  const marked = new Set<string>();
  for (const { page, sequences } of pages) {
    const row = parents.get(asNumber(entry(page.dict, 'StructParents')) ?? -1) ?? [];
    for (const { content } of sequences) {
      if (content.mcid === undefined) continue;
      const key = contentKey(page.ref, content.mcid);
      marked.add(key);
      const parent = row[content.mcid];
      if (!parent || parent !== owner.get(key))
        findings.push(finding('parent-tree', `content ${key} and the structure tree disagree`, cite));
    }
  }
  for (const key of owner.keys())
    if (!marked.has(key)) findings.push(finding('parent-tree', `no page has the content ${key}`, cite));
  return findings;
};

/** Checks the structure tree: links, nesting, headings, header cells, figures, agreement with the pages. */
export const checkStructure = (document: PDFDocument, pages: readonly PageMarks[]): Diagnostic[] => {
  const tree = readStructure(document);
  if (!tree || tree.length === 0)
    return [finding('no-structure', 'the file has no structure tree', `${UA} 7.1`)];
  const elements = flattened(tree);
  return [
    ...tree.flatMap(element => checkElement(element, '')),
    ...checkHeadings(elements),
    ...checkParentTree(document, elements, pages),
  ];
};

/** Checks that a data sheet can be navigated: bookmarks in the outline. */
export const checkOutline = (document: PDFDocument): Diagnostic[] =>
  entry(entry(document.catalog, 'Outlines'), 'First')
    ? []
    : [finding('no-outline', 'the sheet has no bookmarks', `${UA} 7.17`, 'warning')];
