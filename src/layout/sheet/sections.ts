import type { Element } from '../../document/nodes.ts';
import { textOf } from '../../document/template.ts';
import { type Millimetres, toMillimetres } from '../../quantity/length.ts';
import { besides } from '../flow/paginate.ts';
import {
  asArtifact,
  baseline,
  joined,
  moved,
  type Strip,
  spaced,
  strip,
  totalHeight,
} from '../flow/strip.ts';
import type { Tag } from '../frame.ts';
import { blockStrips, boxed } from './blocks.ts';
import { RULE, SPACE, TYPE } from './measures.ts';
import { bar, child, elementsOf, langOf, paragraph, type Setting, spansOf, textItem } from './setting.ts';

/** The whole sheet as strips; every part is put into the structure tree under `root`. */
export function sheetStrips(setting: Setting, article: Element, root: Tag): readonly Strip[] {
  return elementsOf(article).flatMap(part => {
    const role = part.attributes['data-role'];
    if (role === 'title') return titleStrips(setting, part, root);
    if (role === 'draft') return [draftBox(setting, part, child(root, 'Sect'))];
    return sectionStrips(setting, part, child(root, 'Sect'));
  });
}

function titleStrips(setting: Setting, header: Element, root: Tag): readonly Strip[] {
  const column = { x: 0, width: setting.page.textWidth };
  return elementsOf(header).flatMap(part => {
    if (part.name === 'h1') {
      return spaced(paragraph(setting, spansOf(part, 'bold'), column, TYPE.title, child(root, 'H1')), 0.2);
    }
    const style = part.attributes.class === 'kind' ? TYPE.kind : TYPE.body;
    return spaced(paragraph(setting, spansOf(part, 'regular'), column, style, child(root, 'P')), 0.6);
  });
}

function draftBox(setting: Setting, section: Element, tag: Tag): Strip {
  const column = { x: 0, width: setting.page.textWidth };
  const inner = { x: SPACE.box, width: column.width - 2 * SPACE.box };
  const strips = elementsOf(section).flatMap((part, at) =>
    spaced(
      paragraph(
        setting,
        spansOf(part, 'regular'),
        inner,
        part.attributes.class === 'draft' ? TYPE.section : TYPE.body,
        child(tag, 'P'),
      ),
      at === 0 ? 0 : SPACE.paragraph,
    ),
  );
  return { ...boxed(strips, column, RULE.box), before: 4 };
}

function sectionStrips(setting: Setting, section: Element, tag: Tag): readonly Strip[] {
  const { textWidth } = setting.page;
  return elementsOf(section).flatMap(part => {
    if (part.name === 'h2') return [sectionHead(setting, textOf(part), child(tag, 'H2'))];
    if (part.name === 'p') {
      const note = paragraph(
        setting,
        spansOf(part, 'regular'),
        { x: 0, width: textWidth },
        TYPE.note,
        child(tag, 'P'),
      );
      const set = joined(note, { keep: true, before: SPACE.afterSection });
      return [{ ...set, height: set.height + SPACE.afterSection }];
    }
    if (part.name === 'table') return pairStrips(setting, part, child(tag, 'Table'));
    if (part.attributes['data-role'] === 'part') return partStrips(setting, part, child(tag, 'Sect'));
    return itemStrips(setting, part, child(tag, 'Sect'), 'H3');
  });
}

/** A numbered sub-section: its heading over the whole width, then its items. */
function partStrips(setting: Setting, part: Element, tag: Tag): readonly Strip[] {
  const [heading, ...items] = elementsOf(part);
  const column = { x: 0, width: setting.page.textWidth };
  const head = paragraph(setting, spansOf(heading!, 'bold'), column, TYPE.heading, child(tag, 'H3'));
  const title = ruled(setting, [joined(head, { keep: true })]).map(strip => ({ ...strip, keep: true }));
  return [...title, ...items.flatMap(item => itemStrips(setting, item, child(tag, 'Sect'), 'H4'))];
}

/** An item: its heading beside its blocks. */
function itemStrips(setting: Setting, part: Element, item: Tag, level: 'H3' | 'H4'): readonly Strip[] {
  const { bodyX, bodyWidth } = setting.page;
  const [heading, ...blocks] = elementsOf(part);
  const face = level === 'H3' ? 'bold' : 'regular';
  const side = sideHeading(setting, heading!, child(item, level), face);
  const body = blockStrips(setting, blocks, { x: bodyX, width: bodyWidth }, item);
  return ruled(setting, continued(side, unorphaned(besides(side, body))));
}

/**
 * The subheading again, as an artifact, beside what goes on on another page; an end that has no room for it stays with
 * what is before it, so that no page begins with lines of which nothing says what they belong to.
 */
function continued(side: Strip, strips: readonly Strip[]): readonly Strip[] {
  const again = asArtifact(side);
  const hasRoom = (at: number): boolean => totalHeight(strips.slice(at)) >= side.height;
  return strips.map((part, at) => {
    const ends = at + 1 < strips.length && !hasRoom(at + 1) && part.height <= UNDIVIDED;
    const tied = ends ? { ...part, keep: true } : part;
    if (at === 0 || !hasRoom(at)) return tied;
    const { repeat } = part;
    return {
      ...tied,
      repeat: repeat ? { ...repeat, items: [...repeat.items, ...again.items] } : { ...again, height: 0 },
    };
  });
}

/** Below this height an item is not parted. */
const UNDIVIDED: Millimetres = 24;

/** Higher strips, such as rows of a table, may stand alone. */
const LINES: Millimetres = 10;

/** An item that is not parted where it is short, and else never between its first two lines or its last two. */
function unorphaned(strips: readonly Strip[]): readonly Strip[] {
  const last = strips.length - 1;
  const short = totalHeight(strips) <= UNDIVIDED;
  const tied = (at: number) =>
    at < last &&
    (short || ((at === 0 || at === last - 1) && strips[at]!.height + strips[at + 1]!.height <= LINES));
  return strips.map((part, at) => (tied(at) ? { ...part, keep: true } : part));
}

/** The head of a section: its number and title on a tinted bar. */
function sectionHead({ fonts, page }: Setting, title: string, tag: Tag): Strip {
  const { size } = TYPE.section;
  const leading = toMillimetres(TYPE.section.leading) + 1.2;
  const y = baseline({ fonts, size, leading });
  return strip(
    leading,
    [
      bar(0, 0, page.textWidth, leading, 'tint'),
      bar(0, 0, RULE.block, leading, 'black'),
      textItem(fonts, title, 'bold', size, RULE.block + 2, y, tag),
    ],
    { before: SPACE.section, keep: true },
  );
}

const sideHeading = (
  setting: Setting,
  heading: Element,
  tag: Tag,
  face: 'bold' | 'regular' = 'bold',
): Strip =>
  joined(paragraph(setting, spansOf(heading, face), { x: 0, width: setting.page.side }, TYPE.heading, tag));

/** Rows of a heading and its text, side by side, as one table of two columns. */
function pairStrips(setting: Setting, table: Element, tag: Tag): readonly Strip[] {
  const { bodyX, bodyWidth } = setting.page;
  const body = child(tag, 'TBody');
  return elementsOf(table)
    .flatMap(elementsOf)
    .flatMap((row, at) => {
      const rowTag = child(body, 'TR');
      const [head, text] = elementsOf(row);
      const side = sideHeading(setting, head!, child(rowTag, 'TH', { scope: 'Row' }));
      const column = { x: bodyX, width: bodyWidth };
      const lines = paragraph(
        setting,
        spansOf(text!, 'regular'),
        column,
        TYPE.body,
        child(rowTag, 'TD', langOf(text!)),
      );
      const strips = ruled(setting, besides(side, lines));
      // The head of a section is followed by two rows at least.
      return at === 0 ? strips.map(part => ({ ...part, keep: true })) : strips;
    });
}

/** An item with a hairline above it and padding on both sides. */
function ruled({ page }: Setting, strips: readonly Strip[]): readonly Strip[] {
  return strips.map((part, at) => {
    const above = at === 0 ? SPACE.padding : 0;
    const below = at === strips.length - 1 ? SPACE.padding : 0;
    const items = part.items.map(item => moved(item, 0, above));
    const rule = at === 0 ? [bar(0, 0, page.textWidth, RULE.hair, 'grey')] : [];
    return { ...part, height: part.height + above + below, items: [...rule, ...items] };
  });
}
