import type { Classification } from '../../classify/classification.ts';
import { consumerData } from '../../reference/consumer/hazard-data.ts';
import type { DoseRow } from '../../reference/consumer/rules.ts';
import { bringers } from './by-class.ts';
import type { ConsumerHazard, ConsumerProduct } from './facts.ts';

/**
 * Toxic and highly toxic by dose (16 CFR 1500.3(b)(6), (c)(1) and (c)(2)(i)), proposed from the estimates of the
 * mixture. The law reaches further than the classes do: a single oral dose counts up to 5 g/kg.
 */
export function byDose(
  { ateMix, hazards }: Pick<Classification, 'ateMix' | 'hazards'>,
  { inhalable }: Pick<ConsumerProduct, 'inhalable'>,
): readonly ConsumerHazard[] {
  const classified = hazards.filter(({ hazardClass }) => hazardClass === 'Acute Tox.');
  const found: ConsumerHazard[] = [];
  for (const row of consumerData.doses) {
    const estimate = ateMix[row.estimate];
    if (estimate === null) continue;
    const own = classified.filter(
      ({ route, form }) => route === row.route && (!form || form === row.estimate),
    );
    // A concentration counts that is likely to be met in use.
    if (row.route === 'inhalation' && inhalable === false && own.length === 0) continue;
    const value = estimate * row.factor;
    if (value > row.toxic) continue;
    const fatal = value <= row.highlyToxic;
    found.push({
      ...hazardOf(row, fatal),
      from: {
        kind: 'dose',
        route: row.route,
        value,
        limit: fatal ? row.highlyToxic : row.toxic,
        unit: row.unit,
      },
      constituents: own.flatMap(bringers),
    });
  }
  for (const hazard of classified) {
    const judged = found.some(
      ({ from }) => from.kind === 'dose' && from.route === hazard.route && hazard.form !== 'vapour',
    );
    const row = consumerData.doses.find(({ route }) => route === hazard.route);
    if (judged || !row) continue;
    const { highlyToxic, doubt } = consumerData.byClass;
    const fatal = [...highlyToxic, ...doubt].includes(hazard.category);
    found.push({
      ...hazardOf(row, fatal),
      from: { kind: 'class', code: hazard.code, of: hazard.route },
      constituents: bringers(hazard),
    });
  }
  return found;
}

const hazardOf = ({ fatal: deadly, harmful, cites, settledBy }: DoseRow, fatal: boolean) => ({
  kind: fatal ? ('highly-toxic' as const) : ('toxic' as const),
  statement: fatal ? deadly : harmful,
  codes: [],
  cite: fatal ? cites.highlyToxic : cites.toxic,
  settledBy,
});
