import { converted, either, line, list, mapping, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';
import type { TradeSecret } from './record-blocks.ts';

const part = oneOf(['identity', 'percent'], 'What is claimed') as z.ZodMiniType<'identity' | 'percent'>;
const claim = (
  what: readonly ('identity' | 'percent')[],
  shownAs: string | null = null,
  alternativeName: TradeSecret['alternativeName'] = null,
): TradeSecret => ({
  identity: what.includes('identity'),
  percent: what.includes('percent'),
  shownAs,
  alternativeName,
});
const parts = list(part, '[identity, percent]', 'What is claimed').check(z.minLength(1));

/** What is claimed as a trade secret for a line of the formula (29 CFR 1910.1200(i)). */
export const tradeSecretSchema: z.ZodMiniType<TradeSecret> = either(
  [
    either(
      [converted(part, what => claim([what])), converted(parts, what => claim(what))],
      'identity, percent, or both in a list',
      '[identity, percent]',
      'What is claimed',
    ),
    converted(
      mapping(
        {
          claim: parts,
          'shown-as': z.optional(
            line('alcohol ethoxylate', 'What the sheet prints in place of the name', 200),
          ),
          'alternative-name': z.optional(
            mapping(
              {
                name: line('alkoxylated fatty alcohol', 'The name that the Agency allowed', 200),
                approval: line('decision of 2026-03-02', 'Its decision or reference', 200),
              },
              'EU: alternative chemical name by Article 24 of Regulation (EC) No 1272/2008',
            ),
          ),
        },
        'What is claimed, and the name shown instead',
      ) as z.ZodMiniType<{
        claim: readonly ('identity' | 'percent')[];
        'shown-as'?: string;
        'alternative-name'?: { name: string; approval: string };
      }>,
      ({ claim: what, 'shown-as': shownAs, 'alternative-name': alternative }) =>
        claim(what, shownAs ?? null, alternative ?? null),
    ),
  ],
  'identity, percent, or both in a list',
  '[identity, percent]',
  'Claimed as a trade secret on the data sheet: identity, percent or both',
);
