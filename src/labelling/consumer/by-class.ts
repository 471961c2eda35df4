import type { Classification, ClassifiedHazard } from '../../classify/classification.ts';
import { namedIn } from '../../classify/facts/figure.ts';
import { consumerData } from '../../reference/consumer/hazard-data.ts';
import type { ClassRow } from '../../reference/consumer/rules.ts';
import type { ConsumerHazard, UncoveredHazard } from './facts.ts';

/** Classes that this law judges by figures of its own. */
const BY_FIGURES = ['Acute Tox.', 'Flam. Liq.'];

const rowOf = ({ hazardClass, category, effect }: ClassifiedHazard): ClassRow | undefined =>
  consumerData.classes.find(
    row =>
      row.class === hazardClass &&
      (row.categories?.includes(category) ?? true) &&
      (row.effect === undefined || row.effect === effect),
  );

/** Constituents on which a class of the mixture rests. */
export const bringers = ({ because }: ClassifiedHazard): readonly number[] =>
  (namedIn(because) ?? []).map(({ constituent }) => constituent);

/**
 * Hazards proposed from the classes of the classification (16 CFR 1500.3(c)(2) to (7)), and the classes that this law
 * does not cover. Every class is one or the other.
 */
export function byClass({ hazards }: Pick<Classification, 'hazards'>): {
  readonly hazards: readonly ConsumerHazard[];
  readonly uncovered: readonly UncoveredHazard[];
} {
  const found: ConsumerHazard[] = [];
  const uncovered: UncoveredHazard[] = [];
  for (const hazard of hazards) {
    if (BY_FIGURES.includes(hazard.hazardClass)) continue;
    const row = rowOf(hazard);
    if (row)
      found.push({
        kind: row.kind,
        statement: row.statement,
        codes: row.statement === 'as-classified' ? hazard.statements : [],
        cite: row.cite,
        from: { kind: 'class', code: hazard.code, of: hazard.effect ?? hazard.route },
        settledBy: row.settledBy,
        constituents: bringers(hazard),
      });
    else {
      const known = consumerData.uncovered.find(({ classes }) => classes.includes(hazard.hazardClass));
      uncovered.push({
        code: hazard.code,
        why: known?.why ?? 'no-class',
        cite: known?.cite ?? '16 CFR 1500.3(b)(4)(i)(A)',
      });
    }
  }
  return { hazards: found, uncovered };
}
