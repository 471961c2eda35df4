import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { converted, described, either, leaf, line, list, mapping, oneOf, told, truth } from './_leaf.ts';
import * as z from './_zod.ts';

/** Lines that no table of statements has, by the name that the label gives them. */
const LINES = /^not-to-mix$/;

/** Reads a code, or codes that are printed as one: `P280`, `P301 + P310`, `EUH031`. */
function readCode(text: string): Reading<string> {
  // The letters behind a number mean different things in capitals and not: H360Fd.
  const code = text
    .trim()
    .replace(/\s*\+\s*/g, '+')
    .replace(/\b(?:euh|h|p)(?=\d)/gi, head => head.toUpperCase());
  if (LINES.test(code)) return reads(code);
  if (/^(?:EU)?[HP]\d{3}[A-Za-z]{0,2}(?:\+[HP]\d{3}[A-Za-z]{0,2})*$/.test(code)) return reads(code);
  return misreads(`\`${text}\` is not a statement code`, 'write for example P280 or P370+P378');
}

const code = leaf(readCode, 'a statement code', 'P280', 'Code of a hazard or precautionary statement');
const words = line('dry sand', 'Words for the statement', 300);
const someWords = either(
  [converted(words, (text): readonly string[] => [text]), list(words, '[mist, spray]', 'Words, a part each')],
  'a text, or a list of texts',
  'dry sand',
  'Words for the statement',
);

/** A mapping from statement codes; a key that is no code is a finding. */
const byCode = <T>(value: z.ZodMiniType<T>, example: string, description: string) =>
  described(
    z.pipe(
      z.record(z.string(), value, { error: told({ what: 'a group of statement codes', example }) }),
      z.transform((entries, { issues }): Readonly<Record<string, T>> => {
        const made: [string, T][] = [];
        for (const [key, each] of Object.entries(entries)) {
          const reading = readCode(key);
          if (reading.ok) made.push([reading.value, each as T]);
          else
            issues.push({
              code: 'custom',
              message: reading.message,
              path: [key],
              input: key,
              params: { hint: reading.hint },
            });
        }
        return Object.fromEntries(made);
      }),
    ),
    { description },
  );

const fields = described(
  z.union(
    [
      converted(someWords, (texts): Readonly<Record<string, readonly string[]>> => ({ '*': texts })),
      z.record(z.string(), someWords),
    ],
    { error: told({ what: 'a text, a list of texts, or a group of fields', example: 'dry sand' }) },
  ),
  { description: 'Words for a statement: a text, or a text for each of its fields' },
);

/** What the record says of statements. */
export const statementsSchema = mapping(
  {
    words: z.optional(byCode(fields, '{P370+P378: dry sand}', 'Words for statements that need them')),
    conditions: z.optional(
      mapping(
        {
          volatile: z.optional(truth('Gives off vapors that can form a hazardous atmosphere')),
          inhalable: z.optional(truth('Inhalable dusts or mists may occur in use')),
          sprayed: z.optional(truth('Applied by spraying')),
          'specific-treatment': z.optional(
            line('calcium gluconate gel', 'A specific treatment that the label names', 300),
          ),
          'compatibility-group-S': z.optional(
            truth('Explosives of Division 1.4: compatibility group S in transport packaging'),
          ),
        },
        'Facts on which statements depend',
      ),
    ),
    choose: z.optional(byCode(someWords, '{P260: [mist, spray]}', 'Which alternatives of a statement apply')),
    keep: z.optional(list(code, '[P280]', 'Statements that stay where their number is limited')),
    omit: z.optional(
      list(
        mapping(
          { code, reason: line('the closed system keeps skin away', 'Why it does not apply', 2000) },
          'A statement left out, with the reason',
        ),
        '[{code: P264, reason: …}]',
        'Statements left out, each with the reason of the responsible person',
      ),
    ),
    add: z.optional(list(code, '[P101, P102]', 'Statements that the maker adds')),
    'consumer-signal': z.optional(
      mapping(
        {
          word: oneOf(['WARNING', 'CAUTION'], 'Signal word of the label for consumers'),
          reason: line('a test of the product showed mild irritation', 'Why this word', 2000),
        },
        'Which of the two words the label for consumers bears, where the law leaves that to the maker (15 U.S.C. 1261(p)(1)(D))',
      ),
    ),
  },
  'Words, conditions and choices for hazard and precautionary statements',
);

export type StatementsInput = z.output<typeof statementsSchema>;
