import shelf from '../../hazard-data/shelf.json' with { type: 'json' };
import type { Resolved } from '../classify/resolve.ts';
import { resolve } from '../classify/resolve.ts';
import { type WeighOut, weighOut } from '../formula/weigh-out.ts';
import { namesStrength } from '../record/strength-in-name.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { checkHydrates } from './check-hydrates.ts';
import { checkNames, entryNames } from './check-names.ts';
import { checkPacks } from './check-packs.ts';
import { marketFindings } from './market-findings.ts';
import { type MeasuredFormula, measuredFormulas } from './measured-formulas.ts';
import type { Product } from './open-product.ts';
import { harmonisedTable, type Reference } from './open-reference.ts';

/** A record as `check` shows it: what was understood, what to weigh out, and what is asked. */
export interface CheckedProduct {
  readonly product: Product;
  /** Beside each constituent, the data that it is judged by. */
  readonly resolved: readonly Resolved[];
  /** Hazards that the record words in another way than the notation, by constituent. */
  readonly readAs: readonly {
    readonly name: string;
    readonly written: string;
    readonly read: readonly string[];
  }[];
  /** Names of entries, by CAS number, where the record has another name. */
  readonly entryNames: ReadonlyMap<string, string>;
  readonly weighOut: WeighOut | null;
  /** For each measured property, the formula that it rests on. */
  readonly measuredOn: readonly MeasuredFormula[];
  /** Questions and warnings. */
  readonly doubts: readonly Diagnostic[];
}

/** Looks at a valid record as a careful colleague would. @param asOf day of the law, YYYY-MM-DD. */
export function checkedProduct(product: Product, reference: Reference, asOf: string): CheckedProduct {
  const { record, formula } = product;
  const table = harmonisedTable();
  const weighed = weighOut(record);
  const resolved = formula.constituents.map((constituent, i) =>
    resolve(constituent, i, reference.lookup, record.form),
  );
  return {
    product,
    resolved,
    readAs: formula.constituents.flatMap(({ name, given }) =>
      (given.readAs ?? []).map(each => ({ name, ...each })),
    ),
    entryNames: entryNames(formula, resolved),
    weighOut: weighed,
    measuredOn: measuredFormulas(product, resolved),
    doubts: [
      ...checkNames(record, table, asOf),
      ...checkHydrates(record, formula, resolved),
      ...checkPacks(record),
      ...marketFindings(record),
      ...soldAsSolution(product),
      ...overfull(product, weighed),
    ],
  };
}

/** Substances named by themselves that a shop buys as a solution: one question for all of them. */
function soldAsSolution({ record }: Product): readonly Diagnostic[] {
  const asked = record.formula.flatMap(line => {
    // A name that holds a strength is asked about at its line.
    if (line.kind !== 'substance' || line.cas === null || namesStrength(line.name)) return [];
    const known = shelf.soldAsSolution.find(({ cas }) => cas === line.cas);
    return known ? [`${line.name} (sold as ${known.as})`] : [];
  });
  if (asked.length === 0) return [];
  return [
    {
      code: 'solution-or-substance',
      severity: 'note',
      message: `percentages are taken as those of the substance itself: ${asked.join('; ')}`,
      hint: 'where one is of the solution as bought, make that solution a raw material with its strength, and name it with `use:`',
      at: { file: record.file },
      path: 'formula',
    },
  ];
}

/** Parts that have more volume than the batch which they are to make; only where every density is known. */
function overfull({ record }: Product, weighed: WeighOut | null): readonly Diagnostic[] {
  const density = record.properties.density?.value.value;
  if (!weighed || density === undefined || weighed.lines.some(line => line.density === null)) return [];
  const whole = weighed.grams.value / density;
  const parts = weighed.lines.reduce((sum, line) => sum + line.lowGrams.value / line.density!.value, 0);
  if (parts <= whole * shelf.fillTolerance) return [];
  const percent = Number(((parts / whole) * 100).toPrecision(3));
  return [
    {
      code: 'parts-overfill',
      severity: 'warning',
      message: `the parts of the batch have ${percent} % of the volume that it has by its density`,
      hint: 'compare the density of the product, those of the raw materials and the size of the batch',
      at: { file: record.file },
      path: 'formula',
    },
  ];
}
