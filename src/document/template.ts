import Handlebars from 'handlebars';
import { parseHtmlSubset, TemplateError } from './html-subset.ts';
import type { Element, Node } from './nodes.ts';

export { TemplateError } from './html-subset.ts';

/** A Handlebars template that gives the HTML subset, compiled once. */
export interface Template {
  /**
   * Fills the template; every value is escaped.
   * @throws TemplateError where the template names a field that the data lacks, or gives no valid tree.
   */
  fill(data: object): Element;
}

/** Functions that a template may call: `{{join list ', '}}`. */
export type TemplateHelpers = Readonly<Record<string, (...values: never[]) => unknown>>;

/** Helpers that every template has. */
const COMMON: TemplateHelpers = {
  /** The items of a list with a separator between them. */
  join: (items: readonly unknown[], separator: string) => items.join(separator),
  /** The lines of a text. */
  lines: (text: string) => text.split('\n'),
  /** Whether two values are the same. */
  is: (left: unknown, right: unknown) => left === right,
  /** A count from one for `@index`. */
  counted: (index: number) => index + 1,
};

/**
 * Compiles a template and its partials (`{{> name}}`).
 * A field that the data does not have is an error; a field that is null or an empty list is not.
 */
export function compileTemplate(
  source: string,
  partials: Readonly<Record<string, string>> = {},
  helpers: TemplateHelpers = {},
): Template {
  const engine = Handlebars.create();
  for (const [name, helper] of Object.entries({ ...COMMON, ...helpers })) {
    engine.registerHelper(name, helper as Handlebars.HelperDelegate);
  }
  for (const [name, partial] of Object.entries(partials)) engine.registerPartial(name, partial);
  const render = engine.compile(source, { strict: true, knownHelpersOnly: false });
  return {
    fill(data) {
      let html: string;
      try {
        html = render(data);
      } catch (cause) {
        throw new TemplateError(cause instanceof Error ? cause.message : String(cause), { cause });
      }
      return parseHtmlSubset(html);
    },
  };
}

/** Reads the text of a template by its path below the folder of templates. */
export type ReadTemplate = (path: string) => Promise<string>;

/** By the reader, what each text of a template gave. */
const compiled = new WeakMap<ReadTemplate, Map<string, Template>>();

/** Compiles the text of a template once for its reader: for one document that takes longer than to fill it. */
function compiledOf(read: ReadTemplate, source: string): Template {
  const known = compiled.get(read) ?? new Map<string, Template>();
  compiled.set(read, known);
  const template = known.get(source) ?? compileTemplate(source);
  known.set(source, template);
  return template;
}

/** Reads and compiles a template file, for example `labels/us-workplace.hbs`. */
export async function loadTemplate(
  read: ReadTemplate,
  name: string,
  partialNames: readonly string[] = [],
  helpers: TemplateHelpers = {},
): Promise<Template> {
  const partials: Record<string, string> = {};
  for (const partial of partialNames) {
    partials[partial] = await read(`partials/${partial}.hbs`);
  }
  const source = await read(name);
  const alone = partialNames.length === 0 && Object.keys(helpers).length === 0;
  return alone ? compiledOf(read, source) : compileTemplate(source, partials, helpers);
}

/**
 * Fills a template of a whole web page, for example `packet/index.hbs`; every value is escaped.
 * @throws TemplateError where the template names a field that the data lacks
 */
export async function fillPage(read: ReadTemplate, name: string, data: object): Promise<string> {
  const engine = Handlebars.create();
  const render = engine.compile(await read(name), { strict: true });
  try {
    return render(data);
  } catch (cause) {
    throw new TemplateError(cause instanceof Error ? cause.message : String(cause), { cause });
  }
}

/** The text of a node without markup; a line break counts as a space. */
export function textOf(node: Node): string {
  if (typeof node === 'string') return node;
  if (node.name === 'br') return ' ';
  return node.children.map(textOf).join('');
}

/** The elements that a test accepts, in document order, not looking inside those found. */
export function findAll(root: Element, accepts: (element: Element) => boolean): readonly Element[] {
  if (accepts(root)) return [root];
  return root.children.flatMap(child => (typeof child === 'string' ? [] : findAll(child, accepts)));
}
