import { harmonisedTable, openReference } from '../../src/draft/open-reference.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import { findConstituent } from '../../src/headroom/find-constituent.ts';
import { type Headroom, type HeadroomInput, headroom } from '../../src/headroom/headroom.ts';
import type { LabelOf } from '../../src/headroom/state.ts';
import type { Others } from '../../src/headroom/variation.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';
import { readRecord, recordAround } from '../support/cases.ts';

const AS_OF = '2026-11-25';

export const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('\n'));
  return outcome.value;
};

export interface Asked {
  readonly of: string;
  readonly basis?: BasisId;
  readonly others?: Others;
  readonly more?: Record<string, unknown>;
  readonly labelOf?: LabelOf;
}

/** What a search needs, for formula lines. */
export async function inputFor(
  lines: readonly Record<string, unknown>[],
  { basis = 'us-hcs', more = {}, labelOf }: Asked,
): Promise<HeadroomInput> {
  const record = readRecord(recordAround({ formula: lines, ...more }));
  const reference = must(await openReference(basis, AS_OF));
  return {
    record,
    formula: must(expandFormula(record)),
    ...reference,
    entriesOf: cas => harmonisedTable().candidates(cas, AS_OF),
    labelOf: labelOf ?? null,
  };
}

/** Breakpoints of one constituent of formula lines. */
export async function headroomOf(lines: readonly Record<string, unknown>[], asked: Asked): Promise<Headroom> {
  const input = await inputFor(lines, asked);
  return must(headroom(input, indexOf(input, asked.of), asked.others ?? 'water'));
}

export function indexOf({ formula }: HeadroomInput, of: string): number {
  const found = findConstituent(formula, of);
  if (!('index' in found)) throw new Error(`no constituent ${of}`);
  return found.index;
}

export const water = { name: 'water', amount: 'balance' };
