import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
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

/** One section with the keys of its items, in their order. */
const section = ({ number: at, heading, subheadings }: (typeof sheet.sections)[number]): Schema =>
  object({
    number: { const: at },
    title: { enum: [heading, ...headingsIn(heading)] },
    items: some({
      allOf: [ref('item'), { properties: { key: { enum: subheadings.map(({ key }) => key) } } }],
    }),
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
    sections: {
      type: 'array',
      prefixItems: sheet.sections.map(section),
      items: false,
      minItems: sheet.sections.length,
    },
  });
  return `${JSON.stringify({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'labelwright safety data sheet, 29 CFR 1910.1200',
    ...rest,
    properties,
    $defs: defs,
  })}\n`;
}

/** Writes `templates/sheet.schema.json` below the project folder. */
export function generateSheetSchema(root: string): void {
  writeFileSync(join(root, 'templates', 'sheet.schema.json'), sheetJsonSchema());
}
