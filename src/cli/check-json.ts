import type { CheckedProduct } from '../draft/checked-product.ts';
import type { WeighOut } from '../formula/weigh-out.ts';
import { en } from '../words/en/index.ts';

/** What `check --json` says of one record. */
export const checkJson = ({
  product,
  resolved,
  readAs,
  entryNames,
  weighOut,
  measuredOn,
}: CheckedProduct) => ({
  product: { name: product.record.name, code: product.record.code },
  file: product.record.file,
  constituents: product.formula.constituents.map(({ name, cas, low, high, via, undisclosed }, i) => ({
    name,
    cas,
    percent: high.value,
    ...(low.value === high.value ? {} : { percentRange: [low.value, high.value] }),
    via,
    ...(undisclosed && { undisclosed }),
    ...(cas !== null && entryNames.has(cas) && { entryName: entryNames.get(cas) }),
    source: en.source(resolved[i]!.data.source),
    noData: resolved[i]!.data.noData,
    unknown: [...resolved[i]!.data.unknown],
  })),
  ...(readAs.length > 0 && { readAs }),
  ...(measuredOn.length > 0 && {
    measuredOn: measuredOn.map(({ property, parts, kept }) => ({
      property,
      formula: Object.fromEntries(parts.map(({ name, percent }) => [name, percent])),
      kept,
    })),
  }),
  weighOut: weighOut && weighOutJson(weighOut),
});

const weighOutJson = ({ grams, assumed, lines }: WeighOut) => ({
  grams: grams.value,
  assumed,
  lines: lines.map(({ name, low, high, lowGrams, highGrams, density }) => ({
    name,
    percent: [low.value, high.value],
    grams: [lowGrams.value, highGrams.value],
    density: density?.value ?? null,
  })),
});
