import type { LabelModel } from '../../document/label.ts';
import type { Element, Node } from '../../document/nodes.ts';
import type { TextSpan } from '../../text/break-lines.ts';
import type { FaceName } from '../../text/glyph-run.ts';
import type { Tag } from '../frame.ts';
import type { StyleName } from './styles.ts';

/** A paragraph to be set, with the tag that its text belongs to. */
export interface Paragraph {
  readonly style: StyleName;
  readonly spans: readonly TextSpan[];
  readonly tag: Tag;
  /** Number or bullet of a list item, set in the indent. */
  readonly marker: { readonly text: string; readonly tag: Tag } | null;
  /** Places of the text at which it may go on in another column: where a statement starts. */
  readonly starts: readonly number[];
  /** Goes on with the paragraph before it, without a distance. */
  readonly follows: boolean;
}

export interface PictogramFigure {
  /** `GHS05` */
  readonly code: string;
  readonly tag: Tag;
}

/** One section of the label in the order of the template. */
export interface Section {
  readonly role: string;
  readonly paragraphs: readonly Paragraph[];
  readonly pictograms: readonly PictogramFigure[];
  /** The figure that the bar code fills. */
  readonly barCode: Tag | null;
}

/** The label as paragraphs and figures, with its structure tree in reading order. */
export interface LabelContent {
  readonly sections: readonly Section[];
  readonly root: Tag;
}

const STYLES: Partial<Record<Element['name'], StyleName>> = { h1: 'name', h2: 'signal', h3: 'heading' };
const TAGS: Partial<Record<Element['name'], Tag['type']>> = { h1: 'H1', h2: 'H2', h3: 'H3' };
const CLASSES: readonly StyleName[] = [
  'tagline',
  'statement',
  'supplemental',
  'quantity',
  'code',
  'heading',
  'condition',
  'hazard',
  'poison',
  'notice',
  'declaration',
  'substances',
  'ufi',
];

/** Classes of paragraphs that go on with the one before. */
const FOLLOWING: readonly string[] = ['condition', 'after'];

/** Reads the node tree of a label; every top element is a section with a role. */
export function labelContent({ root, language }: LabelModel): LabelContent {
  const document: Tag = { type: 'Document', children: [], lang: language };
  const sections = root.children.flatMap(node =>
    typeof node === 'string' ? [] : [readSection(node, document)],
  );
  return { sections, root: document };
}

function readSection(element: Element, parent: Tag): Section {
  const role = element.attributes['data-role'] ?? 'other';
  const tag = child(parent, 'Sect', undefined, element.attributes.lang);
  const paragraphs: Paragraph[] = [];
  const pictograms: PictogramFigure[] = [];
  let barCode: Tag | null = null;
  for (const node of element.children) {
    if (typeof node === 'string') continue;
    if (node.name === 'figure') {
      const figure = child(tag, 'Figure', node.attributes.alt);
      if (node.attributes['data-symbol']) {
        pictograms.push({ code: node.attributes['data-symbol'], tag: figure });
      } else barCode = figure;
    } else if (node.name === 'ol' || node.name === 'ul') {
      paragraphs.push(...readList(node, tag));
    } else {
      paragraphs.push(
        readParagraph(node, child(tag, TAGS[node.name] ?? 'P', undefined, node.attributes.lang), role),
      );
    }
  }
  return { role, paragraphs, pictograms, barCode };
}

function readList(list: Element, parent: Tag): Paragraph[] {
  const tag = child(parent, 'L');
  const items = list.children.filter((node): node is Element => typeof node !== 'string');
  return items.map((item, at) => {
    const entry = child(tag, 'LI');
    const label = child(entry, 'Lbl');
    const body = child(entry, 'LBody', undefined, item.attributes.lang);
    const marker = { text: list.name === 'ol' ? `${at + 1}.` : '•', tag: label };
    return { style: 'item', spans: spansOf(item, 'regular'), tag: body, marker, starts: [], follows: true };
  });
}

function readParagraph(element: Element, tag: Tag, role: string): Paragraph {
  const { class: given } = element.attributes;
  // The name of a group of statements on a line of its own.
  const named = given === 'group' ? 'heading' : CLASSES.find(name => name === given);
  const style = named ?? STYLES[element.name] ?? (role === 'lot' ? 'caption' : 'body');
  const follows = FOLLOWING.includes(element.attributes.class ?? '');
  return {
    style,
    spans: spansOf(element, 'regular'),
    tag,
    marker: null,
    starts: startsOf(element),
    follows,
  };
}

/** Lengths of the text before each `span`, which holds one statement. */
function startsOf(element: Element): readonly number[] {
  const starts: number[] = [];
  let length = 0;
  for (const node of element.children) {
    if (typeof node !== 'string' && node.name === 'span') starts.push(length);
    length += spansOf(node, 'regular').reduce((sum, { text }) => sum + text.length, 0);
  }
  return starts;
}

function spansOf(node: Node, face: FaceName): TextSpan[] {
  if (typeof node === 'string') return [{ text: unbroken(node), face }];
  if (node.name === 'br') return [{ text: '\n', face }];
  const inner = node.name === 'strong' ? 'bold' : node.name === 'em' ? 'italic' : face;
  return node.children.flatMap(part => spansOf(part, inner));
}

function child(parent: Tag, type: Tag['type'], alt?: string, lang?: string): Tag {
  const tag: Tag = {
    type,
    children: [],
    ...(alt !== undefined && { alt }),
    ...(lang !== undefined && { lang }),
  };
  parent.children.push(tag);
  return tag;
}

/** A compound stays on one line: readers of the file take a hyphen at the end of a line for a broken word. */
const unbroken = (text: string): string => text.replace(/(?<=\p{L})-(?=\p{L})/gu, '\u2011');
