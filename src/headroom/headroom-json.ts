import type Fraction from 'fraction.js';
import type { Because } from '../classify/facts/because.ts';
import { answerOf, roomOf } from './answer.ts';
import type { Breakpoint, Headroom } from './headroom.ts';
import { exactText } from './percent-text.ts';
import { type Shop, shopAmount } from './shop-amount.ts';

/** Breakpoints of one constituent as one JSON document; every percent as a number, and exactly as text. */
export function headroomJson(
  headroom: Headroom,
  { name, code }: { readonly name: string; readonly code: string },
  writerOf: (breakpoint: Breakpoint) => (because: Because) => object,
): Record<string, unknown> {
  const { of, basis, others, current, domain, steps, breakpoints, notes, shop } = headroom;
  const amount = (percent: Fraction) => (shop ? { amount: amountJson(percent, shop) } : {});
  const { worse, better } = roomOf(headroom);
  return {
    schema: 'labelwright/headroom/1',
    product: { name, code },
    basis: { id: basis.id, title: basis.title, asOf: basis.asOf },
    of: { name: of.name, cas: of.cas },
    others,
    current: range(current),
    domain: range(domain),
    ...(shop && {
      batch: {
        grams: shop.batchGrams?.value ?? null,
        density: shop.density?.value ?? null,
        now: current.map(percent => amountJson(percent, shop)),
        most: amountJson(domain[1], shop),
      },
    }),
    answer: answerOf(headroom),
    nextWorse: worse && place(worse),
    nextBetter: better && place(better),
    steps: steps.map(({ from, to, fromInclusive, toInclusive, state }) => ({
      ...range([from, to]),
      fromInclusive,
      toInclusive,
      hazards: state.hazards,
      supplemental: state.supplemental,
      ...(state.label && { signalWord: state.label.signalWord, pictograms: state.label.pictograms }),
    })),
    breakpoints: breakpoints.map(breakpoint => ({
      ...place(breakpoint),
      ...amount(breakpoint.at),
      changes: breakpoint.changes.map(change =>
        'because' in change && change.because
          ? { ...change, because: writerOf(breakpoint)(change.because) }
          : change,
      ),
      workedAt: breakpoint.workedAt.valueOf(),
    })),
    notes,
  };
}

const range = ([from, to]: readonly [Fraction, Fraction]) => ({
  from: from.valueOf(),
  to: to.valueOf(),
  exact: [exactText(from), exactText(to)],
});

const place = ({ at, side }: Breakpoint) => ({ at: at.valueOf(), exact: exactText(at), side });

/** Pounds and gallons per batch and parts of the product to one part, unrounded; and exactly. */
function amountJson(percent: Fraction, shop: Shop) {
  const { pounds, gallons, onePartTo } = shopAmount(percent, shop);
  const each = (value: Fraction | null) => value && { value: value.valueOf(), exact: exactText(value) };
  return { pounds: each(pounds), gallons: each(gallons), onePartTo: each(onePartTo), by: shop.by };
}
