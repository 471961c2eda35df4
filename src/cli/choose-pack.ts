import type { Pack, ProductRecord } from '../record/product-record.ts';
import { nearest } from '../report/nearest.ts';
import { UsageError } from './arguments.ts';

/**
 * The pack that a call names, or the only one of the record.
 * @throws UsageError where it cannot be told which is meant
 */
export function choosePack({ packs, file }: ProductRecord, id: string | null): Pack {
  const ids = packs.map(pack => pack.id);
  if (packs.length === 0) throw new UsageError(`${file} has no packs; add \`packs:\` with one entry a pack`);
  if (id === null) {
    if (packs.length === 1) return packs[0]!;
    throw new UsageError(`--pack is needed; the packs are ${ids.join(', ')}`);
  }
  const found = packs.find(pack => pack.id === id);
  if (found) return found;
  const near = nearest(id, ids);
  throw new UsageError(
    `there is no pack ${id}; ${near ? `did you mean ${near}?` : `the packs are ${ids.join(', ')}`}`,
  );
}
