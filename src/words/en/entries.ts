import type { Warning } from '../../classify/facts/warning.ts';
import type { LaterEntry, LostData } from '../../classify/facts/warning-entry.ts';
import type { Hazard } from '../../notation/hazard.ts';
import { printAte } from '../../notation/parse-ate.ts';
import { printSupplementalLimit } from '../../notation/parse-limit.ts';
import { printHazard } from '../../notation/print-hazard.ts';
import { printLimit } from '../../notation/print-limit.ts';
import type { Telling } from '../words.ts';

type Of<Id extends Warning['id']> = Extract<Warning, { id: Id }>;

const codes = (hazards: readonly Hazard[]): string => hazards.map(printHazard).join(', ');

const entryOf = ({ index, act }: { readonly index: string; readonly act: string }): string =>
  `harmonised entry ${index} (${act})`;

/** A row that is not in force yet. */
export const notYet = (later: LaterEntry): string =>
  `${entryOf(later)} is not in force yet: it applies from ${later.from}`;

function lostText({
  hazards,
  details,
  limits,
  ate,
  mFactors,
  supplemental,
  supplementalLimits,
}: LostData): string {
  const factors = (['acute', 'chronic'] as const).flatMap(kind =>
    mFactors[kind] === undefined ? [] : [`${kind} ${mFactors[kind]}`],
  );
  return [
    hazards.length > 0 ? [`hazards (${codes(hazards)})`] : [],
    details.length > 0 ? [`letters, organs or routes (${codes(details)})`] : [],
    limits.length > 0
      ? [`specific limits (${limits.map(limit => `${printLimit(limit)} %`).join(', ')})`]
      : [],
    ate.length > 0
      ? [`estimates (${ate.map(({ key, value }) => `${key} ${printAte(key, value)}`).join(', ')})`]
      : [],
    factors.length > 0 ? [`M-factors (${factors.join(', ')})`] : [],
    supplemental.length > 0 ? [supplemental.join(', ')] : [],
    supplementalLimits.length > 0
      ? [supplementalLimits.map(limit => `${printSupplementalLimit(limit)} %`).join(', ')]
      : [],
  ]
    .flat()
    .join('; ');
}

/** What the hazards of a record take from a harmonised entry, and what it would change. */
export function recordReplacesEntry(
  { constituent, source, index, act, by, lost, worse }: Of<'record-replaces-entry'>,
  tell: Telling,
): string {
  const from = source === null ? 'which name no source' : `from ${source}`;
  const change = worse.map(
    ({ class: name, route, now, within }) =>
      `${within}${route ? ` (${route})` : ''} instead of ${now.replaceAll('-', ' ')}${now.includes('-') ? ` for ${name}` : ''}`,
  );
  const then =
    change.length > 0
      ? `with the entry the mixture would be ${change.join(', ')}`
      : 'with the entry no class of the mixture would be more severe';
  const replaced =
    by === 'hazards'
      ? `the hazards of the record, ${from}, replace ${entryOf({ index, act })}, and with it are lost`
      : `milder values of the record, ${from}, replace those of ${entryOf({ index, act })}`;
  return `${tell.names(constituent)}: ${replaced}: ${lostText(lost)}; ${then}`;
}

/** Which of several entries was taken, and why. */
export function entryChosen(
  { constituent, index, name, by, others }: Of<'entry-chosen'>,
  tell: Telling,
): string {
  const why = {
    'form-and-concentration': 'by form and concentration',
    severity: 'because it is the most severe of those that may be meant',
    record: 'because the record names it',
  }[by];
  const rest = others.map(other => `${other.index} (${other.name})`).join(', ');
  const ask = by === 'severity' ? '; say which is meant with `harmonised: {entry: …, source: …}`' : '';
  return `${tell.names(constituent)}: of several harmonised entries ${index} (${name}) is taken ${why}; not taken: ${rest}${ask}`;
}

/** A row that will apply from a later date. */
export function entryLater(found: Of<'entry-later'>, tell: Telling): string {
  const { constituent, index, act, from, replaces, hazards } = found;
  const name = tell.names(constituent);
  const then = hazards.length > 0 ? `; it adds ${codes(hazards)} to what is used here` : '';
  return replaces
    ? `${name}: from ${from} another row of harmonised entry ${index} applies (${act})${then}`
    : `${name}: ${notYet({ index, act, from })}${then}`;
}

/** Notes of an entry on which its classification depends. */
export function entryNotes({ constituent, index, notes, source }: Of<'entry-notes'>, tell: Telling): string {
  const texts = notes.map(({ id, kind, codes: classes, shown, answered, metal }) => {
    if (kind === 'by-metal')
      return metal
        ? `Note ${id}: its limits are percents of the metal, which is ${tell.style.show(metal.value)} % of the substance; limits of one ingredient are met so, sums with the whole substance`
        : `Note ${id}: its limits are percents of the metal, and they are met here with the percent of the whole substance; give \`harmonised: {metal: … %, source: …}\``;
    return answered
      ? `Note ${id}: ${classes.join(', ')} left out, because it is shown that ${shown} (${source})`
      : `Note ${id}: ${classes.join(', ')} applies unless it is shown that ${shown}`;
  });
  const open = notes.filter(({ kind, answered }) => kind === 'unless-shown' && !answered);
  const ask =
    open.length > 0
      ? `; answer with \`harmonised: {notes: [${open.map(({ id }) => id).join(', ')}], source: …}\``
      : '';
  return `${tell.names(constituent)}: harmonised entry ${index}, ${texts.join('; ')}${ask}`;
}

/** An answer of the record that fits no entry. */
export function entryAnswerUnused(
  { constituent, entry, notes, known }: Of<'entry-answer-unused'>,
  tell: Telling,
): string {
  const wrong = [
    ...(entry === null ? [] : [`entry ${entry}`]),
    ...(notes.length > 0 ? [`notes ${notes.join(', ')}`] : []),
  ].join(' and ');
  const has =
    known.length > 0 ? `its harmonised entries are ${known.join(', ')}` : 'it has no harmonised entry';
  return `${tell.names(constituent)}: \`harmonised\` names ${wrong}, which do not belong to the substance and are not used; ${has}`;
}
