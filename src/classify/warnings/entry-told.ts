import { milderThan } from '../../notation/severity.ts';
import { Exact } from '../../quantity/exact.ts';
import type { GivenData } from '../../record/given-data.ts';
import { formatAct } from '../../reference/harmonised/act.ts';
import type { FoundEntry } from '../../reference/harmonised/choose-entry.ts';
import type { HarmonisedEntry } from '../../reference/harmonised/entry.ts';
import { answerableNotes, decidingNotes } from '../../reference/harmonised/entry-notes.ts';
import { bySource } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import type { LaterEntry } from '../facts/warning-entry.ts';
import type { IngredientData } from '../ingredient.ts';
import { metalOf } from '../ingredient-data.ts';

/** The row of a substance that applies from a later date. */
export const laterOf = (later: HarmonisedEntry): LaterEntry => ({
  index: later.index,
  act: formatAct(later.act),
  from: later.appliesFrom,
});

const named = ({ index, name }: HarmonisedEntry) => ({ index, name });

/**
 * What a reviewer must know of the entry of a constituent: which of several was taken, what will replace it, and the
 * notes on which its classification depends (CLP Annex VI 1.1.3).
 * @param data those that are used.
 */
export function entryTold(
  { entry, others, by, later }: FoundEntry,
  constituent: number,
  data: IngredientData,
  given: GivenData,
): Warning[] {
  const warnings: Warning[] = answerUnused(entry, others, constituent, given);
  const used = data.source.kind === 'harmonised';
  if (entry && used && by && others.length > 0)
    warnings.push({
      id: 'entry-chosen',
      constituent,
      ...named(entry),
      by,
      others: others.map(named),
      cites: [bySource('CLP Annex VI Table 3')],
    });
  if (later) {
    const hazards = milderThan(data.hazards, later.hazards);
    if (entry ? used : hazards.length > 0)
      warnings.push({
        id: 'entry-later',
        constituent,
        ...laterOf(later),
        replaces: entry !== null,
        hazards,
        cites: [bySource(formatAct(later.act))],
      });
  }
  if (entry && used) warnings.push(...notesTold(entry, constituent, given));
  return warnings;
}

/** Answers of the record that fit no entry of the substance. */
export function answerUnused(
  entry: HarmonisedEntry | null,
  others: readonly HarmonisedEntry[],
  constituent: number,
  { harmonised }: GivenData,
): Warning[] {
  if (!harmonised) return [];
  const known = (entry ? [entry, ...others] : []).map(({ index }) => index);
  const named = harmonised.entry !== null && !known.includes(harmonised.entry) ? harmonised.entry : null;
  const answerable = answerableNotes.filter(note => entry?.notes.includes(note));
  const byMetal = decidingNotes(entry?.notes ?? []).some(({ kind }) => kind === 'by-metal');
  const notes = [
    ...harmonised.notes.filter(note => !answerable.includes(note)),
    ...(harmonised.metal && !byMetal ? ['metal'] : []),
  ];
  if (named === null && notes.length === 0) return [];
  return [{ id: 'entry-answer-unused', constituent, entry: named, notes, known, cites: [] }];
}

function notesTold(entry: HarmonisedEntry, constituent: number, given: GivenData): Warning[] {
  const notes = decidingNotes(entry.notes).filter(
    ({ kind, hazardClasses }) =>
      kind === 'by-metal' || entry.hazards.some(({ hazardClass }) => hazardClasses.includes(hazardClass)),
  );
  if (notes.length === 0) return [];
  const part = metalOf(entry, given.harmonised);
  const { notes: shown = [], source = null } = given.harmonised ?? {};
  return [
    {
      id: 'entry-notes',
      constituent,
      index: entry.index,
      notes: notes.map(({ id, kind, hazardClasses, shown: asks }) => ({
        id,
        kind,
        codes: entry.hazards.filter(each => hazardClasses.includes(each.hazardClass)).map(each => each.code),
        shown: asks,
        answered: shown.includes(id),
        metal: kind === 'by-metal' && part ? Exact.fraction(part.exact.mul(100)) : null,
      })),
      source,
      cites: notes.map(({ cite }) => bySource(cite)),
    },
  ];
}
