import { normalize } from 'node:path';
import { type Diagnostic, fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { RecordEnv } from './files.ts';
import { kindOfFile, loadRawMaterial, loadRecord } from './load.ts';
import { inOrder } from './places.ts';
import type { FormulaLine, ProductRecord, RawMaterial } from './product-record.ts';

/** The records of a folder: products, and the raw materials that they are made from. */
export interface Shelf {
  /** Paths of all products, also of those that cannot be used. */
  readonly productFiles: readonly string[];
  readonly products: readonly ProductRecord[];
  readonly materials: readonly RawMaterial[];
  /** Records of a folder that share a number which only one may have. */
  readonly conflicts: readonly Diagnostic[];
  /** Warnings about the files. */
  readonly findings: readonly Diagnostic[];
}

/**
 * Reads every record below a folder.
 * @returns findings where the folder holds no record, or where folders cannot be listed. Records that cannot be used
 * are told in `findings` of the shelf.
 */
export function readShelf(folder: string, env: RecordEnv): Outcome<Shelf> {
  const files = (env.listFiles?.(folder) ?? []).filter(path => /\.(?:ya?ml|json)$/i.test(path));
  const ofKind = (kind: string) => files.filter(path => kindOfFile(path, env) === kind);
  const [productFiles, materialFiles] = [ofKind('product'), ofKind('raw-material')];
  if (productFiles.length + materialFiles.length === 0)
    return fail({
      code: 'no-records',
      severity: 'error',
      message: `there is no product and no raw material below \`${folder}\``,
      hint: 'a record begins with `labelwright: product/1` or `labelwright: raw-material/1`',
      at: { file: folder },
    });
  // The folder that was asked for is the tree that its records may name files of.
  const inFolder: RecordEnv = { ...env, allow: [...(env.allow ?? []), folder] };
  const [products, materials]: [ProductRecord[], RawMaterial[]] = [[], []];
  const findings = new Map<string, Diagnostic>();
  const keep = <T>(outcome: Outcome<T>, into: T[]): void => {
    // A raw material that several products use says its findings once.
    for (const found of outcome.diagnostics)
      findings.set(
        `${found.at?.file} ${found.at?.line} ${found.at?.column} ${found.code} ${found.message}`,
        found,
      );
    if (outcome.ok) into.push(outcome.value);
  };
  for (const path of materialFiles) keep(loadRawMaterial(path, inFolder), materials);
  for (const path of productFiles) keep(loadRecord(path, inFolder), products);
  return succeed({
    productFiles,
    products,
    materials,
    conflicts: conflictsOf(products),
    findings: inOrder([...findings.values()]),
  });
}

/** One product code or one GTIN on two products of a folder. */
function conflictsOf(products: readonly ProductRecord[]): readonly Diagnostic[] {
  const seen = new Map<string, string>();
  const found: Diagnostic[] = [];
  const once = (
    key: string,
    file: string,
    finding: Omit<Diagnostic, 'severity' | 'message'>,
    what: string,
  ) => {
    const before = seen.get(key);
    if (before === undefined) seen.set(key, file);
    else if (before !== file)
      found.push({ ...finding, severity: 'error', message: `${what} is also that of ${before}` });
  };
  for (const { file, code, packs } of products) {
    once(
      `code ${code.toLowerCase()}`,
      file,
      { code: 'code-twice', at: { file }, path: 'code', hint: 'give each product a code of its own' },
      `code \`${code}\``,
    );
    packs.forEach(({ gtin, case: outer, at }, index) => {
      for (const [number, path] of [
        [gtin, `packs[${index}].gtin`],
        [outer?.gtin, `packs[${index}].case.gtin`],
      ] as const)
        if (number)
          once(
            `gtin ${number.padStart(14, '0')}`,
            file,
            {
              code: 'gtin-twice',
              at,
              path,
              hint: 'each pack and each case of each product has a number of its own',
            },
            `GTIN \`${number}\``,
          );
    });
  }
  return found;
}

/** The products of a shelf that a raw material is in, by itself or within another. */
export function usersOf(material: string, { products }: Pick<Shelf, 'products'>): readonly ProductRecord[] {
  const wanted = normalize(material);
  const holds = (lines: readonly FormulaLine[]): boolean =>
    lines.some(
      line =>
        line.kind === 'raw-material' &&
        (normalize(line.material.file) === wanted || holds(line.material.formula)),
    );
  return products.filter(({ formula }) => holds(formula));
}

/**
 * Raw materials whose supplier's sheet has a date more than some years before a day (YYYY-MM-DD), and those whose sheet
 * has no date.
 */
export function sheetsToRenew(
  { materials }: Pick<Shelf, 'materials'>,
  today: string,
  years: number,
): { readonly old: readonly RawMaterial[]; readonly undated: readonly RawMaterial[] } {
  const limit = `${Number(today.slice(0, 4)) - years}${today.slice(4)}`;
  return {
    old: materials.filter(({ sheet }) => sheet?.date && sheet.date < limit),
    undated: materials.filter(({ sheet }) => !sheet?.date),
  };
}
