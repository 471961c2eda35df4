import type { TransportData } from '../reference/transport/transport-data.ts';
import type { Outcome } from './answer.ts';
import { fact } from './fact.ts';
import type { Hazard } from './finding.ts';
import { genericOutcome, rowOf } from './generic-entry.ts';
import type { TransportInput } from './input.ts';
import { notRegulated, undecided } from './outcome.ts';
import type { Setting } from './setting.ts';

/** Combustible liquids, marine pollutants and hazardous substances, and what is none of them. */
export function withoutClass(hazards: readonly Hazard[], setting: Setting): Outcome {
  const { input, data, marine, substances } = setting;
  const { nonBulk, combustibleLiquid, marinePollutant } = data.criteria;
  const form = input.form === 'solid' ? 'solid' : 'liquid';
  const combustible = hazards.find(hazard => hazard.class === 'Comb liq');
  if (combustible) {
    const entry = rowOf('NA1993', 'III', data, 'Combustible liquid');
    if (!entry) throw new Error('NA1993, Combustible liquid, is not in the table');
    const described = genericOutcome(entry, [combustible], [], input, data);
    if (substances.names.length > 0 || isNonBulk(input, data) === false) return described;
    if (isNonBulk(input, data) === true && substances.unknown.length === 0)
      return notRegulated(
        ...marine.names
          .slice(0, 1)
          .map(() =>
            fact('marine-pollutant-non-bulk', marinePollutant.nonBulk.cite, { names: marine.names }),
          ),
        fact('combustible-non-bulk', combustibleLiquid.nonBulk.cite, {
          litres: nonBulk.litresAtMost,
          kilograms: nonBulk.kilogramsAtMost,
        }),
      );
    const open = fact('package-unknown', combustibleLiquid.nonBulk.cite, { names: substances.unknown });
    return { ...described, answer: 'undecided', because: [...described.because, open] };
  }
  if (substances.unknown.length > 0)
    return undecided(
      fact('package-mass-unknown', data.criteria.hazardousSubstance.cite, { names: substances.unknown }),
    );
  if (substances.names.length > 0) return classNine(form, substances.names, setting);
  if (marine.names.length > 0) {
    if (isNonBulk(input, data) === true)
      return notRegulated(
        fact('marine-pollutant-non-bulk', marinePollutant.nonBulk.cite, { names: marine.names }),
      );
    return classNine(form, marine.names, setting);
  }
  return notRegulated(fact('no-class', '49 CFR 172.101(c)(12)(iv)'));
}

/** Environmentally hazardous substance, with the constituents that make it one. */
export function classNine(
  form: 'liquid' | 'solid',
  technical: readonly string[],
  { input, data }: Setting,
): Outcome {
  const { un } = data.generic.entries.find(entry => entry.class === '9' && entry.form === form)!;
  const entry = rowOf(un, 'III', data);
  if (!entry) throw new Error(`${un} is not in the table`);
  return { ...genericOutcome(entry, [], [], input, data), technical: technical.slice(0, 2) };
}

/** Whether the pack is a non-bulk packaging (49 CFR 171.8); null where there is no pack. */
export function isNonBulk({ pack }: TransportInput, { criteria }: TransportData): boolean | null {
  if (!pack) return null;
  if (pack.millilitres !== null) return pack.millilitres / 1000 <= criteria.nonBulk.litresAtMost;
  return pack.grams === null ? null : pack.grams / 1000 <= criteria.nonBulk.kilogramsAtMost;
}
