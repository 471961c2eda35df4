import { readFileSync, statSync } from 'node:fs';
import { classify } from '../../../src/classify/engine.ts';
import type { SheetInput } from '../../../src/document/sheet.ts';
import { loadTemplate, type Template } from '../../../src/document/template.ts';
import { transportData } from '../../../src/draft/draft-transport.ts';
import { labelledProduct } from '../../../src/draft/labelled-product.ts';
import { openProduct, type Product, productOf } from '../../../src/draft/open-product.ts';
import { openReference } from '../../../src/draft/open-reference.ts';
import { sheetFacts } from '../../../src/draft/sheet-facts.ts';
import { readTemplate } from '../../../src/environment/package-files.ts';
import { labelElements, withEveryPrecaution } from '../../../src/labelling/elements.ts';
import { completeRecord } from '../../../src/record/complete.ts';
import type { RecordEnv } from '../../../src/record/files.ts';
import type { BasisId } from '../../../src/reference/basis.ts';
import { openExposure } from '../../../src/reference/exposure/open-exposure.ts';
import { loadLabelData } from '../../../src/reference/label-data/load-label-data.ts';
import { openProperties } from '../../../src/reference/properties/ingredient-properties.ts';
import { openRegulatory } from '../../../src/reference/regulatory/open-regulatory.ts';
import type { Outcome } from '../../../src/report/diagnostic.ts';
import { transportInput } from '../../../src/transport/from-classification.ts';
import { transport as carried } from '../../../src/transport/transport.ts';
import { en } from '../../../src/words/en/index.ts';

export const DATE = '2026-11-25T08:30:00Z';

const files: RecordEnv = {
  statFile: path => {
    const found = statSync(path, { throwIfNoEntry: false });
    if (!found) return { kind: 'missing' };
    return found.isDirectory() ? { kind: 'directory' } : { kind: 'file', bytes: found.size };
  },
  readFile: path => readFileSync(path),
};

const given = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.diagnostics));
  return outcome.value;
};

export const exposure = openExposure(
  readFileSync('hazard-data/exposure/osha-pel.tsv'),
  readFileSync('hazard-data/exposure/carcinogen-lists.tsv'),
);

const properties = openProperties();

const list = (name: string) => readFileSync(`hazard-data/regulatory/${name}.tsv`);

export const regulatory = openRegulatory(list('cercla'), list('epcra-313'), list('prop65'));

export const sheetTemplate = (): Promise<Template> => loadTemplate(readTemplate, 'sheets/sheet.hbs');

/** A record of the demo as far as its label elements. */
export const sheetInput = (
  record: string,
  more: Partial<SheetInput> = {},
  basis: BasisId = 'us-hcs',
): Promise<SheetInput> => inputOf(given(openProduct(record, files)), more, basis);

/** The same for a formula, with what else a record needs around it. */
export const inputAround = (
  parts: Record<string, unknown>,
  more: Partial<SheetInput> = {},
  basis: BasisId = 'us-hcs',
): Promise<SheetInput> => inputOf(given(productOf(recordAround(parts), files)), more, basis);

/** A record with what it needs around a formula. */
export const recordAround = (parts: Record<string, unknown>): Record<string, unknown> => {
  const maker = {
    name: 'Tallow Lane Batch Works',
    address: ['48 Tallow Lane', 'Sampleton, OH 44000'],
    telephone: '+1 216 555 0142',
    emergency: { telephone: '+1 216 555 0199', hours: '24 hours' },
  };
  return {
    labelwright: 'product/1',
    name: 'Bench mixture',
    code: 'BM-1',
    use: 'Test',
    form: 'liquid',
    maker,
    ...parts,
  };
};

async function inputOf(
  { record, formula }: Product,
  more: Partial<SheetInput>,
  basis: BasisId,
): Promise<SheetInput> {
  const reference = given(await openReference(basis, DATE.slice(0, 10)));
  const classification = classify(record, formula, reference.basis, reference.lookup);
  const ghs = given(await openReference('un-ghs', DATE.slice(0, 10)));
  const packs = record.packs.length > 0 ? record.packs : [null];
  const labelData = await loadLabelData(basis);
  return {
    record: given(completeRecord(record)),
    formula,
    classification,
    elements: labelElements(classification, labelData, labelledProduct(record), 'sheet'),
    measures: labelElements(classification, withEveryPrecaution(labelData), labelledProduct(record), 'sheet'),
    environment: classify(record, formula, ghs.basis, ghs.lookup),
    words: en,
    exposure,
    properties,
    regulatory,
    transport: packs.map(pack => ({
      pack: pack?.contents.written ?? null,
      answer: carried(transportInput(record, formula, classification, pack), transportData()),
    })),
    thresholds: reference.basis,
    ...sheetFacts({ record, classification, reference }),
    date: DATE,
    revision: null,
    draft: true,
    ...more,
  };
}
