import { PALLET_NAMES } from '../logistics/pallet.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { caseFileWords } from '../words/en/case.ts';
import { leftToProduction } from '../words/en/case-findings.ts';
import { caseFileName } from './case-files.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { draftCase } from './draft-case.ts';
import { copyMark } from './inputs-of.ts';
import { casePrinter, markedCase } from './marked-case.ts';
import type { PacketFile } from './packet.ts';
import type { PacketLabel } from './review/labels.ts';

/** The labels of the cases of a product, as far as they are known before a batch is made. */
export interface PacketCases {
  readonly files: readonly PacketFile[];
  /** What the reviewer sees of them. */
  readonly labels: readonly PacketLabel[];
  readonly missing: readonly { readonly name: string; readonly reason: string }[];
}

/** Nothing that only the day of production knows: no lot, no date, no number of a pallet is made up. */
const beforeBatch = {
  lot: null,
  made: null,
  useBy: null,
  emptyPack: null,
  tare: null,
  size: null,
  pallet: PALLET_NAMES[0]!,
  maxHeight: null,
  layers: null,
  cases: null,
  sscc: null,
  limitedQuantity: false,
  arrows: false,
};

/**
 * Case label, marks of transport and drawing of the pallet for each pack that is sold in cases, on the stock of its
 * roll printer. A label that cannot be made is told and the rest is made.
 * @param date YYYY-MM-DD
 */
export async function packetCases(
  product: ClassifiedProduct,
  date: string,
  fonts: FontLibrary,
): Promise<PacketCases> {
  const copy = copyMark(product, 'distribution');
  const all: PacketCases[] = [];
  for (const pack of product.record.packs) {
    const marked = markedCase(product, pack, beforeBatch, false);
    if (!marked) continue;
    const options = {
      pack,
      ...marked,
      batch: beforeBatch,
      printer: casePrinter(pack),
      pallet: false,
      date,
      copy,
    };
    const { files, missing, diagnostics } = await draftCase(product.record, options, fonts);
    const what = caseFileWords(marked.facts.count, pack.contents.written);
    const told = [...marked.diagnostics, ...diagnostics, ...leftToProduction(pack, marked.facts)];
    const main = caseFileName('case', pack.id);
    const pages = [
      ...files.flatMap(({ name, document }) => (document ? [{ name, document }] : [])),
      ...missing.map(({ name }) => ({ name, document: null })),
    ];
    all.push({
      files: files.map(({ kind, name, bytes }) => ({ name, what: what[kind], kind: 'distribution', bytes })),
      // What is found of a case stands at its label, made or not.
      labels: pages.map(({ name, document }) => ({
        name,
        draft: { document, brand: null, diagnostics: name === main ? told : [] },
      })),
      missing,
    });
  }
  return {
    files: all.flatMap(({ files }) => files),
    labels: all.flatMap(({ labels }) => labels),
    missing: all.flatMap(({ missing }) => missing),
  };
}
