import type { Element } from '../../document/nodes.ts';
import type { PictogramCode } from '../../labelling/label-elements.ts';
import { joined, moved, type Strip, spaced, strip } from '../flow/strip.ts';
import type { FrameItem, Tag } from '../frame.ts';
import { pictogramBox } from '../label/pictogram.ts';
import { SPACE, TYPE } from './measures.ts';
import { type Column, child, elementsOf, langOf, paragraph, type Setting, spansOf } from './setting.ts';
import { tableStrips } from './table.ts';

/** Width of the frame of a pictogram as part of its size. */
const FRAME = 0.035;
const BULLET_INDENT = 3.2;

/** The blocks of an item below each other: paragraphs, lists, tables, pictograms. */
export function blockStrips(
  setting: Setting,
  blocks: readonly Element[],
  column: Column,
  parent: Tag,
): readonly Strip[] {
  return blocks.flatMap((block, at) =>
    spaced(oneBlock(setting, block, column, parent), at === 0 ? 0 : SPACE.paragraph),
  );
}

function oneBlock(setting: Setting, block: Element, column: Column, parent: Tag): readonly Strip[] {
  switch (block.name) {
    case 'ul':
      return listStrips(setting, block, column, parent);
    case 'table':
      return tableStrips(setting, block, column, parent);
    case 'section':
      return pictogramRows(elementsOf(block), column, parent);
    case 'h4':
    case 'h5':
      return paragraph(
        setting,
        spansOf(block, 'bold'),
        column,
        TYPE.body,
        child(parent, block.name === 'h4' ? 'H4' : 'H5'),
      ).map(part => ({
        ...part,
        keep: true,
      }));
    default: {
      const note = block.attributes.class === 'note';
      const style = note ? TYPE.note : TYPE.body;
      return paragraph(setting, spansOf(block, 'regular'), column, style, child(parent, 'P', langOf(block)));
    }
  }
}

function listStrips(setting: Setting, list: Element, column: Column, parent: Tag): readonly Strip[] {
  const tag = child(parent, 'L', { listNumbering: 'Disc' });
  const items = elementsOf(list);
  return items.flatMap((item, at) => {
    const entry = child(tag, 'LI');
    const [label, body] = [child(entry, 'Lbl'), child(entry, 'LBody', langOf(item))];
    const bullet = paragraph(setting, [{ text: '•', face: 'regular' }], column, TYPE.body, label);
    const inner = { x: column.x + BULLET_INDENT, width: column.width - BULLET_INDENT };
    const text = paragraph(setting, spansOf(item, 'regular'), inner, TYPE.body, body);
    // No entry stands alone before or after a page break where the list has others.
    const left = items.length - 1 - at;
    const together = left > 0 && (at === 0 || left === 1);
    return text.map((line, row) => ({
      ...line,
      items: row === 0 ? [...bullet[0]!.items, ...line.items] : line.items,
      keep: line.keep || (together && row === text.length - 1),
    }));
  });
}

function pictogramRows(figures: readonly Element[], column: Column, parent: Tag): readonly Strip[] {
  const pitch = SPACE.pictogram + SPACE.pictogramGap;
  const perRow = Math.max(1, Math.floor((column.width + SPACE.pictogramGap) / pitch));
  const rows: FrameItem[][] = [];
  for (const [at, figure] of figures.entries()) {
    const tag = child(parent, 'Figure', { alt: figure.attributes.alt ?? '' });
    const code = figure.attributes['data-symbol'] as PictogramCode;
    const items: FrameItem[] = [];
    pictogramBox({ code, tag }, SPACE.pictogram, { part: FRAME, ink: 'red' }).draw(
      { items, areas: [] },
      0,
      0,
    );
    const x = column.x + (at % perRow) * pitch;
    const row = Math.floor(at / perRow);
    rows[row] = [...(rows[row] ?? []), ...items.map(item => moved(item, x, 0))];
  }
  return rows.map(items => strip(pitch, items, { keep: true }));
}

/** Strips in a frame, undivided. */
export function boxed(strips: readonly Strip[], column: Column, line: number): Strip {
  const inner = joined(strips);
  const height = inner.height + 2 * SPACE.box;
  const edge = line / 2;
  const frame: FrameItem = {
    kind: 'path',
    tag: 'layout',
    stroke: 'black',
    strokeWidth: line,
    segments: [
      ['M', column.x + edge, edge],
      ['L', column.x + column.width - edge, edge],
      ['L', column.x + column.width - edge, height - edge],
      ['L', column.x + edge, height - edge],
      ['Z'],
    ],
  };
  return strip(height, [frame, ...inner.items.map(item => moved(item, 0, SPACE.box))]);
}
