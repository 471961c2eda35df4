import type { Hazard } from '../notation/hazard.ts';
import type { SpecificLimit } from '../notation/limit.ts';
import { type AteKey, ateUnits, parseAteValue } from '../notation/parse-ate.ts';
import { parseHazard } from '../notation/parse-hazard.ts';
import { parseLimit } from '../notation/parse-limit.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Measure } from '../quantity/measure.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { molarMassLeaf } from './_amounts.ts';
import { leaf, line, list, mapping, oneOf, truth } from './_leaf.ts';
import * as z from './_zod.ts';
import type { Endpoint } from './given-data.ts';

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

/** Acute toxicity is of a route; without one nothing could be calculated from it. */
function readHazard(text: string): Reading<Hazard> {
  const hazard = parseHazard(text);
  if (!hazard.ok || hazard.value.hazardClass !== 'Acute Tox.' || hazard.value.route) return hazard;
  const { code } = hazard.value;
  return misreads(
    `\`${text.trim()}\` does not say by which route`,
    `write \`${code} (oral)\`, \`(dermal)\` or \`(inhalation)\`, or its H-code`,
  );
}

/** Keys of a formula line with which the record speaks of the hazards of a constituent. */
export const givenShape = {
  hazards: z.optional(
    list(
      leaf(readHazard, 'a hazard', 'Skin Irrit. 2', 'A hazard in the notation of CLP Annex VI'),
      '[Skin Irrit. 2, Flam. Liq. 3]',
      'Hazards of the constituent; replaces the entry in the hazard data. An empty list with a source: known, not classified',
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
  readonly hazards?: readonly Hazard[];
  readonly limits?: readonly SpecificLimit[];
  readonly ate?: { readonly [K in AteKey]?: Exact };
  readonly 'm-factors'?: { readonly acute?: number; readonly chronic?: number };
  readonly peroxide?: { readonly groups: number; readonly 'molar-mass': Measure };
  readonly unknown?: readonly Endpoint[];
  readonly additive?: boolean;
  readonly relevant?: boolean;
  readonly source?: string;
}
