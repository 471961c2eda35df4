import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { nodeFiles } from '../../src/cli/files.ts';
import { classifyProduct } from '../../src/draft/classified-product.ts';
import { draftTransport } from '../../src/draft/draft-transport.ts';
import { productOf } from '../../src/draft/open-product.ts';
import { openReference } from '../../src/draft/open-reference.ts';
import { basicDescription, type Outcome, type TransportAnswer } from '../../src/transport/answer.ts';

export const asOf = '2026-11-26';

export interface Line {
  readonly name: string;
  readonly cas?: string;
  readonly percent: number | readonly [number, number];
  readonly hazards?: readonly string[];
  readonly ate?: Readonly<Record<string, string>>;
}

export interface Material {
  readonly form?: 'liquid' | 'solid' | 'aerosol' | 'gas';
  readonly formula: readonly Line[];
  readonly flash?: string;
  readonly boil?: number;
  readonly pH?: number;
  readonly density?: number;
  readonly contents?: string;
  readonly count?: number;
  /** Whole-mixture results: class and result as the record writes them. */
  readonly tests?: readonly { readonly class: string; readonly result: string }[];
}

/** Classifies a material under us-hcs and gives its transport answer. */
export async function ship(material: Material): Promise<TransportAnswer> {
  const reference = await openReference('us-hcs', asOf);
  if (!reference.ok) throw new Error('no figures');
  const sum = material.formula.reduce(
    (total, { percent }) => total + (typeof percent === 'number' ? percent : 0),
    0,
  );
  const ranged = material.formula.some(({ percent }) => typeof percent !== 'number');
  const record = {
    labelwright: 'product/1',
    name: 'Sample',
    code: 'S-1',
    form: material.form ?? 'liquid',
    properties: {
      ...(material.flash ? { 'flash-point': material.flash } : {}),
      ...(material.boil === undefined ? {} : { 'initial-boiling-point': `${material.boil} C` }),
      ...(material.pH === undefined ? {} : { pH: String(material.pH) }),
      density: `${material.density ?? 1} g/mL`,
    },
    formula: [
      ...material.formula.map(line => ({
        ...line,
        ...(line.hazards ? { source: 'sample' } : {}),
      })),
      ...(ranged || sum < 100 ? [{ name: 'water', amount: 'balance' }] : []),
    ],
    evidence: (material.tests ?? []).map(test => ({
      ...test,
      kind: 'test',
      method: 'sample of a test',
      source: 'sample of a report',
      reason: 'sample: the whole mixture was tested',
    })),
    packs: [
      {
        id: 'p',
        contents: material.contents ?? (material.form === 'solid' ? '500 g' : '500 mL'),
        case: { count: material.count ?? 6, tare: '0.5 kg' },
      },
    ],
  };
  const product = productOf(record, nodeFiles, reference.value.basis);
  if (!product.ok) throw new Error(JSON.stringify(product.diagnostics, null, 1));
  const classified = classifyProduct(product.value, reference.value);
  return draftTransport(classified, product.value.record.packs[0]!);
}

/** The basic description, or the answer where there is none. */
export const described = (answer: Outcome): string => basicDescription(answer) ?? answer.answer;

const law = parse(readFileSync('hazard-data/sources/dot-172-101.csv', 'utf8'), { columns: true }) as Record<
  string,
  string
>[];

/** Rows of the stored table of 49 CFR 172.101 with number, class and packing group of a description. */
export function lawRows(description: string): readonly Record<string, string>[] {
  const [, id, hazardClass, group = ''] =
    /^(?:RQ, )?((?:UN|NA|ID)\d{4}), .*, ([\d.]+|Combustible liquid)(?: \([^)]*\))?(?:, (I{1,3}))?$/.exec(
      description,
    ) ?? [];
  const shown = hazardClass === 'Combustible liquid' ? 'Comb liq' : hazardClass;
  return law.filter(
    row => row.id_number === id && row.class === shown && (row.packing_group ?? '') === group,
  );
}
