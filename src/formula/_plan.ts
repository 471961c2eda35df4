import Fraction from 'fraction.js';
import type { FormulaLine, ProductRecord, SubstanceLine } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { Basis } from './_amounts.ts';
import { type Composition, type Share, sharesOf } from './_shares.ts';
import { isWater, WATER_CAS } from './water.ts';

/** A line with its share and, for a raw material, the plan of its composition. */
export interface PlannedLine {
  readonly line: FormulaLine;
  readonly share: Share;
  /** Number of the range, counted over the whole record; null where the share is no range. */
  readonly range: number | null;
  readonly inner: Plan | null;
}

/** A composition whose shares are determined. */
export interface Plan {
  readonly name: string;
  readonly lines: readonly PlannedLine[];
}

/** A range line of the record: low and high percent of its composition. */
export interface Range {
  readonly low: Fraction;
  readonly high: Fraction;
}

/** Plans a record; a raw material that several lines name is planned once, and its ranges count once. */
export function planOf(
  record: ProductRecord,
  basis: Basis,
  findings: Diagnostic[],
): { readonly plan: Plan; readonly ranges: readonly Range[] } {
  const ranges: Range[] = [];
  const plans = new Map<readonly FormulaLine[], Plan>();

  const plan = (composition: Composition): Plan => {
    const known = plans.get(composition.lines);
    if (known) return known;
    const shares = sharesOf(composition, basis, findings);
    const lines = composition.lines.map((line, index): PlannedLine => {
      const inner = line.kind === 'raw-material' ? plan(compositionOf(line)) : null;
      // Without shares there is an error already; planning goes on to find those of raw materials.
      const share: Share = shares?.[index] ?? { kind: 'fixed', percent: new Fraction(0) };
      return { line, share, range: share.kind === 'range' ? ranges.push(share) - 1 : null, inner };
    });
    const made = { name: composition.name, lines };
    plans.set(composition.lines, made);
    return made;
  };

  const made = plan({
    name: record.name,
    lines: record.formula,
    batch: record.batch,
    density: record.properties.density?.value.exact ?? null,
    at: record.formula[0]?.at ?? { file: record.file },
    excerpt: record.formula[0]?.excerpt,
    path: 'formula',
  });
  return { plan: made, ranges };
}

function compositionOf(line: FormulaLine & { kind: 'raw-material' }): Composition {
  const { material } = line;
  return {
    name: material.name,
    lines: material.formula,
    batch: material.batch,
    density: material.density?.exact ?? null,
    at: material.formula[0]?.at ?? line.at,
    excerpt: material.formula[0]?.excerpt,
    path: material.file === line.at.file ? `${line.path}.use.formula` : 'formula',
  };
}

/** What makes two lines one constituent: the CAS number, or else the name. */
export const keyOf = ({ name, cas }: SubstanceLine): string =>
  cas ?? (isWater(name, cas) ? WATER_CAS : name.toLowerCase().replace(/\s+/g, ' '));
