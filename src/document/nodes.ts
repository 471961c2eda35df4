/**
 * The semantic tree of a document, without coordinates: a small subset of HTML, so that one template gives both
 * the web page and the printed page.
 */
export type ElementName =
  | 'article'
  | 'section'
  | 'header'
  | 'footer'
  | 'h1'
  | 'h2'
  | 'h3'
  | 'h4'
  | 'h5'
  | 'p'
  | 'ul'
  | 'ol'
  | 'li'
  | 'table'
  | 'caption'
  | 'thead'
  | 'tbody'
  | 'tr'
  | 'th'
  | 'td'
  | 'figure'
  | 'strong'
  | 'em'
  | 'span'
  | 'br';

export interface Element {
  readonly name: ElementName;
  /** `class` and `data-*` attributes, `colspan`, `scope`, `lang`, `id`, `alt`. */
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Node[];
}

/** An element or a run of text; white space in text is already collapsed. */
export type Node = Element | string;
