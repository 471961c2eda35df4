import type { ClassifiedHazard } from '../classify/classification.ts';
import type { Because } from '../classify/facts/because.ts';
import type { PictogramCode, SignalWord } from '../labelling/label-elements.ts';
import { listedByEffect, listedClass } from '../notation/listed-class.ts';
import { isLessSpecific, isWorse } from '../notation/severity.ts';
import { hazardText, type State } from './state.ts';

/** One thing that becomes different at a breakpoint. `worse` is null where neither state is the more severe. */
export type Change =
  | {
      readonly what: 'hazard';
      readonly kind: 'appears' | 'disappears' | 'changes';
      /** In the notation; the new hazard where it changes. */
      readonly code: string;
      /** The hazard that it takes the place of. */
      readonly from: string | null;
      readonly worse: boolean | null;
      /** Whether a hazard statement changes with it. */
      readonly onLabel: boolean;
      readonly because: Because | null;
    }
  | {
      readonly what: 'signal-word';
      readonly from: SignalWord | null;
      readonly to: SignalWord | null;
      readonly worse: boolean;
    }
  | {
      readonly what: 'supplemental';
      readonly kind: 'appears' | 'disappears';
      /** EUH code. */
      readonly code: string;
      readonly worse: boolean;
      readonly because: Because | null;
    }
  | {
      readonly what: 'pictogram';
      readonly kind: 'appears' | 'disappears';
      readonly code: PictogramCode;
      readonly worse: boolean;
    };

/** The class as listed among those examined; of acute toxicity and STOT SE 3 each route and effect by itself. */
function seatOf({ hazardClass, category, route, effect }: ClassifiedHazard): string {
  if (hazardClass === 'Acute Tox.') return `${hazardClass} ${route}`;
  if (hazardClass === 'STOT SE' && category === '3' && effect) return listedByEffect(effect);
  return listedClass(hazardClass);
}

const bySeat = ({ classification }: State) =>
  new Map(classification.hazards.map(hazard => [seatOf(hazard), hazard]));

/** What the second state has that the first has not, and the other way about. */
export function changesBetween(before: State, after: State): Change[] {
  return [
    ...hazardChanges(before, after),
    ...signalWordChange(before, after),
    ...pictogramChanges(before, after),
    ...supplementalChanges(before, after),
  ];
}

function hazardChanges(before: State, after: State): Change[] {
  const old = bySeat(before);
  const now = bySeat(after);
  const changes: Change[] = [];
  for (const [seat, hazard] of now) {
    const was = old.get(seat);
    const code = hazardText(hazard);
    if (!was)
      changes.push({
        what: 'hazard',
        kind: 'appears',
        code,
        from: null,
        worse: true,
        onLabel: hazard.statements.length > 0,
        because: hazard.because,
      });
    else if (hazardText(was) !== code)
      changes.push({
        what: 'hazard',
        kind: 'changes',
        code,
        from: hazardText(was),
        worse: isCertainlyWorse(hazard, was) ? true : isCertainlyWorse(was, hazard) ? false : null,
        onLabel: hazard.statements.join() !== was.statements.join(),
        because: hazard.because,
      });
  }
  for (const [seat, hazard] of old)
    if (!now.has(seat))
      changes.push({
        what: 'hazard',
        kind: 'disappears',
        code: hazardText(hazard),
        from: null,
        worse: false,
        onLabel: hazard.statements.length > 0,
        because: reasonGone(after, seat),
      });
  return changes;
}

/** Category 1 beside 1B says less, not something milder. */
const isCertainlyWorse = (a: ClassifiedHazard, b: ClassifiedHazard): boolean =>
  !isLessSpecific(a, b) && !isLessSpecific(b, a) && isWorse(a, b);

const reasonGone = ({ classification }: State, seat: string): Because | null =>
  classification.otherClasses.find(
    other => seat === (other.route ? `${other.class} ${other.route}` : other.class),
  )?.because ?? null;

const rank = { Danger: 2, Warning: 1, none: 0 } as const;

function signalWordChange(before: State, after: State): Change[] {
  if (!before.label || !after.label || before.label.signalWord === after.label.signalWord) return [];
  const [from, to] = [before.label.signalWord, after.label.signalWord];
  return [{ what: 'signal-word', from, to, worse: rank[to ?? 'none'] > rank[from ?? 'none'] }];
}

function pictogramChanges(before: State, after: State): Change[] {
  const old = before.label?.pictograms ?? [];
  const now = after.label?.pictograms ?? [];
  return [
    ...now
      .filter(code => !old.includes(code))
      .map((code): Change => ({ what: 'pictogram', kind: 'appears', code, worse: true })),
    ...old
      .filter(code => !now.includes(code))
      .map((code): Change => ({ what: 'pictogram', kind: 'disappears', code, worse: false })),
  ];
}

function supplementalChanges(before: State, after: State): Change[] {
  const gone = (a: State, b: State) =>
    a.classification.supplemental.filter(({ code }) => !b.supplemental.includes(code));
  return [
    ...gone(after, before).map(
      ({ code, because }): Change => ({ what: 'supplemental', kind: 'appears', code, worse: true, because }),
    ),
    ...gone(before, after).map(
      ({ code }): Change => ({ what: 'supplemental', kind: 'disappears', code, worse: false, because: null }),
    ),
  ];
}

/** Whether any hazard or the signal word becomes more severe; a pictogram alone decides nothing (precedence may drop one). */
export const isWorsening = (changes: readonly Change[]): boolean =>
  changes.some(({ what, worse }) => (what === 'hazard' || what === 'signal-word') && worse === true);

/** Whether anything changes that the label shows, not only a category that the data sheet names. */
export const touchesLabel = (changes: readonly Change[]): boolean =>
  changes.some(change => change.what !== 'hazard' || change.onLabel);
