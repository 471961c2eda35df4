import type { Attachment, Frame, FrameItem, PagedDocument, Segment, Tag } from '../../src/layout/frame.ts';
import type { LabelProfile, SheetProfile } from '../../src/pdf/profile.ts';
import type { FaceName, FontLibrary } from '../../src/text/glyph-run.ts';

export const LABEL: LabelProfile = { kind: 'label', version: '0.0.0' };
export const SHEET: SheetProfile = { kind: 'sheet', version: '0.0.0' };

export const tag = (type: Tag['type'], children: Tag[] = [], more: Partial<Tag> = {}): Tag => ({
  type,
  children,
  ...more,
});

/** Closed rectangle, clockwise from its upper left corner. */
export const rectangle = (x: number, y: number, width: number, height: number): Segment[] => [
  ['M', x, y],
  ['L', x + width, y],
  ['L', x + width, y + height],
  ['L', x, y + height],
  ['Z'],
];

export const textItem = (
  fonts: FontLibrary,
  text: string,
  at: {
    x: number;
    y: number;
    tag: Tag | 'header' | 'footer';
    face?: FaceName;
    size?: number;
    rotate?: number;
  },
): FrameItem => ({
  kind: 'text',
  run: fonts.shape(text, at.face ?? 'regular'),
  size: 8,
  ink: 'black',
  ...at,
});

/** A label of 60 mm by 40 mm with heading, statement over two lines, pictogram, bars and cut line. */
export const labelDocument = (fonts: FontLibrary): PagedDocument => {
  const heading = tag('H1');
  const figure = tag('Figure', [], { alt: 'GHS05 corrosion' });
  const statement = tag('P');
  const items: FrameItem[] = [
    {
      kind: 'path',
      tag: 'layout',
      layer: 'die',
      stroke: 'die',
      strokeWidth: 0.18,
      segments: rectangle(0, 0, 60, 40),
    },
    { kind: 'path', tag: 'background', fill: 'tint', segments: rectangle(-2, 35, 64, 7) },
    textItem(fonts, 'Kerbstone Patio Cleaner', { x: 4, y: 8, tag: heading, face: 'bold', size: 10 }),
    {
      kind: 'path',
      tag: figure,
      fill: 'white',
      stroke: 'red',
      strokeWidth: 0.6,
      segments: rectangle(44, 4, 12, 12),
    },
    { kind: 'path', tag: figure, fill: 'black', segments: rectangle(48, 8, 4, 4) },
    textItem(fonts, 'DANGER ', { x: 4, y: 20, tag: statement, face: 'bold' }),
    textItem(fonts, 'Causes severe skin burns', { x: 17, y: 20, tag: statement }),
    textItem(fonts, 'and eye damage. P305+', { x: 4, y: 24, tag: statement }),
    textItem(fonts, 'P351+P338', { x: 4, y: 28, tag: statement, face: 'italic' }),
    {
      kind: 'path',
      tag: 'layout',
      stroke: 'black',
      strokeWidth: 0.2,
      segments: [
        ['M', 4, 33],
        ['L', 40, 33],
      ],
    },
  ];
  return {
    frames: [{ width: 60, height: 40, bleed: 2, slug: 5, items }],
    root: tag('Document', [heading, figure, statement]),
    title: 'Kerbstone Patio Cleaner – label',
    language: 'en-US',
    subject: 'Draft label',
    date: '2026-11-25T08:30:00Z',
    attachments: [],
  };
};

const RECORD: Attachment = {
  name: 'record.json',
  mediaType: 'application/json',
  description: 'Product record',
  relationship: 'Source',
  bytes: new TextEncoder().encode('{"code":"KP-946"}'),
};

/** A data sheet of two A4 pages: headings, a table with header cells, a list, a paragraph over the page break. */
export const sheetDocument = (fonts: FontLibrary): PagedDocument => {
  const [title, section, paragraph] = [tag('H1'), tag('H2'), tag('P')];
  const cells = [
    tag('TH', [], { scope: 'Column' }),
    tag('TH', [], { scope: 'Column' }),
    tag('TD'),
    tag('TD'),
  ] as const;
  const [label, body] = [tag('Lbl'), tag('LBody')];
  const table = tag('Table', [
    tag('THead', [tag('TR', [cells[0], cells[1]])]),
    tag('TBody', [tag('TR', [cells[2], cells[3]])]),
  ]);
  const list = tag('L', [tag('LI', [label, body])]);
  const first: FrameItem[] = [
    textItem(fonts, 'Draft', { x: 20, y: 12, tag: 'header' }),
    textItem(fonts, 'Safety data sheet', { x: 20, y: 25, tag: title, face: 'bold', size: 16 }),
    textItem(fonts, 'SECTION 3: Composition', { x: 20, y: 35, tag: section, face: 'bold', size: 11 }),
    textItem(fonts, 'Substance', { x: 20, y: 45, tag: cells[0], face: 'bold' }),
    textItem(fonts, '% w/w', { x: 90, y: 45, tag: cells[1], face: 'bold' }),
    {
      kind: 'path',
      tag: 'layout',
      stroke: 'grey',
      strokeWidth: 0.2,
      segments: [
        ['M', 20, 47],
        ['L', 180, 47],
      ],
    },
    textItem(fonts, 'sodium hydroxide', { x: 20, y: 51, tag: cells[2] }),
    textItem(fonts, '≥ 1 – < 2', { x: 90, y: 51, tag: cells[3] }),
    textItem(fonts, '•', { x: 20, y: 60, tag: label }),
    textItem(fonts, 'Wear protective gloves.', { x: 24, y: 60, tag: body }),
    textItem(fonts, 'This paragraph starts here', { x: 20, y: 270, tag: paragraph }),
  ];
  const second: FrameItem[] = [
    textItem(fonts, 'and ends overleaf.', { x: 20, y: 25, tag: paragraph }),
    textItem(fonts, 'Page 2 of 2', { x: 20, y: 285, tag: 'footer' }),
  ];
  const page = (items: FrameItem[]): Frame => ({ width: 210, height: 297, bleed: 0, slug: 0, items });
  return {
    frames: [page(first), page(second)],
    root: tag('Document', [title, tag('Sect', [section, table, list, paragraph])]),
    title: 'Safety data sheet: Kerbstone Patio Cleaner',
    language: 'en',
    subject: 'Draft safety data sheet',
    date: '2026-11-25T08:30:00Z',
    attachments: [RECORD],
  };
};
