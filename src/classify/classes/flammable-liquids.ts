import { compare, show } from '../../quantity/sum.ts';
import type { Because } from '../classification.ts';
import { type ClassResult, type Context, citePhysical, plainHazard } from '../context.ts';
import { withSource } from '../measured.ts';
import { reason } from '../reasons.ts';
import { wrongForm } from './physical.ts';

const CLASS = 'Flam. Liq.';
const statements: Readonly<Record<string, string>> = { '1': 'H224', '2': 'H225', '3': 'H226', '4': 'H227' };

/** Flammable liquids by flash point and initial boiling point: B.6.2 with Table B.6.1; CLP and UN 2.6.2 with Table 2.6.1. */
export function flammableLiquids(context: Context): ClassResult[] {
  return [judge(context)];
}

function judge(context: Context): ClassResult {
  const { basis, mixture } = context;
  const { flashPoint: bounds, boilingPoint, combustibleCategory, cite: paragraph } = basis.flammableLiquids;
  if (mixture.form !== 'liquid')
    return wrongForm(context, { class: CLASS, cite: paragraph, forms: ['liquid'] });

  const cite = citePhysical(basis, paragraph);
  const measured = mixture.properties.flashPoint;
  const flash = measured?.value;
  if (!measured || !flash)
    return {
      class: CLASS,
      outcome: 'insufficient-data',
      because: {
        rule: 'flash point not given',
        cite,
        working: 'the record gives no flash point; write `flash-point: none` where a test found none',
        terms: [],
      },
    };
  if (flash.kind === 'none') {
    const working = withSource('no flash point was found by test', measured);
    return {
      class: CLASS,
      outcome: 'not-classified',
      because: { rule: 'flash point', cite, working, terms: [] },
    };
  }

  const { celsius } = flash;
  const because = (rule: string, limit: number, working: (at: string) => string): Because =>
    reason(() => ({
      rule,
      cite,
      working: working(withSource(`flash point ${show(celsius.value)} C`, measured)),
      total: celsius.value,
      limit,
      unit: 'C',
      terms: [],
    }));
  const given = (category: string, why: Because): ClassResult => ({
    class: CLASS,
    outcome: 'classified',
    hazard: plainHazard(CLASS, category, [statements[category]!]),
    because: why,
  });
  const { extreme, flammable, combustible } = bounds;

  if (compare(celsius, extreme) < 0) {
    const rule = 'flash point and initial boiling point';
    const boiling = mixture.properties.initialBoilingPoint;
    if (!boiling) {
      const text = `flash point below ${show(extreme)} C and no initial boiling point: Flam. Liq. 1 is not excluded`;
      return {
        ...given(
          '2',
          because(rule, extreme, at => `${at} < ${extreme} C; initial boiling point not given`),
        ),
        readings: ['boiling-point-missing'],
        warnings: [{ id: 'boiling-point-missing', text, cite }],
      };
    }
    const low = compare(boiling.value, boilingPoint.extreme) <= 0;
    const boils = withSource(`initial boiling point ${show(boiling.value.value)} C`, boiling);
    return given(
      low ? '1' : '2',
      because(
        rule,
        extreme,
        at => `${at} < ${extreme} C; ${boils} ${low ? '<=' : '>'} ${boilingPoint.extreme} C`,
      ),
    );
  }
  if (compare(celsius, flammable) <= 0)
    return given(
      '3',
      because('flash point', flammable, at => `${extreme} C <= ${at} <= ${flammable} C`),
    );
  if (combustible !== null && combustibleCategory && compare(celsius, combustible) <= 0)
    return given(
      combustibleCategory,
      because('flash point', combustible, at => `${flammable} C < ${at} <= ${combustible} C`),
    );
  const top = combustible ?? flammable;
  return {
    class: CLASS,
    outcome: 'not-classified',
    because: because('flash point above the last category', top, at => `${at} > ${top} C`),
  };
}
