import css from '../../../templates/sheets/sheet-css.json' with { type: 'json' };
import symbols from '../../../templates/symbols/ghs-symbols.json' with { type: 'json' };
import type { CopyMark } from '../../provenance/copy-mark.ts';
import { copyMeta } from '../copy-meta.ts';
import type { Element, Node } from '../nodes.ts';
import type { SheetModel } from '../sheet.ts';

const PATHS = new Map(Object.values(symbols.symbols).map(({ code, path }) => [code, path]));
const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/gu, character => ESCAPES[character]!);

/** The sheet as one HTML page without any other file: styles and pictograms inside, printable. */
export function sheetHtml({ root, title, subject, language, running }: SheetModel, copy?: CopyMark): string {
  const notice = running.draft
    ? `<aside class="running" aria-label="${escaped(running.draft)}">${escaped(running.draft)}</aside>\n`
    : '';
  return `<!DOCTYPE html>
<html lang="${escaped(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
${copy ? `${copyMeta(copy)}\n` : ''}<title>${escaped(title)}</title>
<meta name="description" content="${escaped(subject)}">
<style>
${css.rules.join('\n')}
${printed(running)}
</style>
</head>
<body>
${notice}<main>
${markup(root)}
</main>
<footer><p>${escaped(running.foot)}</p></footer>
</body>
</html>
`;
}

/** What every page says in print: the notice of a draft, and product, revision and page. */
const printed = ({ draft, foot }: SheetModel['running']): string =>
  `@page { ${draft ? `@top-center { content: ${quoted(draft)}; font: bold 9pt sans-serif; } ` : ''}@bottom-left { content: ${quoted(foot)}; font: 8pt sans-serif; } @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }`;

/** A string of CSS (CSS Syntax Level 3, 4.3.5): quotes, backslashes, and what would end the style element, as code points. */
const quoted = (text: string): string =>
  `"${text.replace(/["\\<\p{Cc}]/gu, character => `\\${character.codePointAt(0)!.toString(16)} `)}"`;

/** Index, EC, CAS and telephone numbers, which no line end may part. */
const WHOLE = /\b\d{3}-\d{3}-\d{2}-[\dX]|\b\d{3}-\d{3}-\d\b|\b\d{2,7}-\d{2}-\d\b|\+\d[\d ()-]{6,}\d/gu;

function markup(node: Node): string {
  if (typeof node === 'string') return escaped(node).replace(WHOLE, '<span class="whole">$&</span>');
  if (node.name === 'br') return '<br>';
  if (node.name === 'figure') return pictogram(node);
  const attributes = Object.entries(node.attributes)
    .filter(([name]) => name !== 'lang' || node.name !== 'article')
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
  const line = BLOCKS.has(node.name) ? '\n' : '';
  return `<${node.name}${attributes}>${node.children.map(markup).join('')}</${node.name}>${line}`;
}

const BLOCKS: ReadonlySet<string> = new Set([
  'section',
  'header',
  'p',
  'ul',
  'table',
  'tr',
  'li',
  'h1',
  'h2',
  'h3',
  'h4',
  'h5',
]);

/** Red square at a point, black symbol on white (29 CFR 1910.1200 App. C, C.2.3.1). */
function pictogram({ attributes }: Element): string {
  const path = PATHS.get(attributes['data-symbol'] ?? '');
  const label = escaped(attributes.alt ?? '');
  if (path === undefined) return `<span>${label}</span>`;
  return `<svg role="img" aria-label="${label}" viewBox="-20 -20 1040 1040" width="76" height="76"><title>${label}</title><path d="M500 0 1000 500 500 1000 0 500Z" fill="#fff" stroke="#e2001a" stroke-width="52" stroke-linejoin="miter"/><path d="${path}" fill="#000" fill-rule="evenodd"/></svg>`;
}
