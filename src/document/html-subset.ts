import type { Element, ElementName, Node } from './nodes.ts';

/** A template gave something that is not of the subset: a defect of the template, not of the record. */
export class TemplateError extends Error {
  override readonly name = 'TemplateError';
}

const ELEMENTS: ReadonlySet<string> = new Set<ElementName>([
  'article',
  'section',
  'header',
  'footer',
  'h1',
  'h2',
  'h3',
  'h4',
  'h5',
  'p',
  'ul',
  'ol',
  'li',
  'table',
  'caption',
  'thead',
  'tbody',
  'tr',
  'th',
  'td',
  'figure',
  'strong',
  'em',
  'span',
  'br',
]);

const INLINE: ReadonlySet<string> = new Set<ElementName>(['strong', 'em', 'span', 'br']);
/** Elements that hold text; in all others white space between elements is layout of the source. */
const HOLDS_TEXT: ReadonlySet<string> = new Set<ElementName>([
  'h1',
  'h2',
  'h3',
  'h4',
  'h5',
  'p',
  'li',
  'caption',
  'th',
  'td',
  'strong',
  'em',
  'span',
]);

const ATTRIBUTE_NAME = /^(?:class|colspan|scope|lang|id|alt|data-[a-z-]+)$/;
const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', nbsp: '\u00a0' };
const TOKEN =
  /<!--[\s\S]*?-->|<\/([a-z][a-z0-9]*)\s*>|<([a-z][a-z0-9]*)((?:\s+[a-z-]+="[^"]*")*)\s*\/?>|[^<]+/gy;

interface Open {
  readonly name: ElementName;
  readonly attributes: Record<string, string>;
  readonly children: Node[];
}

/**
 * Reads the HTML subset of `nodes.ts` into a tree with one root element.
 * @throws TemplateError on an element or attribute outside the subset, on text outside a text element, and on
 * unbalanced tags.
 */
export function parseHtmlSubset(html: string): Element {
  const top: Node[] = [];
  const open: Open[] = [];
  const siblings = () => open.at(-1)?.children ?? top;
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < html.length) {
    const start = TOKEN.lastIndex;
    const match = TOKEN.exec(html);
    if (!match) throw new TemplateError(`not in the HTML subset: ${html.slice(start, start + 60)}`);
    const [token, closing, opening, attributes] = match;
    if (token.startsWith('<!--')) continue;
    if (opening) {
      const element: Open = {
        name: elementName(opening),
        attributes: readAttributes(attributes!),
        children: [],
      };
      if (element.name === 'br' || token.endsWith('/>')) siblings().push(finish(element));
      else open.push(element);
    } else if (closing) {
      const element = open.pop();
      if (element?.name !== closing) {
        throw new TemplateError(`</${closing}> closes ${element ? `<${element.name}>` : 'nothing'}`);
      }
      siblings().push(finish(element));
    } else {
      addText(token, open.at(-1)?.name, siblings());
    }
  }
  const unclosed = open.at(-1);
  if (unclosed) throw new TemplateError(`<${unclosed.name}> is not closed`);
  const [root] = top;
  if (top.length !== 1 || root === undefined || typeof root === 'string') {
    throw new TemplateError('a document has exactly one root element');
  }
  return root;
}

function elementName(name: string): ElementName {
  if (!ELEMENTS.has(name)) throw new TemplateError(`<${name}> is not in the HTML subset`);
  return name as ElementName;
}

function readAttributes(source: string): Record<string, string> {
  const attributes: Record<string, string> = {};
  for (const [, name, value] of source.matchAll(/([a-z-]+)="([^"]*)"/g)) {
    if (!ATTRIBUTE_NAME.test(name!)) throw new TemplateError(`attribute ${name} is not in the HTML subset`);
    attributes[name!] = decodeEntities(value!);
  }
  return attributes;
}

function addText(source: string, parent: string | undefined, siblings: Node[]): void {
  const text = decodeEntities(source.replace(/[ \t\r\n\f]+/g, ' '));
  if (parent === undefined || !HOLDS_TEXT.has(parent)) {
    if (text.trim() !== '') throw new TemplateError(`text outside a text element: ${text.trim()}`);
    return;
  }
  const last = siblings.at(-1);
  if (typeof last === 'string') siblings[siblings.length - 1] = last + text;
  else siblings.push(text);
}

/** Blocks lose white space at both ends and beside `br` and blocks; inline elements keep theirs. */
function finish({ name, attributes, children }: Open): Element {
  if (INLINE.has(name)) return { name, attributes, children };
  const breaksLine = (node: Node | undefined) =>
    node === undefined || (typeof node !== 'string' && (node.name === 'br' || !INLINE.has(node.name)));
  const trimmed = children.map((node, at) => {
    if (typeof node !== 'string') return node;
    const left = breaksLine(children[at - 1]) ? node.replace(/^ +/, '') : node;
    return breaksLine(children[at + 1]) ? left.replace(/ +$/, '') : left;
  });
  return { name, attributes, children: trimmed.filter(node => node !== '') };
}

function decodeEntities(text: string): string {
  return text.replace(/&(?:#x([0-9a-fA-F]+)|#(\d+)|([a-z]+));/g, (whole, hex, decimal, named) => {
    if (hex) return String.fromCodePoint(Number.parseInt(hex, 16));
    if (decimal) return String.fromCodePoint(Number(decimal));
    const character = NAMED[named];
    if (character === undefined) throw new TemplateError(`${whole} is not a known entity`);
    return character;
  });
}
