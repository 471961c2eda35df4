import type { StyleName } from './styles.ts';

const ROLES: Partial<Record<StyleName, string>> = {
  name: 'product-identifier',
  tagline: 'tagline',
  signal: 'signal-word',
  statement: 'hazard-statement',
  supplemental: 'supplemental',
  quantity: 'net-contents',
  declaration: 'net-contents',
  hazard: 'hazard-statement',
  poison: 'poison',
  notice: 'notice',
  code: 'product-code',
};

/** What a text is on its label: by its style, else by its section. */
export const roleOf = (style: StyleName, section: string): string => ROLES[style] ?? section;
