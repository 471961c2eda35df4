import type { LabelData } from '../reference/label-data/load-label-data.ts';
import type { Omission, SignalWord } from './label-elements.ts';
import type { ShownHazard } from './shown-hazards.ts';

/** The graver signal word of the hazards; with Danger, Warning does not appear (C.2.1.1; CLP Article 20(3)). */
export function signalWordOf(
  shown: readonly ShownHazard[],
  { rules }: LabelData,
): { readonly signalWord: SignalWord | null; readonly omitted: readonly Omission[] } {
  const words = new Set(shown.map(({ row }) => row.signalWord));
  if (!words.has('Danger')) return { signalWord: words.has('Warning') ? 'Warning' : null, omitted: [] };
  const { cite } = rules.signalWord;
  return {
    signalWord: 'Danger',
    omitted: words.has('Warning') ? [{ what: 'Warning', why: { kind: 'graver-signal-word' }, cite }] : [],
  };
}
