import prefixes from './gs1-prefixes.json' with { type: 'json' };

export type PrefixKind = 'restricted' | 'reserved' | 'example' | 'publication' | 'coupon';

/** What the first digits of a number say about its use. */
export interface PrefixNote {
  /** `020-029` */
  readonly range: string;
  readonly kind: PrefixKind;
  readonly meaning: string;
  readonly source: string;
}

interface Row {
  readonly from: string;
  readonly to: string;
  readonly kind: string;
  readonly meaning: string;
  readonly source: string;
}

/** The special prefixes that a GTIN-13 or GTIN-8 begins with; empty for an ordinary number. */
export function prefixNotes(key: 'GTIN-13' | 'GTIN-8', digits: string): readonly PrefixNote[] {
  const rows: readonly Row[] = prefixes[key];
  return rows
    .filter(({ from, to }) => {
      const head = digits.slice(0, from.length);
      return head >= from && head <= to;
    })
    .map(({ from, to, kind, meaning, source }) => ({
      range: from === to ? from : `${from}-${to}`,
      kind: kind as PrefixKind,
      meaning,
      source,
    }));
}
