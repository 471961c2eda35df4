import { normalize } from 'node:path';
import { type Diagnostic, fail, type Outcome, succeed } from '../report/diagnostic.ts';
import { makerOf, productRecord } from './_assemble.ts';
import { findingsOf } from './_issues.ts';
import { Materials } from './_materials.ts';
import { readRecordFile, resolvePath, wrongKind } from './_read-file.ts';
import type { RecordEnv } from './files.ts';
import { type MakerInput, makerSchema } from './maker-schema.ts';
import { inOrder, Places } from './places.ts';
import type { Maker, ProductRecord } from './product-record.ts';
import { productSchema } from './product-schema.ts';
import { isTooDeep, type Parsed, parseYaml, tooDeep } from './yaml.ts';

/**
 * Reads a product record with the maker and raw materials that it names.
 * @returns the record in fixed units, or every problem of the files in order of place.
 */
export function loadRecord(path: string, env: RecordEnv): Outcome<ProductRecord> {
  const parsed = readRecordFile(path, 'product', env);
  return parsed.ok ? product(parsed.value, env) : fail(...inOrder(parsed.diagnostics));
}

/** As `loadRecord`, from text that is already at hand; `file` is where relative paths start and what findings name. */
export function parseRecordText(text: string, file: string, env: RecordEnv): Outcome<ProductRecord> {
  const parsed = parseYaml({ file, text: text.replace(/^\ufeff/, '') });
  if (!parsed.ok) return fail(...inOrder(parsed.diagnostics));
  const wrong = wrongKind(parsed.value.value, 'product', parsed.value.places);
  return wrong ? fail(wrong) : product(parsed.value, env);
}

/** As `loadRecord`, from a value parsed from JSON: findings carry a path, no line. */
export function parseRecordValue(value: unknown, env: RecordEnv, file = 'record'): Outcome<ProductRecord> {
  if (isTooDeep(value)) return fail(tooDeep(file));
  const places = new Places(file, null);
  const wrong = wrongKind(value, 'product', places);
  return wrong ? fail(wrong) : product({ value, raw: value, places }, env);
}

function product({ value, raw, places }: Parsed, env: RecordEnv): Outcome<ProductRecord> {
  const findings: Diagnostic[] = [];
  const materials = new Materials(env, findings, normalize(places.file));
  const checked = productSchema.safeParse(value);
  if (!checked.success) findings.push(...findingsOf(checked.error.issues, value, places));
  const { maker: named, formula } = value as { maker?: unknown; formula?: unknown };
  materials.follow(formula, places, ['formula']);
  const maker = typeof named === 'string' ? makerFile(named, places, env, findings) : null;
  if (!checked.success || findings.length > 0) return fail(...inOrder(findings));
  const { data } = checked;
  return succeed(
    productRecord(
      data,
      raw,
      maker ?? (data.maker === undefined ? null : makerOf(data.maker as MakerInput)),
      places,
      materials,
    ),
  );
}

function makerFile(named: string, places: Places, env: RecordEnv, findings: Diagnostic[]): Maker | null {
  const at = places.at(['maker']);
  const file = resolvePath(named, places.file);
  if (named.trim() === '') return null;
  if (file === null) {
    findings.push(
      places.finding(
        ['maker'],
        'not-relative',
        `\`${named}\` is not a relative path`,
        'name the file as seen from this one, such as maker.yaml',
      ),
    );
    return null;
  }
  const parsed = readRecordFile(file, 'maker', env, at);
  if (!parsed.ok) {
    findings.push(
      ...parsed.diagnostics.map(found =>
        found.at === at ? { ...found, excerpt: places.excerpt(at) } : found,
      ),
    );
    return null;
  }
  const checked = makerSchema.safeParse(parsed.value.value);
  if (checked.success) return makerOf(checked.data);
  findings.push(...findingsOf(checked.error.issues, parsed.value.value, parsed.value.places));
  return null;
}
