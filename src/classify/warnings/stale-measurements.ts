import { isDay } from '../../quantity/day.ts';
import type { Measured, MeasuredPart, ProductRecord } from '../../record/product-record.ts';
import { bySource } from '../facts/provision.ts';
import type { MovedConstituent } from '../facts/stale-measurement.ts';
import type { Warning } from '../facts/warning.ts';
import type { Ingredient } from '../ingredient.ts';
import { bearsFrom, bearsOn, type JudgedProperty, judgedProperties, movedFrom } from './bearing.ts';

const judgedKeys = Object.keys(judgedProperties) as JudgedProperty[];

const bare = (revision: string): string => revision.replace(/^\s*rev(ision|\.)?\s*/i, '').trim();

/** A constituent at both ends of its range. */
export type Ranged = Pick<Ingredient, 'index' | 'name' | 'cas' | 'water' | 'data'> &
  Omit<MeasuredPart, 'name'>;

/** Whether a measurement says that it is of another formula than that of the record. */
function isOfOther(measuredOn: string, revision: string | null, revised: string | null): boolean {
  if (isDay(measuredOn)) return revised !== null && measuredOn < revised;
  return revision !== null && bare(measuredOn) !== bare(revision);
}

/** Constituents that bear on a property and whose percent is no longer that of the formula that was measured. */
function movedSince(
  property: JudgedProperty,
  measured: readonly MeasuredPart[],
  formula: readonly Ranged[],
): MovedConstituent[] {
  const from = bearsFrom(property);
  const isOf = ({ name, cas }: Ranged, part: MeasuredPart) =>
    part.name === cas || part.name.toLowerCase() === name.toLowerCase();
  const gone = measured
    .filter(part => part.high.value >= from && !formula.some(each => isOf(each, part)))
    .map(
      ({ name, low, high }): MovedConstituent => ({
        constituent: null,
        name,
        before: { low, high },
        now: null,
      }),
    );
  const moved = formula.flatMap((each): MovedConstituent[] => {
    const { index, name, low, high } = each;
    const part = measured.find(one => isOf(each, one));
    const now = { low, high };
    if (!part) {
      const counts = high.value >= from && bearsOn(property, each);
      return counts ? [{ constituent: index, name, before: null, now }] : [];
    }
    const isSame =
      high.value <= part.high.value * (1 + movedFrom) && low.value >= part.low.value * (1 - movedFrom);
    return isSame ? [] : [{ constituent: index, name, before: { low: part.low, high: part.high }, now }];
  });
  return [...moved, ...gone];
}

/**
 * Measurements of an earlier formula: a flash point, a pH or a viscosity belongs to the formula that it was measured on
 * (29 CFR 1910.1200(g)(5): new information on hazards; common practice). One warning for all.
 * @param formulaNow constituents at both ends of their ranges, with their data; asked only where a measurement names parts.
 */
export function staleMeasurements(
  {
    properties,
    revision = null,
    revised = null,
  }: Pick<ProductRecord, 'properties'> & Partial<Pick<ProductRecord, 'revision' | 'revised'>>,
  formulaNow: () => readonly Ranged[] = () => [],
): Warning[] {
  const stale = judgedKeys.flatMap(key => {
    const found: Measured<unknown> | undefined = properties[key];
    if (!found) return [];
    const { measuredOn = null, measuredFormula = null } = found;
    const moved = measuredFormula ? movedSince(key, measuredFormula, formulaNow()) : [];
    const other = measuredOn !== null && isOfOther(measuredOn, revision, revised);
    return other || moved.length > 0 ? [{ property: judgedProperties[key], measuredOn, moved }] : [];
  });
  if (stale.length === 0) return [];
  return [
    {
      id: 'stale-measurement',
      properties: stale,
      revision,
      revised,
      cites: [bySource('29 CFR 1910.1200(g)(5)')],
    },
  ];
}
