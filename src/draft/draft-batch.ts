import type { BatchSize } from '../batch/batch-size.ts';
import { type BatchTicket, batchGrams, batchTicket } from '../batch/ticket.ts';
import { fillPage } from '../document/template.ts';
import { readTemplate } from '../environment/package-files.ts';
import { layoutRawMaterials } from '../layout/case/raw-material-label.ts';
import { dpiOf, type PrinterName } from '../layout/roll-printer.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import { show } from '../quantity/print.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { MissingGlyphError } from '../text/missing-glyph.ts';
import { VERSION } from '../version.ts';
import {
  apartText,
  batchWords,
  cautionText,
  percentText,
  sizeText,
  stepAmounts,
  yieldText,
} from '../words/en/batch-ticket.ts';
import { batchMaterials, type LabelledMaterial } from './batch-materials.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { copyMark } from './inputs-of.ts';

/** What a call asks of a batch. */
export interface BatchOptions {
  readonly size: BatchSize;
  readonly lot: string;
  /** What the lot says; null where it is the shop's own. */
  readonly lotMeaning: string | null;
  /** YYYY-MM-DD */
  readonly made: string;
  readonly asListed: boolean;
  readonly printer: PrinterName;
}

/** A batch with its files. */
export interface DraftBatch {
  readonly ticket: BatchTicket;
  readonly files: readonly { readonly name: string; readonly bytes: Uint8Array | string }[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Drafts the ticket of a batch and the labels of its raw materials; findings where the record does not say enough. */
export async function draftBatch(
  product: ClassifiedProduct,
  options: BatchOptions,
  fonts: FontLibrary,
): Promise<Outcome<DraftBatch>> {
  const { record } = product;
  const at = { file: record.file };
  const refuse = (code: string, message: string, hint: string): Outcome<DraftBatch> =>
    fail({ code, severity: 'error', message, hint, at });
  const density = record.properties.density?.value ?? null;
  const grams = batchGrams(options.size, density);
  if (!grams)
    return refuse(
      'density-missing',
      `a batch of ${options.size.written} needs the density of the product`,
      'add `density:` under `properties`, or give the size as a weight',
    );
  const materials = batchMaterials(product);
  if (!materials)
    return refuse('batch-of-gas', 'a gas is not weighed into a batch', 'batch tickets are for other forms');
  const { asListed } = options;
  const ticket = batchTicket(materials, { grams, density, packs: record.packs, asListed });
  const diagnostics: Diagnostic[] = [];
  const page = await ticketPage(product, ticket, options);
  const files: { name: string; bytes: Uint8Array | string }[] = [{ name: 'batch-ticket.html', bytes: page }];
  try {
    const labels = await materialLabels(product, materials, options, fonts);
    diagnostics.push(...labels.diagnostics);
    if (labels.bytes) files.push({ name: 'raw-materials.pdf', bytes: labels.bytes });
  } catch (error) {
    if (!(error instanceof MissingGlyphError)) throw error;
    diagnostics.push({ code: 'missing-glyph', severity: 'error', message: error.message, at });
  }
  return succeed({ ticket, files, diagnostics });
}

function ticketPage(product: ClassifiedProduct, ticket: BatchTicket, options: BatchOptions): Promise<string> {
  const { record } = product;
  const { name, code } = record;
  const names = ticket.steps.map(({ material }) => material.name);
  const known = ticket.steps.filter(({ material }) => material.density);
  const without = ticket.steps
    .filter(({ material }) => !material.density)
    .map(({ material }) => material.name);
  return fillPage(readTemplate, 'batch/ticket.hbs', {
    name,
    code,
    written: options.size.written,
    size: sizeText(ticket.size),
    made: options.made,
    lot: options.lot,
    lotMeaning: options.lotMeaning ?? '',
    draft: batchWords.draft,
    copyNote: batchWords.copy,
    copy: copyMark(product, 'review'),
    apart: ticket.apart.map(each => apartText(each, names)),
    steps: ticket.steps.map((step, at) => ({
      number: at + 1,
      material: step.material.name,
      percent: percentText(step),
      ...amounts(step),
      cautions: step.cautions.map(cautionText),
    })),
    orderNote: options.asListed ? batchWords.asListed : batchWords.order,
    densities: batchWords.densities(
      known.map(({ material }) =>
        batchWords.densityOf(material.name, show(material.density!.value), material.densityAt),
      ),
      without,
    ),
    checks: checksOf(record),
    yields: ticket.yields.map(each => ({ pack: each.pack, contents: each.contents, ...yieldText(each) })),
    losses: batchWords.losses,
  });
}

function amounts(step: BatchTicket['steps'][number]) {
  const { pounds, kilograms, gallons, containers } = stepAmounts(step);
  return { pounds, kilograms, gallons: gallons ?? '', containers: containers ?? '' };
}

const checksOf = ({
  properties: { pH, density, flashPoint },
  appearance: { color, odor },
}: ProductRecord) => [
  ...(pH ? [{ what: batchWords.pH, target: pH.written }] : []),
  ...(density ? [{ what: batchWords.density, target: batchWords.densityTarget(density.written) }] : []),
  ...(flashPoint ? [{ what: batchWords.flashPoint, target: flashPoint.written }] : []),
  { what: batchWords.appearance, target: [color, odor].filter(text => text !== null).join(', ') },
  { what: batchWords.temperature, target: '' },
];

async function materialLabels(
  product: ClassifiedProduct,
  materials: readonly LabelledMaterial[],
  { lot, made, printer }: BatchOptions,
  fonts: FontLibrary,
): Promise<{ readonly bytes: Uint8Array | null; readonly diagnostics: readonly Diagnostic[] }> {
  const { record } = product;
  const hazardous = materials.filter(({ ingredients }) => !ingredients.every(({ water }) => water));
  const labels = hazardous.map(({ name, supplier, elements, ingredients, untested }) => {
    const unknown = ingredients.filter(({ data }) => data.noData).map(each => each.name);
    const { signalWord, pictograms, hazardStatements } = elements;
    const none = hazardStatements.length === 0 && unknown.length === 0 && untested.length === 0;
    return {
      name,
      signalWord,
      pictograms,
      statements: [
        ...hazardStatements.map(({ text }) => text),
        ...(none ? [batchWords.noHazards] : []),
        ...(unknown.length > 0 ? [batchWords.unknown(unknown)] : []),
      ],
      notes: [
        ...(untested.length > 0 ? [batchWords.untested(untested)] : []),
        supplier === null ? batchWords.supplier : `${supplier}. ${batchWords.supplier}`,
      ],
      byHand: batchWords.byHand,
      foot: batchWords.labelFoot(record.code),
    };
  });
  const laid = layoutRawMaterials(
    labels,
    { title: batchWords.labelTitle(record.name), subject: lot, date: `${made}T00:00:00Z` },
    dpiOf(printer),
    fonts,
  );
  if (!laid) return { bytes: null, diagnostics: [] };
  const bytes = await writePdf(laid.document, fonts, {
    kind: 'printer',
    version: VERSION,
    copy: copyMark(product, 'review'),
  });
  const found = await preflight(bytes, { kind: 'printer' });
  if (hasErrors(found)) throw new Error(`preflight: ${found.map(({ message }) => message).join('; ')}`);
  const unfit = laid.unfit.map(
    (name): Diagnostic => ({
      code: 'raw-material-label-fit',
      severity: 'error',
      message: `the label of ${name} does not fit on 4 x 6 in stock`,
      hint: 'label it by hand from its data sheet',
      at: { file: record.file },
      cite: '29 CFR 1910.1200(f)(6)',
    }),
  );
  return { bytes, diagnostics: [...found, ...unfit] };
}
