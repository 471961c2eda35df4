import { compare } from '../quantity/sum.ts';
import type { PackingGroup } from '../reference/transport/table-entry.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import { type Fact, fact } from './fact.ts';
import { type Case, type Finding, finding, type Hazard } from './finding.ts';
import type { TransportInput } from './input.ts';

const hazard = (group: PackingGroup, tested: boolean): Hazard => ({ class: '3', group, tested });
const combustible: Hazard = { class: 'Comb liq', group: 'III', tested: true };

/**
 * Class 3 and combustible liquids from flash point and initial boiling point (49 CFR 173.120, 173.121). Both are
 * tests of the product itself.
 */
export function flammable(input: TransportInput, { criteria }: TransportData): Finding {
  if (input.form !== 'liquid') return finding({});
  const { flashPoint } = input;
  if (flashPoint === null) return withoutFlashPoint(input, criteria);
  if (flashPoint.kind === 'none')
    return finding({ because: [fact('no-flash-point', criteria.flammableLiquid.cite)] });
  const { celsius, cup } = flashPoint;
  const { flammableLiquid, combustibleLiquid, waterMiscible } = criteria;
  const values = { flashPoint: celsius.value, cup: cup ?? 'closed' };
  if (cup === 'open')
    return finding({
      missing: [
        {
          ...fact('closed-cup-flash-point', criteria.flammableLiquid.cite, values),
          class: '3',
          decides: 'class',
          cases: classThreeCases,
        },
      ],
    });
  if (compare(celsius, flammableLiquid.flashPointAtMost) <= 0) {
    const water = waterPercent(input);
    if (compare(celsius, waterMiscible.flashPointAbove) > 0 && water > waterMiscible.waterAbovePercent)
      return finding({
        missing: [
          {
            ...fact('water-miscible', waterMiscible.cite, { ...values, water }),
            class: '3',
            decides: 'class',
            cases: [{ id: 'not-water-miscible', values: {}, hazard: hazard('III', true) }],
          },
        ],
      });
    return classThree(input, criteria, values);
  }
  if (compare(celsius, combustibleLiquid.flashPointBelow) < 0)
    return finding({
      hazards: [combustible],
      because: [
        fact('combustible-liquid', combustibleLiquid.cite, {
          ...values,
          above: combustibleLiquid.flashPointAbove,
          below: combustibleLiquid.flashPointBelow,
        }),
      ],
    });
  return finding({
    because: [
      fact('flash-point-above', combustibleLiquid.cite, {
        ...values,
        limit: combustibleLiquid.flashPointBelow,
      }),
    ],
  });
}

const waterPercent = ({ constituents }: TransportInput): number =>
  constituents.filter(({ water }) => water).reduce((sum, { low }) => sum + low.value, 0);

function classThree(
  { flashPoint, initialBoilingPoint }: TransportInput,
  criteria: TransportData['criteria'],
  values: Fact['values'],
): Finding {
  const groups = criteria.flammablePackingGroups;
  const celsius = flashPoint?.kind === 'temperature' ? flashPoint.celsius : null;
  const byFlash: PackingGroup = celsius && compare(celsius, groups.flashPointBelowForII) < 0 ? 'II' : 'III';
  const because = [
    fact('flammable-liquid', criteria.flammableLiquid.cite, {
      ...values,
      limit: criteria.flammableLiquid.flashPointAtMost,
    }),
  ];
  if (initialBoilingPoint === null)
    return finding({
      because,
      missing: [
        {
          ...fact('initial-boiling-point', groups.cite, { limit: groups.boilingPointAtMostForI }),
          class: '3',
          decides: 'group',
          cases: [
            {
              id: 'boils-above',
              values: { limit: groups.boilingPointAtMostForI },
              hazard: hazard(byFlash, true),
            },
            {
              id: 'boils-at-or-below',
              values: { limit: groups.boilingPointAtMostForI },
              hazard: hazard('I', true),
            },
          ],
        },
      ],
    });
  const group: PackingGroup =
    compare(initialBoilingPoint, groups.boilingPointAtMostForI) <= 0 ? 'I' : byFlash;
  return finding({
    hazards: [hazard(group, true)],
    because: [
      ...because,
      fact('flammable-packing-group', groups.cite, {
        ...values,
        boilingPoint: initialBoilingPoint.value,
        boilingLimit: groups.boilingPointAtMostForI,
        flashLimit: groups.flashPointBelowForII,
        group,
      }),
    ],
  });
}

const classThreeCases: readonly Case[] = (['I', 'II', 'III'] as const).map(group => ({
  id: 'class-3',
  values: { group },
  hazard: hazard(group, true),
}));

/** A class given as a test result without its temperature, or not known at all. */
function withoutFlashPoint(input: TransportInput, criteria: TransportData['criteria']): Finding {
  const { cite } = criteria.flammableLiquid;
  const given = input.hazards.find(({ hazardClass }) => hazardClass === 'Flam. Liq.');
  if (given) {
    const groups: Readonly<Record<string, PackingGroup>> = { '1': 'I', '2': 'II', '3': 'III' };
    const group = groups[given.category];
    const because = [fact('flammable-category', cite, { category: given.category })];
    return finding({ because, hazards: [group ? hazard(group, given.tested) : combustible] });
  }
  if (!input.open.some(({ hazardClass }) => hazardClass === 'Flam. Liq.'))
    return finding({ because: [fact('flammable-not-classified', cite)] });
  return finding({
    missing: [
      {
        ...fact('flash-point', cite),
        class: '3',
        decides: 'class',
        cases: [...classThreeCases, { id: 'combustible', values: {}, hazard: combustible }],
      },
    ],
  });
}
