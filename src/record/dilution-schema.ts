import { Exact } from '../quantity/exact.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { converted, either, leaf, line, list, mapping } from './_leaf.ts';
import * as z from './_zod.ts';

/** Parts of the product and of the diluent, by volume. */
export interface RatioInput {
  readonly product: Exact;
  readonly diluent: Exact;
  readonly written: string;
}

/** Reads `1:16` and `1 to 16`: product first. */
export function readRatio(text: string): Reading<RatioInput> {
  const match = /^\s*(\d+(?:\.\d+)?)\s*(?::|\/|to|in|\+)\s*(\d+(?:\.\d+)?)\s*$/.exec(text);
  if (!match || / in /.test(text))
    return misreads(
      `\`${text}\` is not a ratio of the product to the diluent`,
      'write "1:16" in quotes: one part of the product to sixteen parts of water',
    );
  const [product, diluent] = [Exact.decimal(match[1]!), Exact.decimal(match[2]!)];
  if (product.value <= 0 || diluent.value <= 0)
    return misreads(`a part of \`${text}\` is nothing`, 'both parts are above 0');
  return reads({ product, diluent, written: `${match[1]}:${match[2]}` });
}

const dilution = mapping(
  {
    with: z.optional(line('water', 'What it is diluted with; water where nothing is said', 200)),
    ratio: leaf(
      readRatio,
      'a ratio in quotes',
      '"1:16"',
      'Parts of the product to parts of the diluent, by volume',
    ),
    use: z.optional(line('light soil', 'What this solution is for', 200)),
  },
  'A use solution',
  'a group with `ratio`',
);

type DilutionInput = z.output<typeof dilution>;

/** The use solutions of a pack. */
export const dilutionSchema: z.ZodMiniType<readonly DilutionInput[]> = either(
  [
    converted(dilution, (one): readonly DilutionInput[] => [one]),
    list(dilution, '[{ratio: "1:16", use: light soil}]', 'Use solutions').check(z.minLength(1)),
  ],
  'a group with `ratio`, or a list of them',
  '{with: water, ratio: "1:16"}',
  'The solution that the user makes and holds, classified beside the concentrate; one or several',
);
