import type { Classification } from '../../classify/classification.ts';
import { compareSum } from '../../quantity/sum.ts';
import { consumerData } from '../../reference/consumer/hazard-data.ts';
import type { ConsumerKind } from '../../reference/consumer/rules.ts';
import { bringers } from './by-class.ts';
import type { ConsumerHazard, ConsumerProduct, OpenHazard, UncoveredHazard } from './facts.ts';

/** Degrees Fahrenheit of 0 C, and of one degree Celsius. */
const [ZERO, DEGREE] = [32, 1.8];

/** What the flash point makes of a liquid. */
export interface FlashFindings {
  readonly hazards: readonly ConsumerHazard[];
  readonly uncovered: readonly UncoveredHazard[];
  readonly open: readonly OpenHazard[];
}

/**
 * Extremely flammable, flammable and combustible liquids (16 CFR 1500.3(c)(6)(i) to (iii)) by their flash point; where
 * only a class is known, the worst that its range allows.
 */
export function byFlashPoint(
  { hazards, otherClasses, constituents }: Pick<Classification, 'hazards' | 'otherClasses' | 'constituents'>,
  { flashPoint, form }: Pick<ConsumerProduct, 'flashPoint' | 'form'>,
): FlashFindings {
  const { flash } = consumerData;
  const own = hazards.find(({ hazardClass }) => hazardClass === 'Flam. Liq.');
  const undecided = otherClasses.find(
    each => each.class === 'Flam. Liq.' && each.outcome === 'insufficient-data',
  );
  const burning = constituents.flatMap(({ data }, at) =>
    data.hazards.some(({ hazardClass }) => hazardClass === 'Flam. Liq.') ? [at] : [],
  );
  const open: OpenHazard[] = [];
  if (flashPoint === null || flashPoint === 'none') {
    if (flashPoint === null && form === 'liquid' && undecided)
      open.push({ what: 'flash-point', of: [], constituents: burning, cite: flash.combustible.cite });
    const kind = own && flash.withoutFlashPoint[own.category];
    if (!own || !kind) return { hazards: [], uncovered: [], open };
    return {
      hazards: [
        {
          kind,
          statement: kind,
          codes: [],
          cite: flash.extremelyFlammable.cite,
          from: { kind: 'class', code: own.code, of: null },
          settledBy: ['flash-point'],
          constituents: [...bringers(own), ...burning],
        },
      ],
      uncovered: [],
      open,
    };
  }
  const { celsius, cup } = flashPoint;
  if (cup === 'open') open.push({ what: 'open-cup', of: [], constituents: [], cite: flash.combustible.cite });
  const against = (fahrenheit: number) =>
    compareSum([{ amount: celsius, weight: DEGREE }], fahrenheit - ZERO);
  const fahrenheit = celsius.value * DEGREE + ZERO;
  const given = (kind: ConsumerKind, cite: string): FlashFindings => ({
    hazards: [
      {
        kind,
        statement: kind,
        codes: [],
        cite,
        from: { kind: 'flash-point', fahrenheit },
        settledBy: cup === 'closed' ? [] : ['flash-point'],
        constituents: burning,
      },
    ],
    uncovered: [],
    open,
  });
  if (against(flash.extremelyFlammable.atMost) <= 0)
    return given('extremely-flammable', flash.extremelyFlammable.cite);
  if (against(flash.flammable.below) < 0) return given('flammable', flash.flammable.cite);
  if (against(flash.combustible.atMost) <= 0) return given('combustible', flash.combustible.cite);
  const uncovered = own ? [{ code: own.code, why: 'above-combustible', cite: flash.combustible.cite }] : [];
  return { hazards: [], uncovered, open };
}
