import { compare, show } from '../../quantity/sum.ts';
import type { Because } from '../classification.ts';
import { type ClassResult, type Context, citePhysical, plainHazard } from '../context.ts';

const CLASS = 'Flam. Liq.';
const statements: Readonly<Record<string, string>> = { '1': 'H224', '2': 'H225', '3': 'H226', '4': 'H227' };

/** Flammable liquids by flash point and initial boiling point: B.6.2 with Table B.6.1; CLP and UN 2.6.2 with Table 2.6.1. */
export function flammableLiquids(context: Context): ClassResult[] {
  const { basis, mixture } = context;
  const { flashPoint: bounds, boilingPoint, combustibleCategory, cite } = basis.flammableLiquids;
  const because = (rule: string, working: string, total?: number, limit?: number): Because => ({
    rule,
    cite: citePhysical(basis, cite),
    working,
    ...(total === undefined ? {} : { total, limit, unit: 'C' }),
    terms: [],
  });
  if (mixture.form !== 'liquid')
    return [
      {
        class: CLASS,
        outcome: 'not-applicable',
        because: because(
          'physical form',
          `the product is ${mixture.form === 'aerosol' ? 'an aerosol' : `a ${mixture.form}`}, not a liquid`,
        ),
      },
    ];
  const flash = mixture.properties.flashPoint?.value;
  if (!flash)
    return [
      {
        class: CLASS,
        outcome: 'insufficient-data',
        because: because(
          'flash point not given',
          'the record gives no flash point; write `flash-point: none` where a test found none',
        ),
      },
    ];
  if (flash.kind === 'none')
    return [
      {
        class: CLASS,
        outcome: 'not-classified',
        because: because('no flash point', 'no flash point was found by test'),
      },
    ];

  const { celsius } = flash;
  const at = `flash point ${show(celsius.value)} C`;
  const given = (
    category: string,
    working: string,
    limit: number,
    extra: Partial<ClassResult> = {},
  ): ClassResult[] => [
    {
      class: CLASS,
      outcome: 'classified',
      hazard: plainHazard(CLASS, category, [statements[category]!]),
      because: because('flash point and boiling point', working, celsius.value, limit),
      ...extra,
    } as ClassResult,
  ];
  if (compare(celsius, bounds.extreme) < 0) {
    const boiling = mixture.properties.initialBoilingPoint?.value;
    if (!boiling)
      return given('2', `${at} < ${bounds.extreme} C; boiling point not given`, bounds.extreme, {
        readings: ['boiling-point-missing'],
        warnings: [
          {
            id: 'boiling-point-missing',
            text: 'flash point below 23 C and no initial boiling point: Flam. Liq. 1 is not excluded',
            cite: citePhysical(basis, cite),
          },
        ],
      });
    const low = compare(boiling, boilingPoint.extreme) <= 0;
    const working = `${at} < ${bounds.extreme} C; initial boiling point ${show(boiling.value)} C ${low ? '<=' : '>'} ${boilingPoint.extreme} C`;
    return given(low ? '1' : '2', working, bounds.extreme);
  }
  if (compare(celsius, bounds.flammable) <= 0)
    return given('3', `${bounds.extreme} C <= ${at} <= ${bounds.flammable} C`, bounds.flammable);
  if (bounds.combustible !== null && combustibleCategory && compare(celsius, bounds.combustible) <= 0)
    return given(
      combustibleCategory,
      `${bounds.flammable} C < ${at} <= ${bounds.combustible} C`,
      bounds.combustible,
    );
  const top = bounds.combustible ?? bounds.flammable;
  return [
    {
      class: CLASS,
      outcome: 'not-classified',
      because: because('flash point above the last category', `${at} > ${top} C`, celsius.value, top),
    },
  ];
}
