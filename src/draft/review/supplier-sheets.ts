import { dirname, relative } from 'node:path';
import type { FormulaLine, RawMaterial } from '../../record/product-record.ts';
import type { Words } from '../../words/words.ts';
import type { ClassifiedProduct } from '../classified-product.ts';

/** Raw materials of a formula, those within them too, each once. */
const materialsOf = (lines: readonly FormulaLine[]): readonly RawMaterial[] => [
  ...new Set(
    lines.flatMap(line =>
      line.kind === 'substance' ? [] : [line.material, ...materialsOf(line.material.formula)],
    ),
  ),
];

/** The data sheets on which the raw materials rest, by name, with the fingerprint of each file that is kept. */
export function supplierSheets(
  { record, sources }: Pick<ClassifiedProduct, 'record' | 'sources'>,
  { reviewPage }: Words,
): readonly { readonly subject: string; readonly text: string }[] {
  const hashes = new Map(sources.included.map(({ path, sha256 }) => [path, sha256]));
  return materialsOf(record.formula).map(({ name, supplier, sheet }) => {
    const file = sheet?.file ? relative(dirname(record.file), sheet.file).replaceAll('\\', '/') : null;
    const sha256 = file === null ? null : (hashes.get(file) ?? null);
    const { revision = null, date = null } = sheet ?? {};
    return { subject: name, text: reviewPage.supplierSheet({ supplier, revision, date, file, sha256 }) };
  });
}
