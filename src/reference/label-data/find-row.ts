import type { AllocationFile, AllocationRow } from './allocation.ts';

/** What the row of a hazard is looked up by. */
export interface RowKey {
  /** `Skin Corr. 1B` */
  readonly code: string;
  readonly hazardClass: string;
  readonly category: string;
  readonly route?: string | null;
  readonly effect?: string | null;
  /** H-codes; they decide where the effect of STOT SE 3 is not named. */
  readonly statements?: readonly string[];
}

const indexes = new WeakMap<AllocationFile, ReadonlyMap<string, AllocationRow>>();

function byHazard(allocation: AllocationFile): ReadonlyMap<string, AllocationRow> {
  const known = indexes.get(allocation);
  if (known) return known;
  const index = new Map(allocation.rows.map(row => [row.hazard, row]));
  indexes.set(allocation, index);
  return index;
}

/** The row of the allocation table for a hazard, or null where the basis has no label elements for it. */
export function findRow(allocation: AllocationFile, hazard: RowKey): AllocationRow | null {
  const { rows, aliases } = allocation;
  const { code, hazardClass, category, route, effect, statements = [] } = hazard;
  const names = [
    effect && `${code} (${effect})`,
    route && `${code} (${route})`,
    category && `${hazardClass} (${category})`,
    code,
  ].filter(name => typeof name === 'string' && name !== '');
  for (const name of names) {
    const row = byHazard(allocation).get(aliases[name as string] ?? (name as string));
    if (row) return row;
  }
  return (
    rows.find(
      row =>
        row.hazard.startsWith(`${code} (`) &&
        row.statements.some(statement => statements.includes(statement)),
    ) ?? null
  );
}
