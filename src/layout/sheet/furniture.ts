import type { SheetModel } from '../../document/sheet.ts';
import type { Millimetres } from '../../quantity/length.ts';
import { textWidth } from '../../text/break-lines.ts';
import type { FaceName, FontLibrary } from '../../text/glyph-run.ts';
import type { ArtifactKind, FrameItem } from '../frame.ts';
import { RULE, TYPE } from './measures.ts';
import { bar, type Setting, textItem } from './setting.ts';

/** Base lines of head and foot, and their rules, from the top and from the bottom of the page. */
const HEAD = { text: 11.5, rule: 14.2 };
const FOOT = { text: 11, rule: 15.6 };
const APART: Millimetres = 4;

/** Head and foot of a page, as artifacts. @param number counts from 1 */
export function furniture(
  { fonts, page }: Setting,
  { running }: SheetModel,
  number: number,
  count: number,
): readonly FrameItem[] {
  const { left, width, height, textWidth: room } = page;
  const right = width - left;
  const rule = (y: Millimetres, tag: ArtifactKind): FrameItem => ({
    ...bar(left, y, room, RULE.thin, 'black'),
    tag,
  });
  const end = (text: string, face: FaceName, y: Millimetres, tag: ArtifactKind) =>
    textItem(fonts, text, face, size, right - textWidth(fonts, text, face, size), y, tag);
  const { size } = TYPE.running;
  const pages = running.page(number, count);
  const notice = running.draft ?? running.kind;
  const taken = textWidth(fonts, notice, 'bold', size) + APART;
  const name = shortened(fonts, running.product, 'bold', size, room - taken - 30);
  const afterName = left + textWidth(fonts, name, 'bold', size);
  const foot = shortened(
    fonts,
    running.foot,
    'regular',
    size,
    room - textWidth(fonts, pages, 'bold', size) - APART,
  );
  return [
    textItem(fonts, name, 'bold', size, left, HEAD.text, 'header'),
    ...(running.draft
      ? [textItem(fonts, ` · ${running.kind}`, 'regular', size, afterName, HEAD.text, 'header')]
      : []),
    end(notice, 'bold', HEAD.text, 'header'),
    rule(HEAD.rule, 'header'),
    rule(height - FOOT.rule, 'footer'),
    textItem(fonts, foot, 'regular', size, left, height - FOOT.text, 'footer'),
    end(pages, 'bold', height - FOOT.text, 'footer'),
  ];
}

/** The text, cut with an ellipsis where it is wider than its room. */
function shortened(
  fonts: FontLibrary,
  text: string,
  face: FaceName,
  size: number,
  room: Millimetres,
): string {
  if (textWidth(fonts, text, face, size) <= room) return text;
  const characters = [...text];
  while (characters.length > 1) {
    characters.pop();
    const cut = `${characters.join('').trimEnd()}…`;
    if (textWidth(fonts, cut, face, size) <= room) return cut;
  }
  return '…';
}
