import { type Change, isWorsening, touchesLabel } from './changes.ts';
import type { Breakpoint, Headroom } from './headroom.ts';
import { percentText, readableText } from './percent-text.ts';

/** The next breakpoints on either side of what the record holds. */
export interface Room {
  /** Going up, the first at which a hazard or the signal word becomes more severe. */
  readonly worse: Breakpoint | null;
  /** Going down, the first below which one becomes less severe. */
  readonly better: Breakpoint | null;
}

/** What lies next above and below the percent in the record (the high end of a range). */
export function roomOf({ breakpoints, current }: Headroom): Room {
  const [, now] = current;
  const isAbove = ({ at, side }: Breakpoint) => at.gt(now) || (at.equals(now) && side === 'above');
  const worsening = breakpoints.filter(({ changes }) => isWorsening(changes));
  return {
    worse: worsening.find(isAbove) ?? null,
    better: worsening.findLast(each => !isAbove(each)) ?? null,
  };
}

/** How much can be used before the label gets worse, and what less would gain, in one sentence. */
export function answerOf(headroom: Headroom): string {
  const { of, current, domain } = headroom;
  const [low, high] = current;
  const { worse, better } = roomOf(headroom);
  const now = low.equals(high) ? percentText(high) : `${readableText(low)} to ${percentText(high)}`;
  const up = worse
    ? `${worse.side === 'at' ? 'from' : 'above'} ${percentText(worse.at)} ${subject(worse)} gets worse: ${changesText(worse.changes)}${roomText(worse, headroom)}`
    : `more of it, up to ${percentText(domain[1])}, makes no hazard more severe`;
  const down = better
    ? `${better.side === 'at' ? 'below' : 'at or below'} ${percentText(better.at)} ${subject(better)} gets better: ${changesText(better.changes.map(reversed))}`
    : 'less of it makes no hazard less severe';
  return `${of.name}: now ${now}; ${up}; ${down}.`;
}

const subject = ({ changes }: Breakpoint): string =>
  touchesLabel(changes) ? 'the label' : 'the category, not the label,';

function roomText({ at, side }: Breakpoint, { current, others }: Headroom): string {
  const room = at.sub(current[1]);
  if (room.lte(0)) return '';
  const more = String(Number(room.valueOf().toPrecision(6)));
  const place = others === 'water' ? ' in place of water' : '';
  return ` (room for ${side === 'at' ? 'less than' : 'up to'} ${more} % of the batch more${place})`;
}

/** A change going down instead of up. */
export function reversed(change: Change): Change {
  switch (change.what) {
    case 'signal-word':
      return { ...change, from: change.to, to: change.from, worse: !change.worse };
    case 'pictogram':
    case 'supplemental':
      return { ...change, kind: change.kind === 'appears' ? 'disappears' : 'appears', worse: !change.worse };
    case 'hazard': {
      const worse = change.worse === null ? null : !change.worse;
      if (change.kind === 'changes') return { ...change, code: change.from!, from: change.code, worse };
      return { ...change, kind: change.kind === 'appears' ? 'disappears' : 'appears', worse };
    }
  }
}

/** Changes in words: `Skin Corr. 1B instead of Skin Irrit. 2, no longer Eye Irrit. 2A`. */
export const changesText = (changes: readonly Change[]): string => changes.map(changeText).join(', ');

/** One change in words: `Skin Corr. 1B instead of Skin Irrit. 2`. */
export function changeText(change: Change): string {
  if (change.what === 'signal-word') {
    if (change.to === null) return `no signal word instead of ${change.from}`;
    return `signal word ${change.to}${change.from === null ? '' : ` instead of ${change.from}`}`;
  }
  if (change.what === 'supplemental')
    return change.kind === 'appears' ? `statement ${change.code}` : `no longer statement ${change.code}`;
  if (change.what === 'pictogram')
    return change.kind === 'appears' ? `pictogram ${change.code}` : `no longer pictogram ${change.code}`;
  if (change.kind === 'changes') return `${change.code} instead of ${change.from}`;
  return change.kind === 'appears' ? change.code : `no longer ${change.code}`;
}
