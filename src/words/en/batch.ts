import { withoutExponent } from '../../quantity/print.ts';
import type { BatchFigures, BatchWords } from '../words.ts';

/** `88.18 lb = 9.03 gal`; empty where no weight can be told. */
function measures({ pounds, gallons }: BatchFigures): string {
  if (pounds === null) return '';
  return `${withoutExponent(pounds)} lb${gallons === null ? '' : ` = ${withoutExponent(gallons)} gal`}`;
}

function ratio({ onePartTo, by }: BatchFigures): string {
  if (onePartTo === null) return 'none of it';
  if (onePartTo === 1) return 'undiluted';
  return `1 part to ${withoutExponent(onePartTo)} parts of the product by ${by}`;
}

/** Amounts of a raw material in a batch, in pounds, US gallons and parts. */
export const batch: BatchWords = {
  head: (name, pounds, densityKnown) => {
    if (pounds === null)
      return `${name} by parts (no amounts per batch: the record gives no size of batch by weight)`;
    const missing = densityKnown ? '' : ' (no gallons: its density is not given)';
    return `${name} in a batch of ${withoutExponent(pounds)} lb${missing}; limits are rounded down`;
  },
  amount: figures => [measures(figures), ratio(figures)].filter(text => text !== '').join('; '),
  range: (low, high) => (low === high ? low : `${low} up to ${high}`),
  now: amount => `now: ${amount}`,
  change: (side, percent, amount) => `${side === 'at' ? 'from' : 'above'} ${percent}: ${amount}`,
  room: (side, figures, others) => {
    const more = measures(figures);
    const place = others === 'water' ? 'in place of water' : 'in place of the others in proportion';
    return `room before it gets worse: ${side === 'at' ? 'less than' : 'up to'} ${more} more ${place}`;
  },
  end: (percent, amount, asDelivered) =>
    `at most ${percent}, ${asDelivered ? 'the raw material as delivered' : 'where no water of other lines is left'}: ${amount}`,
};
