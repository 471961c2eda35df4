import { classify } from '../classify/engine.ts';
import { nodeFiles } from '../cli/files.ts';
import { classificationJson } from '../draft/classification-json.ts';
import { classifyProduct } from '../draft/classified-product.ts';
import { openProduct, type Product, productOf } from '../draft/open-product.ts';
import { openReference, type Reference } from '../draft/open-reference.ts';
import { packagePath } from '../environment/package-files.ts';
import type { Outcome } from '../report/diagnostic.ts';
import { en } from '../words/en/index.ts';
import { outcomeRatios } from './outcomes.ts';
import { secondsOfEach } from './timing.ts';

/** A measured ratio with what it compares. */
export interface Ratio {
  readonly what: string;
  readonly against: string;
  readonly ratio: number;
  /** Of the one and of the other, where the reader would ask for them. */
  readonly seconds?: readonly [number, number];
}

const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('; '));
  return outcome.value;
};

const demoProduct = (): Product =>
  must(openProduct(packagePath('templates', 'demo', 'patio-cleaner.yaml'), nodeFiles));

/** Classification with reasons against reading the record and printing the result as JSON. */
export async function classificationRatios(): Promise<Ratio[]> {
  const reference = must(await openReference('us-hcs', '2026-11-25'));
  const product = demoProduct();
  const { record, formula } = product;
  const classified = classifyProduct(product, reference);
  const text = JSON.stringify(record.raw);
  const result = classificationJson(record, classified.classification, classified.elements, en);
  const [json, reasons, whole] = secondsOfEach(
    () => {
      JSON.parse(text);
      JSON.stringify(result);
    },
    () => void classify(record, formula, reference.basis, reference.lookup),
    () => void classifyProduct(product, reference),
  );
  return [
    {
      what: 'classify with reasons',
      against: 'JSON.parse of the record + JSON.stringify of the result',
      ratio: reasons! / json!,
    },
    { what: 'classify with reasons and label elements', against: 'the same', ratio: whole! / json! },
    ...outcomeRatios(product, reference),
  ];
}

/** How the cost grows with the number of constituents; 1 is linear. */
export async function growthRatios(): Promise<Ratio[]> {
  const reference = must(await openReference('us-hcs', '2026-11-25'));
  const counts = [3, 12, 48, 192];
  const seconds = secondsOfEach(...counts.map(count => classifying(count, reference)));
  return counts.slice(1).map((count, i) => ({
    what: `classify ${count} constituents, per constituent`,
    against: `${counts[i]} constituents, per constituent`,
    ratio: seconds[i + 1]! / count / (seconds[i]! / counts[i]!),
  }));
}

function classifying(count: number, reference: Reference): () => void {
  const hazards = [
    'Skin Irrit. 2',
    'Acute Tox. 4 (oral)',
    'Eye Irrit. 2',
    'STOT SE 3 (respiratory irritation)',
  ];
  const lines = Array.from({ length: count }, (_, i) => ({
    name: `ingredient ${i + 1}`,
    percent: 90 / count,
    hazards: [hazards[i % hazards.length]],
    source: 'bench',
  }));
  const value = {
    labelwright: 'product/1',
    name: 'Bench',
    code: 'B-1',
    form: 'liquid',
    formula: [...lines, { name: 'water', amount: 'balance' }],
  };
  const { record, formula } = must(productOf(value, nodeFiles));
  return () => void classify(record, formula, reference.basis, reference.lookup);
}
