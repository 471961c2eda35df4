import {
  type AllocatedGroup,
  type AllocatedStatement,
  type AllocationRow,
  allocatedGroups,
  type Disagreement,
} from '../reference/label-data/allocation.ts';
import type { Decision, Decisions, PlainRow } from './_allocation-readings.ts';

/** Most certain first. */
const confidences = ['text-read', 'mapped', 'inferred', 'from-memory'] as const;

/** Merges what two readings say of one hazard; every difference needs a decision. */
export function mergeRow(first: PlainRow, second: PlainRow, decisions: Decisions): AllocationRow {
  const { hazard } = first;
  const disagreements: Disagreement[] = [];
  const settle = <T>(field: Decision['field'], code: string | null, one: T, two: T): T => {
    if (JSON.stringify(one) === JSON.stringify(two)) return one;
    const decision = decisions.decisions.find(
      each =>
        each.field === field &&
        (each.hazards === undefined || each.hazards.includes(hazard)) &&
        (each.code ?? null) === code,
    );
    if (!decision)
      throw new Error(`no decision on ${field} ${code ?? ''} of ${hazard}: ${JSON.stringify([one, two])}`);
    const { take, why } = decision;
    disagreements.push({
      field: code ? `${field} of ${code}` : field,
      first: one ?? null,
      second: two ?? null,
      taken: take,
      why,
    });
    return take === 'first' ? one : two;
  };
  const same = <K extends 'statements' | 'signalWord' | 'pictograms'>(key: K): PlainRow[K] => {
    if (JSON.stringify(first[key]) !== JSON.stringify(second[key]))
      throw new Error(`the readings differ on ${key} of ${hazard}`);
    return first[key];
  };
  const statementsOf = (group: AllocatedGroup): AllocatedStatement[] => {
    const [one, two] = [first.codes[group], second.codes[group]];
    const codes = setsEqual(one, two) ? two : settle(group, null, one, two);
    return codes.map(code => {
      const when = settle('conditions', code, first.when[code], second.when[code]);
      const fixed = decisions.fields.find(each => each.code === code && each.hazards.includes(hazard));
      const fields = fixed?.fields ?? settle('fields', code, first.fields[code], second.fields[code]);
      return { code, ...(when && { when }), ...(fields && { fields }) };
    });
  };
  const precautions = Object.fromEntries(
    allocatedGroups.map(group => [group, statementsOf(group)]),
  ) as unknown as AllocationRow['precautions'];
  // Where the codes differ only the reading that was taken can vouch for them.
  const overCodes = disagreements.find(({ field }) => field in precautions);
  const believed = [
    ...(overCodes?.taken === 'second' ? [] : [first.row.confidence]),
    ...(overCodes?.taken === 'first' ? [] : [second.row.confidence]),
  ];
  const notes = [first.row.notes, second.row.notes].filter((note): note is string => !!note?.trim());
  return {
    hazard,
    statements: same('statements'),
    signalWord: same('signalWord'),
    pictograms: same('pictograms'),
    precautions,
    sources: [
      ...first.row.sources.map(source => ({ ...source, reading: 1 as const })),
      ...second.row.sources.map(source => ({ ...source, reading: 2 as const })),
    ],
    confidence: confidences.find(each => believed.includes(each)) ?? 'from-memory',
    ...(disagreements.length > 0 && { disagreements }),
    ...(notes.length > 0 && { notes: notes.map(note => note.trim()) }),
  };
}

const setsEqual = (one: readonly string[], two: readonly string[]): boolean =>
  one.length === two.length && one.every(code => two.includes(code));
