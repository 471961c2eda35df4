import { decodePDFRawStream, PDFDocument, PDFName, type PDFRawStream } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { PagedDocument, Tag } from '../../src/layout/frame.ts';
import { pdfua1Faults } from '../../src/pdf/conformance/pdfua1.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { SHEET, sheetDocument, tag } from '../support/paged-documents.ts';
import { extractText, openPdf } from '../support/render.ts';

const fonts = await loadFonts();
const bytes = await writePdf(sheetDocument(fonts), fonts, SHEET);

interface StructNode {
  readonly role?: string;
  readonly type?: string;
  readonly children?: readonly StructNode[];
}

/** Roles of a tree as pdf.js reads it, content left out. */
const roles = ({ role, children = [] }: StructNode): string => {
  const inner = children.filter(child => child.role).map(roles);
  return inner.length > 0 ? `${role}(${inner.join(' ')})` : `${role}`;
};

describe('a data sheet', () => {
  it('has the structure that the document model gave it, page by page', async () => {
    const pdf = await openPdf(bytes);
    const tree = async (number: number) =>
      roles((await (await pdf.getPage(number)).getStructTree()) as StructNode);
    expect(await tree(1)).toBe(
      'Root(Document(H1 Sect(H2 Table(THead(TR(TH TH)) TBody(TR(TD TD))) L(LI(Lbl LBody)) P)))',
    );
    expect(await tree(2)).toBe('Root(Document(Sect(P)))');
  });

  it('gives back every word in reading order, paragraphs running over pages', async () => {
    const [first, second] = await extractText(bytes);
    const words = (text: string | undefined) =>
      text!
        .split(/\s+/u)
        .filter(word => word !== '')
        .join(' ');
    expect(words(first)).toBe(
      'Draft Safety data sheet SECTION 3: Composition Substance % w/w sodium hydroxide ≥ 1 – < 2 • Wear protective gloves. This paragraph starts here',
    );
    expect(words(second)).toBe('and ends overleaf. Page 2 of 2');
  });

  it('is marked, titled, in a language, with bookmarks from its headings', async () => {
    const pdf = await openPdf(bytes);
    const { info, metadata } = await pdf.getMetadata();
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
    expect(info).toMatchObject({
      Title: sheetDocument(fonts).title,
      Language: 'en',
      IsAcroFormPresent: false,
    });
    expect(metadata.get('dc:title')).toBe(sheetDocument(fonts).title);
    expect(metadata.get('pdfuaid:part')).toBe('1');
    expect((await pdf.getViewerPreferences()) as object).toMatchObject({ DisplayDocTitle: true });
    const [outline, ...rest] = await pdf.getOutline();
    expect(rest).toEqual([]);
    expect(outline).toMatchObject({
      title: 'Safety data sheet',
      items: [{ title: 'SECTION 3: Composition', items: [] }],
    });
    expect(await pdf.getPageIndex(outline!.dest![0])).toBe(0);
  });

  it('carries its attachments', async () => {
    const attachments = (await (await openPdf(bytes)).getAttachments()) as Record<
      string,
      { filename: string; content: Uint8Array; description: string }
    >;
    const { filename, content, description } = attachments['record.json']!;
    expect([filename, description]).toEqual(['record.json', 'Product record']);
    expect(new TextDecoder().decode(content)).toBe('{"code":"KP-946"}');
  });

  it('names the text of lines that start with evenly spaced single characters (ISO 32000-1 14.9.4)', async () => {
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    const content = pdf.getPage(0).node.lookup(PDFName.of('Contents')) as PDFRawStream;
    const source = new TextDecoder().decode(decodePDFRawStream(content).decode());
    const named = [...source.matchAll(/\/Span <<\/ActualText <FEFF([0-9A-F]+)>>> BDC/gu)].map(([, hex]) =>
      Buffer.from(hex!, 'hex').swap16().toString('utf16le'),
    );
    expect(named).toEqual(['≥ 1 – < 2']);
  });

  it('writes the same bytes for the same input', async () => {
    expect(Buffer.from(await writePdf(sheetDocument(fonts), fonts, SHEET)).equals(bytes)).toBe(true);
  });

  it('refuses a cut line and a tag that stands in the tree twice', async () => {
    const document = sheetDocument(fonts);
    const die = {
      kind: 'path',
      tag: 'layout',
      layer: 'die',
      stroke: 'die',
      segments: [['M', 0, 0]],
    } as const;
    const frame = { ...document.frames[0]!, items: [die] };
    await expect(writePdf({ ...document, frames: [frame] }, fonts, SHEET)).rejects.toThrow(/no cut line/u);
    const twice = { ...document, root: tag('Document', [document.root, ...document.root.children]) };
    await expect(writePdf(twice, fonts, SHEET)).rejects.toThrow(/stands twice/u);
  });

  it('keeps own content of an element in order with that of its children', async () => {
    const document = sheetDocument(fonts);
    const [span, paragraph] = [tag('Span'), tag('P')];
    paragraph.children.push(span);
    const [, title, section, substance] = document.frames[0]!.items;
    const items = [
      { ...title!, tag: paragraph },
      { ...section!, tag: span },
      { ...substance!, tag: paragraph },
    ];
    const frames = [{ ...document.frames[0]!, items }];
    const written = await writePdf({ ...document, frames, root: tag('Document', [paragraph]) }, fonts, SHEET);
    const tree = (await (await (await openPdf(written)).getPage(1)).getStructTree()) as StructNode;
    const [{ children }] = tree.children![0]!.children as [StructNode];
    expect(children!.map(({ role, type }) => role ?? type)).toEqual(['content', 'Span', 'content']);
  });
});

describe('pdfua1Faults', () => {
  const base = sheetDocument(fonts);
  const faultsOf = (change: Partial<PagedDocument>) => pdfua1Faults({ ...base, ...change }).join('; ');
  const inTree = (...children: Tag[]) => faultsOf({ root: tag('Document', children) });
  const row = (...cells: Tag[]) => tag('TR', cells);

  it('finds nothing in a sound sheet', () => {
    expect(pdfua1Faults(base)).toEqual([]);
  });

  it.each([
    [/7\.1: the document has no title/u, () => faultsOf({ title: ' ' })],
    [/"english!" is not a language tag/u, () => faultsOf({ language: 'english!' })],
    [/7\.1: the tree starts with Sect/u, () => faultsOf({ root: tag('Sect') })],
    [/7\.2: P in TR/u, () => inTree(tag('Table', [row(tag('P'))]))],
    [/7\.2: TD in L/u, () => inTree(tag('L', [tag('TD')]))],
    [/7\.2: rows of 1 and 2 cells/u, () => inTree(tag('Table', [row(tag('TD')), row(tag('TD'), tag('TD'))]))],
    [/head without a body/u, () => inTree(tag('Table', [tag('THead', [row(tag('TD'))])]))],
    [/more than one head/u, () => inTree(tag('Table', [tag('THead'), tag('THead')]))],
    [/7\.5: a header cell without scope/u, () => inTree(tag('Table', [row(tag('TH'))]))],
    [/7\.3: a figure without alternative/u, () => inTree(tag('Figure'))],
    [/7\.4\.2: H2 follows no heading/u, () => inTree(tag('H2'))],
    [/7\.4\.2: H3 follows H1/u, () => inTree(tag('H1'), tag('H3'))],
    [
      /7\.11: the attached file/u,
      () => faultsOf({ attachments: [{ ...base.attachments[0]!, description: '' }] }),
    ],
  ])('finds %s', (fault, faults) => {
    expect(faults()).toMatch(fault);
  });

  it('keeps the claim out of a file with faults', async () => {
    const document = { ...sheetDocument(fonts), title: '' };
    const { metadata } = await (await openPdf(await writePdf(document, fonts, SHEET))).getMetadata();
    expect(metadata.get('pdfuaid:part')).toBeNull();
    expect(
      (await preflight(await writePdf(document, fonts, SHEET), { kind: 'sheet' })).map(({ code }) => code),
    ).toEqual(['no-title']);
  });
});
