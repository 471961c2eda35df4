import type { Duty } from '../duties/duty.ts';
import { dutyText } from '../words/en/duties.ts';

/** A duty as data. */
export const dutyJson = (duty: Duty) => ({
  id: duty.id,
  state: duty.state,
  cite: duty.cite,
  ...('pack' in duty && { pack: duty.pack }),
  ...(duty.id === 'listing' && { item: duty.item, value: duty.value }),
  ...(duty.id === 'child-resistant' && {
    rule: duty.finding.id,
    terms: duty.finding.terms,
    limits: duty.finding.limits,
    conditions: duty.finding.conditions,
    missing: duty.finding.missing,
    packaging: duty.packaging,
  }),
  ...(duty.id === 'child-resistant-unknown' && { names: duty.names, packaging: duty.packaging }),
  ...(duty.id === 'voc' && { ...duty.finding, category: duty.finding.category?.id ?? null }),
  ...(duty.id === 'state-warning' && {
    name: duty.name,
    percent: duty.percent,
    listed: duty.found.row.name,
    by: duty.found.by,
    toxicity: duty.found.row.toxicity,
    level: duty.found.row.level,
  }),
  text: dutyText(duty),
});
