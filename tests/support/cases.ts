import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { classify } from '../../src/classify/engine.ts';
import { openReference } from '../../src/draft/open-reference.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import { parseRecordValue } from '../../src/record/load.ts';
import type { ProductRecord } from '../../src/record/product-record.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';
import { type Told, told } from './told.ts';

/** One worked example or table value from a published source. */
export interface PublishedExample {
  readonly id: string;
  readonly basis: BasisId;
  readonly alsoBasis?: readonly BasisId[];
  readonly title: string;
  readonly rule: string;
  readonly form: string;
  readonly properties?: Record<string, unknown>;
  readonly formula: readonly Record<string, unknown>[];
  readonly expected: {
    readonly hazards?: readonly string[];
    readonly notHazards?: readonly string[];
    /** Classes named without a category. */
    readonly classes?: readonly string[];
    readonly notClasses?: readonly string[];
    /** EUH codes. */
    readonly supplemental?: readonly string[];
    readonly notSupplemental?: readonly string[];
    readonly ateMix?: Readonly<Record<string, number>>;
    readonly printedTo?: Readonly<Record<string, number>>;
    readonly unknownAcuteToxicity?: Readonly<Record<string, number>>;
  };
  readonly speaksOf: readonly string[];
}

export interface PublishedFile {
  readonly file: string;
  /** `printed limits` where only the figures are the law's and the mixtures are ours. */
  readonly kind?: string;
  readonly source: { readonly title: string; readonly where: string };
  readonly examples: readonly PublishedExample[];
}

const noFiles = {
  read: () => ({ ok: false as const, error: 'no files in tests' }),
  size: () => ({ ok: false as const, error: 'no files in tests' }),
};

/** Every file of published examples that has any. */
export function publishedFiles(folder: string): PublishedFile[] {
  return readdirSync(folder)
    .filter(name => name.endsWith('.json'))
    .map(name => ({ ...(JSON.parse(readFileSync(join(folder, name), 'utf8')) as PublishedFile), file: name }))
    .filter(({ examples }) => (examples?.length ?? 0) > 0);
}

/** A complete record around a formula. */
export const recordAround = (parts: Record<string, unknown>): Record<string, unknown> => ({
  labelwright: 'product/1',
  name: 'Test mixture',
  code: 'T-1',
  use: 'Test',
  form: 'liquid',
  maker: {
    name: 'Example Works',
    address: ['1 Example Road', 'Sampletown, OH 44000'],
    telephone: '+1 216 555 0100',
    emergency: { telephone: '+1 216 555 0199', hours: '24 hours' },
  },
  ...parts,
});

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok)
    throw new Error(outcome.diagnostics.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return outcome.value;
};

/** Reads a record value, throwing where it is not valid. */
export const readRecord = (value: Record<string, unknown>): ProductRecord =>
  must(parseRecordValue(value, noFiles as never));

/** Classifies a record value under a basis on a date. */
export async function classifyValue(
  value: Record<string, unknown>,
  basis: BasisId = 'us-hcs',
  asOf = '2026-11-25',
): Promise<Told> {
  const record = readRecord(value);
  const formula = must(expandFormula(record));
  const reference = must(await openReference(basis, asOf));
  return told(classify(record, formula, reference.basis, reference.lookup));
}

/** Classifies constituents given as formula lines. */
export const classifyLines = (
  formula: readonly Record<string, unknown>[],
  basis: BasisId = 'us-hcs',
  more: Record<string, unknown> = {},
): Promise<Told> => classifyValue(recordAround({ formula, ...more }), basis);
