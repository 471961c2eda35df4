import groups from '../../../hazard-data/reactivity/groups.json' with { type: 'json' };
import pairs from '../../../hazard-data/reactivity/pairs.json' with { type: 'json' };
import type { Warning } from '../../classify/facts/warning.ts';
import type { Telling } from '../words.ts';
import { sharesOf } from './shares.ts';

interface Pair {
  readonly danger: string;
  readonly gives: string;
  readonly text: string;
  readonly below?: { readonly danger: string; readonly gives: string; readonly text: string };
}

interface Group {
  readonly id: string;
  readonly alone?: { readonly with: string; readonly gives: string };
}

/** What the product must not be mixed with in use, a line proposed for the label. */
export function notToMix(found: Extract<Warning, { id: 'reactive-alone' }>, tell: Telling): string {
  const lines = found.groups.map(({ group, constituents }) => {
    const { alone } = (groups.groups as readonly Group[]).find(({ id }) => id === group)!;
    return `Do not mix with ${alone!.with}: ${alone!.gives} may form (${constituents.map(tell.names).join(', ')})`;
  });
  return `what a user may mix is foreseeable use; proposed for label and sheet: ${lines.join('; ')}`;
}

/** Constituents that react with each other, what it gives and what follows for the calculation. */
export function reactive(
  { pair: id, dilute, left, right, advice, pH }: Extract<Warning, { id: 'reactive-constituents' }>,
  tell: Telling,
) {
  const pair: Pair = pairs.pairs.find(each => each.id === id)!;
  const { danger, gives, text } = (dilute && pair.below) || pair;
  const follows = {
    'reckon-the-salt': `sums count both as if unreacted: write under \`reacts\` what they form, and ${pH ? `judge by the measured pH ${tell.style.show(pH.value)}` : 'give the measured pH'}`,
    'salt-at-this-ph': `at the measured pH ${pH ? tell.style.show(pH.value) : ''} the acid is present as its salt; the reaction comes with acidification`,
    'does-not-hold':
      'a calculation from the ingredients does not hold for what forms; show that they do not react in the mixture',
  }[advice];
  return `${danger}: ${sharesOf(left, tell)} with ${sharesOf(right, tell)}: ${text} (gives ${gives}); ${follows}`;
}
