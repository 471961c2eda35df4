import type { Classification } from '../classify/classification.ts';
import type { Because } from '../classify/facts/because.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import type { Answer, OpenCause } from '../words/answer-words.ts';

function causeOf(because: Because): OpenCause {
  if (because.lacking) return { kind: 'data', constituents: because.lacking };
  switch (because.kind) {
    case 'flash-point':
      return { kind: because.found === 'missing' ? 'flash-point' : 'other' };
    case 'sum':
      return { kind: because.viscosity?.measured === null ? 'viscosity' : 'other' };
    case 'signs':
    case 'aerosol':
    case 'oxygen':
    case 'peroxide-data':
      return { kind: 'test' };
    case 'additivity':
    case 'shared-category':
    case 'nothing-counts':
      return { kind: 'data', constituents: because.unknown.map(({ constituent }) => constituent) };
    default:
      return { kind: 'other' };
  }
}

/** The classification in short: signal word and hazards, and the classes that are open, by their cause. */
export function answerOf(
  { hazards, otherClasses }: Classification,
  { signalWord }: Pick<LabelElements, 'signalWord'>,
): Answer {
  const open = new Map<string, { classes: { class: string; of: string | null }[]; cause: OpenCause }>();
  for (const { class: name, route, outcome, because } of otherClasses) {
    if (outcome !== 'insufficient-data') continue;
    const cause = causeOf(because);
    const key = JSON.stringify(cause);
    const group = open.get(key) ?? { classes: [], cause };
    group.classes.push({ class: name, of: route ?? null });
    open.set(key, group);
  }
  return {
    signalWord,
    hazards: hazards.map(({ code, route, effect }) => ({ code, of: effect ?? route })),
    open: [...open.values()],
  };
}
