import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import union from '../../hazard-data/eu-clp/sheet/sections.json' with { type: 'json' };
import ghs from '../../hazard-data/un-ghs/sheet/sections.json' with { type: 'json' };
import sheet from '../../hazard-data/us-hcs/sheet/sections.json' with { type: 'json' };
import { otherLanguages } from '../notation/languages.ts';

type Schema = Readonly<Record<string, unknown>>;

const text: Schema = { type: 'string', minLength: 1 };
const maybe = (schema: Schema): Schema => ({ anyOf: [schema, { type: 'null' }] });
const list = (items: Schema): Schema => ({ type: 'array', items });
const some = (items: Schema): Schema => ({ type: 'array', items, minItems: 1 });
const number: Schema = { type: 'number' };
const ref = (name: string): Schema => ({ $ref: `#/$defs/${name}` });

/** An object with these keys and no other; a name with `?` may be absent. */
function object(keys: Readonly<Record<string, Schema>>): Schema {
  const named = Object.entries(keys).map(([key, schema]) => [key.replace('?', ''), schema] as const);
  return {
    type: 'object',
    properties: Object.fromEntries(named),
    required: Object.keys(keys).filter(key => !key.endsWith('?')),
    additionalProperties: false,
  };
}

/** The heading of a section in the other languages of a sheet. */
const headingsIn = (heading: string): readonly string[] =>
  otherLanguages.flatMap(language => {
    const terms = JSON.parse(readFileSync(`hazard-data/languages/${language}/terms.json`, 'utf8'));
    return terms.headings[heading] ?? [];
  });

const defs: Readonly<Record<string, Schema>> = {
  statement: object({
    code: text,
    text,
    'group?': { enum: ['general', 'prevention', 'response', 'storage', 'disposal'] },
  }),
  value: object({
    property: text,
    of: maybe(text),
    value: number,
    'bound?': { enum: ['<', '<=', '>', '>='] },
    unit: maybe(text),
    'method?': maybe(text),
    source: maybe(text),
  }),
  ingredient: object({
    name: text,
    cas: maybe({ type: 'string', pattern: '^[0-9]{2,7}-[0-9]{2}-[0-9]$' }),
    percent: maybe(object({ low: number, high: number })),
    withheld: list({ enum: ['identity', 'percent'] }),
    hazards: list(text),
    namedIn: list({ enum: [8, 11, 15] }),
  }),
  item: object({
    key: text,
    state: { enum: ['filled', 'searched', 'open'] },
    heading: text,
    'letter?': text,
    'text?': text,
    'list?': some(text),
    'groups?': some(object({ title: text, list: some(text) })),
    'table?': some({ type: 'object', additionalProperties: { type: 'string' } }),
    'values?': some(ref('value')),
    'pictograms?': some({ type: 'string', pattern: '^GHS0[1-9]$' }),
    'notes?': some(text),
    source: text,
  }),
};

/** A section by number and heading, with the keys of its items. */
interface Outlined {
  readonly number: number;
  readonly heading: string;
  readonly keys: readonly string[];
}

const numbered = (
  sections: readonly {
    readonly number: number;
    readonly heading: string;
    readonly parts: readonly { readonly items: readonly { readonly key: string }[] }[];
  }[],
): readonly Outlined[] =>
  sections.map(({ number, heading, parts }) => ({
    number,
    heading,
    keys: [...new Set(parts.flatMap(({ items }) => items.map(({ key }) => key)))],
  }));

/** The outline of the sheet of each basis. */
const outlines: Readonly<Record<string, readonly Outlined[]>> = {
  'us-hcs': sheet.sections.map(({ number, heading, subheadings }) => ({
    number,
    heading,
    keys: subheadings.map(({ key }) => key),
  })),
  'eu-clp': numbered(union.sections),
  'un-ghs': numbered(ghs.sections),
};

/** One section with the keys of its items. */
const section = ({ number: at, heading, keys }: Outlined): Schema =>
  object({
    number: { const: at },
    title: { enum: [heading, ...headingsIn(heading)] },
    items: some({ allOf: [ref('item'), { type: 'object', properties: { key: { enum: keys } } }] }),
  });

/** The sections that a sheet has whose basis is this one. */
const sectionsOf = ([basis, outline]: readonly [string, readonly Outlined[]]): Schema => ({
  if: {
    type: 'object',
    properties: { basis: { type: 'object', properties: { id: { const: basis } } } },
  },
  // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
  then: {
    type: 'object',
    properties: {
      sections: {
        type: 'array',
        prefixItems: outline.map(section),
        items: false,
        minItems: outline.length,
      },
    },
  },
});

/** The JSON Schema (2020-12) of the data sheet as JSON, in one line. */
export function sheetJsonSchema(): string {
  const { properties, ...rest } = object({
    schema: { const: 'labelwright/sheet/1' },
    'copy?': { enum: ['distribution', 'review'] },
    'fingerprint?': text,
    product: object({ name: text, code: text }),
    basis: object({
      id: { enum: ['us-hcs', 'eu-clp', 'un-ghs'] },
      title: text,
      asOf: { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
    }),
    date: { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
    draft: { type: 'boolean' },
    language: text,
    revision: maybe(text),
    supersedes: maybe(
      object({ revision: text, date: { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' } }),
    ),
    maker: object({
      name: text,
      address: list(text),
      telephone: text,
      emergency: object({ telephone: text, hours: text }),
      email: maybe(text),
      website: maybe(text),
    }),
    classification: list(
      object({
        code: text,
        class: text,
        category: maybe(text),
        route: maybe({ enum: ['oral', 'dermal', 'inhalation'] }),
        statements: list(text),
      }),
    ),
    label: object({
      signalWord: maybe(text),
      pictograms: list({ type: 'string', pattern: '^GHS0[1-9]$' }),
      hazardStatements: list(ref('statement')),
      precautionaryStatements: list(ref('statement')),
      supplemental: list(ref('statement')),
    }),
    ingredients: list(ref('ingredient')),
    sections: { type: 'array' },
  });
  return `${JSON.stringify({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'labelwright safety data sheet',
    ...rest,
    properties,
    allOf: Object.entries(outlines).map(sectionsOf),
    $defs: defs,
  })}\n`;
}

/** Writes `templates/sheet.schema.json` below the project folder. */
export function generateSheetSchema(root: string): void {
  writeFileSync(join(root, 'templates', 'sheet.schema.json'), sheetJsonSchema());
}
