import type { Element, Node } from '../../document/nodes.ts';
import type { Millimetres, Points } from '../../quantity/length.ts';
import { toMillimetres } from '../../quantity/length.ts';
import { breakLines, type TextSpan } from '../../text/break-lines.ts';
import type { FaceName, FontLibrary } from '../../text/glyph-run.ts';
import { lineStrips, type Strip } from '../flow/strip.ts';
import type { ArtifactKind, FrameItem, Tag } from '../frame.ts';
import type { PageMeasures, TypeStyle } from './measures.ts';

/** What every part of the layout needs. */
export interface Setting {
  readonly fonts: FontLibrary;
  readonly page: PageMeasures;
}

/** A column in which text is set. */
export interface Column {
  readonly x: Millimetres;
  readonly width: Millimetres;
}

/** Adds a tag to its parent. */
export function child(
  parent: Tag,
  type: Tag['type'],
  more: Partial<Omit<Tag, 'type' | 'children'>> = {},
): Tag {
  const tag: Tag = { type, children: [], ...more };
  parent.children.push(tag);
  return tag;
}

export const elementsOf = (element: Element): readonly Element[] =>
  element.children.filter((node): node is Element => typeof node !== 'string');

/** The language of an element, where it is not that of the document. */
export const langOf = ({ attributes: { lang } }: Element): { readonly lang?: string } =>
  lang === undefined ? {} : { lang };

/** The runs of text of a node, in one face except where it says otherwise. */
export function spansOf(node: Node, face: FaceName): readonly TextSpan[] {
  if (typeof node === 'string') return [{ text: node, face }];
  if (node.name === 'br') return [{ text: '\n', face }];
  const inner = node.name === 'strong' ? 'bold' : node.name === 'em' ? 'italic' : face;
  return node.children.flatMap(part => spansOf(part, inner));
}

/** A paragraph broken into lines in a column. */
export function paragraph(
  setting: Setting,
  spans: readonly TextSpan[],
  column: Column,
  { size, leading }: TypeStyle,
  tag: Tag | ArtifactKind,
): readonly Strip[] {
  const { fonts } = setting;
  const lines = breakLines(spans, column.width, { fonts, size });
  return lineStrips(lines, { fonts, size, leading: toMillimetres(leading), ink: 'black', x: column.x, tag });
}

/** A filled rectangle that carries no meaning. */
export const bar = (
  x: Millimetres,
  y: Millimetres,
  width: Millimetres,
  height: Millimetres,
  fill: 'black' | 'grey' | 'tint',
): FrameItem => ({
  kind: 'path',
  tag: fill === 'tint' ? 'background' : 'layout',
  fill,
  segments: [['M', x, y], ['L', x + width, y], ['L', x + width, y + height], ['L', x, y + height], ['Z']],
});

/** One line of text at a place. */
export const textItem = (
  fonts: FontLibrary,
  text: string,
  face: FaceName,
  size: Points,
  x: Millimetres,
  y: Millimetres,
  tag: Tag | ArtifactKind,
): FrameItem => ({ kind: 'text', run: fonts.shape(text, face), size, ink: 'black', x, y, tag });
