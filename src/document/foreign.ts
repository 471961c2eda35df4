import type { Element, Node } from './nodes.ts';

/** A text that stands on a document in another language than its own. */
export interface ForeignText {
  readonly text: string;
  /** BCP 47 */
  readonly language: string;
}

const escaped = (text: string): string => text.replaceAll(/[\\^$.*+?()[\]{}|]/gu, '\\$&');

/** Elements in which text stands as a whole. */
const BLOCKS: ReadonlySet<string> = new Set(['p', 'li', 'td', 'th', 'h1', 'h2', 'h3', 'h4', 'h5']);

/**
 * The tree with each foreign text marked by its language: the block where it is all of it, else a span.
 * @param foreign the longest first, so that no part of a text is marked before the whole
 */
export function markForeign(root: Element, foreign: readonly ForeignText[]): Element {
  const languages = new Map(foreign.map(({ text, language }) => [text.toLowerCase(), language]));
  if (languages.size === 0) return root;
  const texts = [...languages.keys()].sort((one, other) => other.length - one.length);
  const pattern = new RegExp(
    `(?<![\\p{L}\\p{N}])(?:${texts.map(escaped).join('|')})(?![\\p{L}\\p{N}])`,
    'giu',
  );
  const split = (text: string): readonly Node[] => {
    const nodes: Node[] = [];
    let end = 0;
    for (const match of text.matchAll(pattern)) {
      if (match.index > end) nodes.push(text.slice(end, match.index));
      const lang = languages.get(match[0].toLowerCase())!;
      nodes.push({ name: 'span', attributes: { lang }, children: [match[0]] });
      end = match.index + match[0].length;
    }
    return end === 0 ? [text] : end < text.length ? [...nodes, text.slice(end)] : nodes;
  };
  const walk = (element: Element): Element => {
    const children = element.children.flatMap(node =>
      typeof node === 'string' ? split(node) : [walk(node)],
    );
    const [only] = children;
    const whole =
      children.length === 1 && typeof only === 'object' && only.name === 'span' && only.attributes.lang;
    return whole && BLOCKS.has(element.name)
      ? { ...element, attributes: { ...element.attributes, lang: whole }, children: only.children }
      : { ...element, children };
  };
  return walk(root);
}
