import type { ProductRecord } from '../../record/product-record.ts';
import { bySource } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';

const names = {
  pH: 'pH',
  density: 'density',
  flashPoint: 'flash-point',
  initialBoilingPoint: 'initial-boiling-point',
  kinematicViscosity40C: 'kinematic-viscosity-40C',
} as const;

const isDay = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text);
const bare = (revision: string): string => revision.replace(/^\s*rev(ision|\.)?\s*/i, '').trim();

/** Whether a measurement says that it is of another formula than that of the record. */
function isStale(measuredOn: string, revision: string | null, revised: string | null): boolean {
  if (isDay(measuredOn)) return revised !== null && measuredOn < revised;
  return revision !== null && bare(measuredOn) !== bare(revision);
}

/**
 * Measurements of an earlier formula: a flash point, a pH or a viscosity belongs to the formula that it was measured on
 * (29 CFR 1910.1200(g)(5): new information on hazards; common practice). One warning for all.
 */
export function staleMeasurements({
  properties,
  revision = null,
  revised = null,
}: Pick<ProductRecord, 'properties'> & Partial<Pick<ProductRecord, 'revision' | 'revised'>>): Warning[] {
  const stale = (Object.keys(names) as (keyof typeof names)[]).flatMap(key => {
    const measuredOn = properties[key]?.measuredOn;
    return measuredOn && isStale(measuredOn, revision, revised) ? [{ property: names[key], measuredOn }] : [];
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
