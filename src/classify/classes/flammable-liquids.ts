import doubts from '../../../hazard-data/measured-doubts.json' with { type: 'json' };
import type { Hazard } from '../../notation/hazard.ts';
import { Exact } from '../../quantity/exact.ts';
import type { FlashPoint } from '../../record/product-record.ts';
import { always, type ClassRule, noCutOff } from '../class-rule.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofPhysical } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import { flashMeasurement, measurementOf } from '../measured.ts';
import { outsideBasis } from '../outside-basis.ts';
import { wrongForm } from './physical.ts';

const CLASS = 'Flam. Liq.';

/** Hazards of an ingredient that the basis knows. */
const own = ({ basis }: Context, ingredient: Ingredient): readonly Hazard[] =>
  hazardsOf(ingredient, CLASS).filter(({ code }) => outsideBasis(basis, code) === null);

/** Flammable liquids by flash point and initial boiling point: B.6.2 with Table B.6.1; CLP and UN 2.6.2 with Table 2.6.1. A product that is one substance takes its class. */
export const flammableLiquids: ClassRule = {
  listed: CLASS,
  isOf: always,
  judge: context => [judge(context)],
  limitedBy: [],
  cutOff: noCutOff,
  criteria: basis => ofPhysical(basis, basis.flammableLiquids.cite),
};

function judge(context: Context): ClassResult {
  const { basis, mixture, scale } = context;
  const { flashPoint: bounds, boilingPoint, combustibleCategory, cite: paragraph } = basis.flammableLiquids;
  if (mixture.form !== 'liquid') return wrongForm(context, CLASS, { cite: paragraph, forms: ['liquid'] });

  const cites = [ofPhysical(basis, paragraph)];
  const measured = mixture.properties.flashPoint;
  const flash = measured?.value;
  if (!measured || !flash) {
    const flammable = mixture.ingredients.filter(
      ingredient => ingredient.percent.value > 0 && own(context, ingredient).length > 0,
    );
    const only = flammable.find(({ percent }) => scale.compare(percent, 100) >= 0);
    if (only) {
      const [hazard] = own(context, only);
      const why: Because = { kind: 'substance', constituent: only.index, code: hazard!.code, cites };
      const given = hazardIn(CLASS, hazard!.category);
      return { class: CLASS, outcome: 'classified', hazard: given, because: why };
    }
    const because: Because = {
      kind: 'flash-point',
      found: 'missing',
      ...(flammable.length > 0 && { flammable: flammable.map(({ index }) => index) }),
      cites,
    };
    return { class: CLASS, outcome: 'insufficient-data', because };
  }
  if (flash.kind === 'none') {
    const { method, source } = measured;
    const because: Because = { kind: 'flash-point', found: 'none', method, source, cites };
    return { class: CLASS, outcome: 'not-classified', because };
  }

  const cup = openCup(context, flash);
  const { judged: celsius } = cup;
  const found = { found: 'temperature', measured: flashMeasurement(measured, flash), cites } as const;
  const because = (
    between: Pick<Because & { kind: 'flash-point' }, 'above' | 'upTo' | 'boiling'>,
  ): Because => ({
    kind: 'flash-point',
    ...found,
    ...(cup.moved && { lessOpenCup: doubts.openCup.more }),
    ...between,
  });
  const beside = {
    readings: flash.cup === 'open' ? (['open-cup'] as const) : [],
    warnings: cup.warnings,
  };
  const given = (category: string, why: Because): ClassResult => ({
    ...beside,
    class: CLASS,
    outcome: 'classified',
    hazard: hazardIn(CLASS, category),
    because: why,
  });
  const { extreme, flammable, combustible } = bounds;

  if (scale.compare(celsius, extreme) < 0) {
    const boiling = mixture.properties.initialBoilingPoint;
    const low = boiling !== undefined && scale.compare(boiling.value, boilingPoint.extreme) <= 0;
    const why = because({
      upTo: { limit: extreme, operator: '<' },
      boiling: {
        measured: boiling ? measurementOf(boiling) : null,
        limit: boilingPoint.extreme,
        reached: low,
      },
    });
    if (boiling) return given(low ? '1' : '2', why);
    return {
      ...given('2', why),
      readings: [...beside.readings, 'boiling-point-missing'],
      warnings: [...beside.warnings, { id: 'boiling-point-missing', below: extreme, cites }],
    };
  }
  if (scale.compare(celsius, flammable) <= 0)
    return given(
      '3',
      because({
        above: { limit: extreme, operator: '>=' },
        upTo: { limit: flammable, operator: '<=' },
      }),
    );
  if (combustible !== null && combustibleCategory && scale.compare(celsius, combustible) <= 0)
    return given(
      combustibleCategory,
      because({
        above: { limit: flammable, operator: '>' },
        upTo: { limit: combustible, operator: '<=' },
      }),
    );
  const above = { limit: combustible ?? flammable, operator: '>' } as const;
  return { class: CLASS, outcome: 'not-classified', because: because({ above }), ...beside };
}

/**
 * The temperature to judge by. Categories are of closed cups (B.6.3; CLP and UN 2.6.4.4), and an open cup gives higher
 * values: near a limit the more severe side is taken (reading `open-cup`).
 */
function openCup(
  { basis, scale, take }: Context,
  { celsius, cup }: Extract<FlashPoint, { kind: 'temperature' }>,
): { readonly judged: Exact; readonly moved: boolean; readonly warnings: readonly Warning[] } {
  if (cup !== 'open') return { judged: celsius, moved: false, warnings: [] };
  const { extreme, flammable, combustible, cite } = {
    ...basis.flammableLiquids.flashPoint,
    cite: basis.flammableLiquids.cite,
  };
  const { more } = doubts.openCup;
  const lower = Exact.fraction(celsius.exact.sub(more));
  const crosses =
    (scale.compare(celsius, extreme) >= 0 && scale.compare(lower, extreme) < 0) ||
    [flammable, combustible].some(
      limit => limit !== null && scale.compare(celsius, limit) > 0 && scale.compare(lower, limit) <= 0,
    );
  const moved = crosses && take('open-cup') === 'severe-side';
  return {
    judged: moved ? lower : celsius,
    moved,
    warnings: [{ id: 'open-cup', celsius, more, moved, cites: [ofPhysical(basis, cite)] }],
  };
}
