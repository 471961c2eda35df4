import type Fraction from 'fraction.js';
import type { BatchFigures, Words } from '../words/words.ts';
import { roomOf } from './answer.ts';
import type { Headroom } from './headroom.ts';
import { percentText } from './percent-text.ts';
import { rounded, type Shop, shopAmount } from './shop-amount.ts';

/** Amounts of a raw material per batch, at the present and at every breakpoint; no lines for a constituent. */
export function batchLines(headroom: Headroom, { batch }: Words): readonly string[] {
  const { of, shop, current, domain, breakpoints, others } = headroom;
  if (!shop) return [];
  const amount = (percent: Fraction, to: 'down' | 'nearest') => batch.amount(figures(percent, shop, to));
  const size = shop.batchGrams && shopAmount(domain[0].add(100), shop).pounds;
  const { worse } = roomOf(headroom);
  const more = worse?.at.sub(current[1]);
  const lines = [
    batch.now(batch.range(amount(current[0], 'nearest'), amount(current[1], 'nearest'))),
    ...(worse && more?.gt(0) && size ? [batch.room(worse.side, figures(more, shop, 'down'), others)] : []),
    ...breakpoints.map(({ at, side }) => batch.change(side, percentText(at), amount(at, 'down'))),
    batch.end(percentText(domain[1]), amount(domain[1], 'down'), domain[1].equals(100)),
  ];
  const pounds = size && rounded(size, 'nearest');
  return ['', batch.head(of.name, pounds, shop.density !== null), ...lines.map(line => `  ${line}`)];
}

function figures(percent: Fraction, shop: Shop, to: 'down' | 'nearest'): BatchFigures {
  const { pounds, gallons, onePartTo } = shopAmount(percent, shop);
  return {
    pounds: pounds && rounded(pounds, to),
    gallons: gallons && rounded(gallons, to),
    // More parts of the product mean less of the raw material.
    onePartTo: onePartTo && rounded(onePartTo, to === 'down' ? 'up' : 'nearest'),
    by: shop.by,
  };
}
