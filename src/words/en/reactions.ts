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

/** What the product must not be mixed with in use. */
export function notToMix(found: Extract<Warning, { id: 'reactive-alone' }>, tell: Telling): string {
  const byLine = new Map<string, number[]>();
  for (const { constituents, with: others, gives } of found.groups) {
    const line = `Do not mix with ${others}: ${gives} may form`;
    byLine.set(line, [...(byLine.get(line) ?? []), ...constituents]);
  }
  const lines = [...byLine].map(
    ([line, constituents]) => `${line} (${[...new Set(constituents)].map(tell.names).join(', ')})`,
  );
  return `what a user may mix is foreseeable use: ${lines.join('; ')}`;
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
