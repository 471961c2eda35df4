import type { Element } from '../../document/nodes.ts';
import { textOf } from '../../document/template.ts';
import type { Millimetres } from '../../quantity/length.ts';
import { textWidth } from '../../text/break-lines.ts';
import type { FaceName } from '../../text/glyph-run.ts';
import { type ColumnNeed, columnWidths } from '../flow/column-widths.ts';
import { asArtifact, joined, moved, type Strip, strip, totalHeight } from '../flow/strip.ts';
import type { Tag } from '../frame.ts';
import { RULE, SPACE, TYPE } from './measures.ts';
import { bar, type Column, child, elementsOf, langOf, paragraph, type Setting, spansOf } from './setting.ts';

/** A row higher than this may be parted between two of its lines. */
const UNDIVIDED: Millimetres = 70;

/** Brings the head of a table to the base line of the subheading beside it. */
const HEAD_ABOVE: Millimetres = 0.2;

/** A head may be set in two lines. */
const HEAD_SHARE = 0.6;

interface Cell {
  readonly element: Element;
  readonly face: FaceName;
}

/** A table with its head repeated on every page that it reaches. */
export function tableStrips(setting: Setting, table: Element, column: Column, parent: Tag): readonly Strip[] {
  const tag = child(parent, 'Table');
  const rows = (name: 'thead' | 'tbody') =>
    elementsOf(table)
      .filter(part => part.name === name)
      .flatMap(elementsOf)
      .map(row =>
        elementsOf(row).map((element): Cell => ({ element, face: name === 'thead' ? 'bold' : 'regular' })),
      );
  const [head, body] = [rows('thead'), rows('tbody')];
  const columns = placeColumns(setting, [...head, ...body], column);
  const headTag = child(tag, 'THead');
  const headStrips = head.map(row => headRow(setting, row, columns, column, child(headTag, 'TR')));
  const bodyTag = child(tag, 'TBody');
  const repeat = asArtifact(joined(headStrips));
  const bodyStrips = body.flatMap((row, at) => {
    const strips = bodyRow(setting, row, columns, column, child(bodyTag, 'TR'), repeat);
    // No row stands alone under its head, at the foot of a page or at the head of the next.
    const together = at < body.length - 1 && (at === 0 || at === body.length - 2);
    const height = totalHeight(strips);
    return together && height <= UNDIVIDED / 2 ? strips.map(part => ({ ...part, keep: true })) : strips;
  });
  const first = bodyStrips[0];
  return [...headStrips, ...(first ? [{ ...first, repeat: null }, ...bodyStrips.slice(1)] : [])];
}

function placeColumns(
  setting: Setting,
  rows: readonly (readonly Cell[])[],
  { x, width }: Column,
): readonly Column[] {
  const count = Math.max(...rows.map(row => row.length));
  const needs = Array.from({ length: count }, (_, at) =>
    columnNeed(
      setting,
      rows.flatMap(row => row[at] ?? []),
    ),
  );
  const widths = columnWidths(needs, width - SPACE.gutter * (count - 1));
  let left = x;
  return widths.map(columnWidth => {
    const placed = { x: left, width: columnWidth };
    left += columnWidth + SPACE.gutter;
    return placed;
  });
}

function columnNeed({ fonts }: Setting, cells: readonly Cell[]): ColumnNeed {
  const widths = (texts: readonly string[], face: FaceName) =>
    texts.map(text => textWidth(fonts, text, face, TYPE.table.size));
  const needs = cells.map(({ element, face }) => {
    const text = textOf(element);
    const share = face === 'bold' ? HEAD_SHARE : 1;
    const parts = widths(text.split(/(?<=;) /u), face);
    return {
      least: Math.max(0, ...widths(text.split(/[\s/]+|(?<=\p{L}-)(?=\p{L})/u), face)),
      natural: Math.max(0, ...parts) * share,
      text: parts.reduce((sum, part) => sum + part, 0) * share,
    };
  });
  // A hair more than measured, so that a text that fits exactly is not broken.
  const least = Math.max(...needs.map(need => need.least)) + 0.1;
  return {
    least,
    natural: Math.max(least, ...needs.map(({ natural }) => natural + 0.1)),
    text: needs.reduce((sum, { text }) => sum + text, 0),
  };
}

type Line = readonly Strip[];

function cellLines(
  setting: Setting,
  row: readonly Cell[],
  columns: readonly Column[],
  parent: Tag,
): readonly Line[] {
  return row.map(({ element, face }, at) => {
    const scope = element.attributes.scope === 'row' ? 'Row' : 'Column';
    const tag =
      element.name === 'th'
        ? child(parent, 'TH', { scope, ...langOf(element) })
        : child(parent, 'TD', langOf(element));
    return paragraph(setting, spansOf(element, face), columns[at]!, TYPE.table, tag);
  });
}

/** Cells beside each other, each read to its end before the next. */
function row(cells: readonly Line[], above: Millimetres = SPACE.cell): Strip {
  const height = Math.max(...cells.map(totalHeight)) + above + SPACE.cell;
  return strip(
    height,
    cells.flatMap(cell => joined(cell).items.map(item => moved(item, 0, above))),
  );
}

function headRow(
  setting: Setting,
  cells: readonly Cell[],
  columns: readonly Column[],
  { x, width }: Column,
  tag: Tag,
): Strip {
  const set = row(cellLines(setting, cells, columns, tag), HEAD_ABOVE);
  return {
    ...set,
    items: [...set.items, bar(x, set.height - RULE.thin, width, RULE.thin, 'black')],
    keep: true,
  };
}

function bodyRow(
  setting: Setting,
  cells: readonly Cell[],
  columns: readonly Column[],
  { x, width }: Column,
  tag: Tag,
  repeat: Strip,
): readonly Strip[] {
  const lines = cellLines(setting, cells, columns, tag);
  const whole = row(lines);
  const rule = (y: Millimetres) => bar(x, y - RULE.hair, width, RULE.hair, 'grey');
  if (whole.height <= UNDIVIDED) return [{ ...whole, items: [...whole.items, rule(whole.height)], repeat }];
  const count = Math.max(...lines.map(({ length }) => length));
  return Array.from({ length: count }, (_, at) => {
    const slice = lines.flatMap(cell => cell[at] ?? []);
    const height = Math.max(...slice.map(part => part.height));
    const last = at === count - 1;
    return strip(
      height + (last ? SPACE.cell : 0),
      [...slice.flatMap(({ items }) => items), ...(last ? [rule(height + SPACE.cell)] : [])],
      {
        before: at === 0 ? SPACE.cell : 0,
        keep: at === 0 || at === count - 2,
        repeat,
      },
    );
  });
}
