import crossed from '../../../hazard-data/us-cpsc/child-resistant.json' with { type: 'json' };
import data from '../../../hazard-data/us-cpsc/consumer-hazards.json' with { type: 'json' };
import special from '../../../hazard-data/us-cpsc/special-labeling.json' with { type: 'json' };
import type { ClassRow, ConsumerData, ConsumerKind, DoseRow, SpecialRule } from './rules.ts';

const distillates: Readonly<Record<string, number>> = crossed.groups.members['petroleum distillates'];
const streams: readonly string[] = crossed.groups.petroleumStreams.prefixes;

/** mm2/s from which a liquid is no longer thin. */
export const thickFrom: number = crossed.viscosity.squareMillimetresPerSecond;

export const specialRules: readonly SpecialRule[] = special.rules as unknown as readonly SpecialRule[];

/** The part of its mass by which a substance counts for a rule; null where it does not. */
export const partFor = ({ members, petroleum }: SpecialRule, cas: string): number | null =>
  members[cas] ??
  (petroleum && (cas in distillates || streams.some(prefix => cas.startsWith(prefix))) ? 1 : null);

/** Hazards and statements of the law for consumers. */
export const consumerData: ConsumerData = {
  doses: data.dose.routes as readonly DoseRow[],
  byClass: data.dose.classified,
  flash: { ...data.flash, withoutFlashPoint: data.flash.withoutFlashPoint as Record<string, ConsumerKind> },
  signal: data.signal,
  classes: data.classes as readonly ClassRow[],
  uncovered: data.uncovered,
  statements: data.statements,
  merge: data.merge,
  within: data.within,
  also: data.also,
  children: data.children.text,
  elsewhere: data.elsewhere.text,
  nameless: data.names.free.kinds,
  replaced: data.replaced.codes,
};
