import table from '../../hazard-data/categories-by-basis.json' with { type: 'json' };
import { basisIds } from '../reference/basis.ts';
import type { Basis } from '../reference/thresholds.ts';

/** Whether a code names a class without the group or division that is part of it. */
export const isOpenCode = (code: string): boolean => table.open.codes.includes(code);

const cites = new Map(
  basisIds.map(id => [id, new Map(table[id].flatMap(({ codes, cite }) => codes.map(code => [code, cite])))]),
);

/** Where a basis is said to have a class without this category of it; null where it has both or neither. */
export const outsideBasis = ({ id }: Pick<Basis, 'id'>, code: string): string | null =>
  cites.get(id)!.get(code) ?? null;
