import { readdirSync } from 'node:fs';
import { nodeFiles } from '../../src/cli/files.ts';
import { type ClassifiedProduct, classifyProduct } from '../../src/draft/classified-product.ts';
import { openProduct } from '../../src/draft/open-product.ts';
import { openReference } from '../../src/draft/open-reference.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';

/** The day on which all dumps are made. */
export const AS_OF = '2026-11-25';

export const bases: readonly BasisId[] = ['us-hcs', 'eu-clp', 'un-ghs'];

const recordsIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter(name => name.endsWith('.yaml') && name !== 'maker.yaml')
    .sort()
    .map(name => `${folder}/${name}`);

/** The three products of the demo. */
export const demos: readonly string[] = recordsIn('templates/demo');
/** Fictional products that between them reach the rules. */
export const records: readonly string[] = recordsIn('tests/golden/records');

/** `degreaser` of `templates/demo/degreaser.yaml`. */
export const nameOf = (path: string): string => /([^/]+)\.yaml$/.exec(path)![1]!;

/** The value of an outcome that must be one. */
export function must<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('\n'));
  return outcome.value;
}

/**
 * A record file classified under a basis. Evidence that the basis does not allow is no error here, so that what the
 * classifier itself says of it is in the dump.
 */
export async function classified(path: string, basis: BasisId): Promise<ClassifiedProduct> {
  return classifyProduct(must(openProduct(path, nodeFiles)), must(await openReference(basis, AS_OF)));
}
