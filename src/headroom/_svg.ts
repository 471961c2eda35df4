/** An SVG element as text; attribute values and texts are escaped here and nowhere else. */
export interface Drawn {
  readonly svg: string;
}

export function draw(
  name: string,
  attributes: Readonly<Record<string, string | number>>,
  ...children: readonly (Drawn | string)[]
): Drawn {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? rounded(value) : escaped(value)}"`)
    .join('');
  const inner = children.map(child => (typeof child === 'string' ? escaped(child) : child.svg)).join('');
  return { svg: inner === '' ? `<${name}${written}/>\n` : `<${name}${written}>${inner}</${name}>\n` };
}

const rounded = (value: number): string => String(Number(value.toFixed(2)));

const named: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
// Control characters other than white space cannot stand in XML at all.
const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, mark => named[mark]!).replace(/[^\P{Cc}\t\n\r]|[\uFFFE\uFFFF]|\p{Cs}/gu, '\uFFFD');
