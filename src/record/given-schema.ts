import type { Hazard } from '../notation/hazard.ts';
import type { SpecificLimit } from '../notation/limit.ts';
import { openQuestion } from '../notation/open-question.ts';
import { type AteKey, ateUnits, parseAteValue } from '../notation/parse-ate.ts';
import { parseLimit } from '../notation/parse-limit.ts';
import { printHazard } from '../notation/print-hazard.ts';
import { understandHazard } from '../notation/understand-hazard.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Measure } from '../quantity/measure.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { molarMassLeaf } from './_amounts.ts';
import { leaf, line, list, mapping, oneOf, truth } from './_leaf.ts';
import * as z from './_zod.ts';
import type { Endpoint, ReadAs } from './given-data.ts';

const endpoints = ['acute-oral', 'acute-dermal', 'acute-inhalation', 'aquatic'] as const;

const ate = (key: AteKey, example: string) =>
  z.optional(
    leaf(
      text => parseAteValue(key, text),
      'a number with its unit',
      `${example} ${ateUnits[key]}`,
      `Acute toxicity estimate, ${key}, in ${ateUnits[key]}`,
    ),
  );

const mFactor = (kind: string) =>
  z.optional(
    leaf(
      text => {
        const number = readNumber(text);
        if (!number.ok) return number;
        const { value } = number.value;
        // CLP 4.1.3.5.5.5: M-factors are powers of ten, from 1 up.
        if (value < 1 || !Number.isInteger(Math.log10(value)))
          return misreads(`\`${text}\` is not an M-factor`, 'M-factors are 1, 10, 100, 1000 …');
        return reads(value);
      },
      'a number',
      '10',
      `M-factor, ${kind} aquatic hazard`,
    ),
  );

function readMetal(text: string): Reading<Exact> {
  const number = readNumber(text.trim().replace(/\s*%$/, ''));
  if (!number.ok) return number;
  const { value } = number.value;
  return value > 0 && value <= 100
    ? number
    : misreads(`\`${text.trim()}\` is not a percentage above 0 and up to 100`, 'write for example 45.4 %');
}

const groups = leaf(
  text => {
    const number = readNumber(text);
    if (!number.ok) return number;
    const { value } = number.value;
    if (value < 1 || !Number.isInteger(value))
      return misreads(
        `\`${text}\` is not a number of peroxygen groups`,
        'write how many -O-O- a molecule has',
      );
    return reads(value);
  },
  'a whole number',
  '1',
  'Peroxygen groups (-O-O-) in a molecule',
);

const notes = ['J', 'K', 'L', 'M', 'N', 'P'] as const;

const indexNumber = leaf(
  text =>
    /^\d{3}-\d{3}-\d{2}-[\dX]$/.test(text)
      ? reads(text)
      : misreads(`\`${text}\` is no index number of CLP Annex VI`, 'write it as in 017-002-01-X'),
  'an index number',
  '017-002-01-X',
  'Index number of the entry that is meant, where a CAS number has several',
);

/** Hazards that one text names, with what was written where it is not in the notation. */
export interface HazardsInput {
  readonly hazards: readonly Hazard[];
  readonly readAs: ReadAs | null;
}

const notClassified = /^\s*(?:not (?:a )?(?:classified|hazardous|dangerous)\b|non-?hazardous\b|none\s*$)/i;
const knownHarmless = 'write `hazards: []` with the `source` that says so';

function readHazards(text: string): Reading<HazardsInput> {
  if (notClassified.test(text)) return misreads(`\`${text.trim()}\` is not a hazard`, knownHarmless);
  const read = understandHazard(text);
  if (!read.ok) return read;
  const { hazards, reworded } = read.value;
  for (const hazard of hazards) {
    const question = openQuestion(hazard);
    if (question) return misreads(question.message, question.hint);
  }
  const readAs = reworded ? { written: text.trim(), read: hazards.map(printHazard) } : null;
  return reads({ hazards, readAs });
}

/** Keys of a formula line with which the record speaks of the hazards of a constituent. */
export const givenShape = {
  hazards: z.optional(
    list(
      leaf(
        readHazards,
        'a hazard',
        'Skin Irrit. 2',
        'A hazard in the notation of CLP Annex VI, or as the data sheet prints it',
      ),
      '[Skin Irrit. 2, Flam. Liq. 3]',
      'Hazards of the constituent; replaces the entry in the hazard data. An empty list with a source: known, not classified',
      written => (typeof written === 'string' && notClassified.test(written) ? knownHarmless : undefined),
    ),
  ),
  limits: z.optional(
    list(
      leaf(parseLimit, 'a limit', 'Skin Sens. 1B; C >= 1', 'A specific concentration limit'),
      '["Skin Sens. 1B; C >= 1"]',
      'Specific concentration limits',
    ),
  ),
  ate: z.optional(
    mapping(
      {
        oral: ate('oral', '4400'),
        dermal: ate('dermal', '1100'),
        gas: ate('gas', '700'),
        vapour: ate('vapour', '3'),
        mist: ate('mist', '0.5'),
      },
      'Acute toxicity estimates',
    ),
  ),
  'm-factors': z.optional(mapping({ acute: mFactor('acute'), chronic: mFactor('chronic') }, 'M-factors')),
  peroxide: z.optional(
    mapping(
      { groups, 'molar-mass': molarMassLeaf },
      'For an organic peroxide: what its available oxygen is calculated from',
    ),
  ),
  harmonised: z.optional(
    mapping(
      {
        entry: z.optional(indexNumber),
        notes: z.optional(
          list(
            oneOf(notes, 'A note'),
            '[P]',
            'Notes of CLP Annex VI 1.1.3.1 whose condition is shown, so that the classes they speak of are left out',
          ),
        ),
        metal: z.optional(
          leaf(
            readMetal,
            'a percentage of the substance',
            '45.4 %',
            'Percent by weight of the metallic element in the substance (CLP Annex VI, Note 1)',
          ),
        ),
        source: line('certificate of analysis 4711, benzene 0.02 %', 'What shows it'),
      },
      'Answers to what the harmonised entry leaves open',
    ),
  ),
  unknown: z.optional(
    list(oneOf(endpoints, 'An endpoint'), '[acute-oral]', 'Endpoints for which there is no usable data'),
  ),
  additive: z.optional(
    truth('false: summing does not hold for skin and eye (strong acid or base and the like)'),
  ),
  relevant: z.optional(truth('true: counts although it is below the cut-off for relevant ingredients')),
  source: z.optional(line('supplier SDS, revision 3, 2026-02-11', 'Where these data are from')),
};

/** Those keys as validated. */
export interface GivenInput {
  readonly hazards?: readonly HazardsInput[];
  readonly limits?: readonly SpecificLimit[];
  readonly ate?: { readonly [K in AteKey]?: Exact };
  readonly 'm-factors'?: { readonly acute?: number; readonly chronic?: number };
  readonly peroxide?: { readonly groups: number; readonly 'molar-mass': Measure };
  readonly harmonised?: {
    readonly entry?: string;
    readonly notes?: readonly string[];
    readonly metal?: Exact;
    readonly source: string;
  };
  readonly unknown?: readonly Endpoint[];
  readonly additive?: boolean;
  readonly relevant?: boolean;
  readonly source?: string;
}
