import { readMeasure } from '../quantity/measure.ts';
import { aircraftRules } from './aircraft.ts';
import type { Outcome } from './answer.ts';
import { type Fact, fact } from './fact.ts';
import { packageKilograms } from './hazardous-substance.ts';
import type { Setting } from './setting.ts';

/**
 * What the table says of other modes and of bulk, held against the pack: quantity limits aboard aircraft (Columns 9A
 * and 9B; 49 CFR 173.27, 175.75), stowage aboard vessels (10A, 10B), and the section for bulk packagings (8C) where the
 * pack is above a non-bulk one (171.8).
 */
export function modesOf(outcome: Outcome, setting: Setting): readonly Fact[] {
  const { entry } = outcome;
  const { input, data } = setting;
  if (!entry) return [];
  const { pack, form } = input;
  const count = pack?.count ?? 1;
  const litres = pack?.millilitres ? (pack.millilitres * count) / 1000 : null;
  const kilograms = packageKilograms(input, pack);
  const net = form === 'solid' ? null : litres;
  const within = (limit: string): boolean | null => withinLimit(limit, net, kilograms);
  const { passenger, cargo } = entry.aircraft;
  const { nonBulk } = data.criteria;
  const one = pack?.millilitres ? pack.millilitres / 1000 : null;
  const isBulk = form !== 'solid' && one !== null && one > nonBulk.litresAtMost;
  return [
    fact('aircraft', '49 CFR 172.101, Columns 9A and 9B', { un: entry.id, passenger, cargo }),
    ...(pack
      ? [
          fact('aircraft-pack', '49 CFR 173.27', {
            litres: net,
            kilograms,
            passenger: verdict(within(passenger)),
            cargo: verdict(within(cargo)),
          }),
        ]
      : []),
    ...aircraftRules(outcome, setting),
    fact('vessel', '49 CFR 172.101, Columns 10A and 10B', { un: entry.id, ...entry.vessel }),
    fact('international', data.aircraft.international.cite, { un: entry.id }),
    ...(isBulk
      ? [
          fact('bulk-package', nonBulk.cite, {
            litres: one,
            limit: nonBulk.litresAtMost,
            sections: entry.bulkSections,
          }),
        ]
      : []),
  ];
}

const verdict = (within: boolean | null): string => (within === null ? 'open' : within ? 'within' : 'over');

/** Whether a package keeps a limit as the table prints it; null where the limit or the amount cannot be compared. */
function withinLimit(limit: string, litres: number | null, kilograms: number | null): boolean | null {
  if (/^forbidden$/i.test(limit)) return false;
  if (/^no limit$/i.test(limit)) return true;
  const volume = readMeasure(limit, 'volume');
  if (volume.ok) return litres === null ? null : litres * 1000 <= volume.value.base.value;
  const mass = readMeasure(limit, 'mass');
  return mass.ok && kilograms !== null ? kilograms * 1000 <= mass.value.base.value : null;
}
