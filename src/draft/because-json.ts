import type { Classification, Replaced } from '../classify/classification.ts';
import type { Because } from '../classify/facts/because.ts';
import { figureOf, namedIn } from '../classify/facts/figure.ts';
import { tellAll } from '../words/telling.ts';
import type { Words } from '../words/words.ts';

/** Why a class was given or not, in the fixed JSON form: words beside the figures. */
export interface BecauseJson {
  readonly rule: string;
  readonly cite: string;
  readonly working: string;
  readonly total?: number;
  readonly limit?: number;
  readonly unit?: string;
  readonly terms?: readonly { readonly name: string; readonly percent: number; readonly weight: number }[];
}

/** Turns reasons of a classification into JSON. */
export function reasonWriter(classification: Pick<Classification, 'constituents'>, words: Words) {
  const telling = tellAll(classification);
  const write = (because: Because): BecauseJson => {
    const { rule, working } = words.because(because, telling);
    const figure = figureOf(because);
    const terms = namedIn(because)?.map(({ constituent, amount, weight }) => ({
      name: telling.names(constituent),
      percent: amount.value,
      weight,
    }));
    return {
      rule,
      cite: words.cites(because.cites),
      working,
      ...(figure && {
        total: figure.total,
        ...(figure.limit !== null && { limit: figure.limit }),
        unit: figure.unit,
      }),
      ...(terms && { terms }),
    };
  };
  return {
    because: write,
    calculated: (replaced: Replaced | undefined) =>
      replaced ? { calculated: { outcome: replaced.outcome, because: write(replaced.because) } } : {},
  };
}
