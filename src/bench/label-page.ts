import symbols from '../../templates/symbols/ghs-symbols.json' with { type: 'json' };
import type { LabelModel } from '../document/label.ts';
import type { Element, Node } from '../document/nodes.ts';
import type { Frame, FrameItem, PathItem } from '../layout/frame.ts';
import { pathData } from '../picture/svg.ts';

const PATHS = new Map<string, string>(Object.values(symbols.symbols).map(({ code, path }) => [code, path]));

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, character => `&#${character.codePointAt(0)};`);

/** The bars and figures of a laid-out label under one figure, in its millimetres. */
function barsOf({ alt }: Readonly<Record<string, string>>, { width, height, items }: Frame): string {
  const own = (item: FrameItem): item is PathItem =>
    item.kind === 'path' && typeof item.tag !== 'string' && item.tag.alt === alt;
  const paths = items.filter(own).map(({ segments }) => `<path d="${pathData(segments)}"/>`);
  return `<svg width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">${paths.join('')}</svg>`;
}

function figureOf({ attributes }: Element, frame: Frame): string {
  const path = PATHS.get(attributes['data-symbol'] ?? '');
  if (path === undefined) return barsOf(attributes, frame);
  return `<svg viewBox="-20 -20 1040 1040" width="16mm" height="16mm"><path d="M500 0 1000 500 500 1000 0 500Z" fill="#fff" stroke="#e2001a" stroke-width="52"/><path d="${path}" fill-rule="evenodd"/></svg>`;
}

/**
 * The label as a page for a browser: the same tree of texts, symbols and bars as drawings, on paper of the size of the
 * die. How it looks is left to the browser.
 */
export function labelPage({ root, language }: LabelModel, frame: Frame): string {
  const markup = (node: Node): string => {
    if (typeof node === 'string') return escaped(node);
    if (node.name === 'br') return '<br>';
    if (node.name === 'figure') return figureOf(node, frame);
    return `<${node.name}>${node.children.map(markup).join('')}</${node.name}>`;
  };
  const size = `${frame.width}mm ${frame.height}mm`;
  return `<!doctype html><html lang="${language}"><meta charset="utf-8"><style>@page{size:${size};margin:4mm}body{margin:0;font:8pt sans-serif;columns:2}p,h1,h2,h3{margin:0}</style>${markup(root)}</html>`;
}
