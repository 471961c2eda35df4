import shelf from '../../hazard-data/shelf.json' with { type: 'json' };
import type { Resolved } from '../classify/resolve.ts';
import type { Formula } from '../formula/constituent.ts';
import { plain } from '../quantity/print.ts';
import type { ProductRecord } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

/**
 * Hydrates of which nothing is known, with the substance without water that has a harmonised entry. A question alone: the
 * entry is never taken for the hydrate in silence (CLP Annex VI 1.1.1, from memory: an entry has the CAS number of the
 * substance without water as a rule).
 */
export function checkHydrates(
  record: Pick<ProductRecord, 'file'>,
  { constituents }: Formula,
  resolved: readonly Pick<Resolved, 'data'>[],
): readonly Diagnostic[] {
  return constituents.flatMap(({ cas, name, high }, i): Diagnostic[] => {
    if (cas === null || !resolved[i]!.data.noData) return [];
    const known = shelf.hydrates.find(hydrate => hydrate.cas === cas);
    if (!known) return [];
    const share = Number(((high.value * known.percent) / 100).toPrecision(3));
    return [
      {
        code: 'hydrate-without-entry',
        severity: 'warning',
        message: `\`${name}\` is a hydrate without an entry of its own; the table has ${known.of.name} (${known.of.cas}), ${plain.show(known.percent)} % of it`,
        hint: `where that entry holds, write \`{name: ${known.of.name}, cas: ${known.of.cas}, percent: ${plain.show(share)}}\` and count the rest as water; else give \`hazards\` with their \`source\``,
        at: { file: record.file },
        path: 'formula',
      },
    ];
  });
}
