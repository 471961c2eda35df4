import { findClass, hazardClasses } from '../notation/classes.ts';
import type { Hazard } from '../notation/hazard.ts';
import { classesListedAs, listedClass } from '../notation/listed-class.ts';
import { understandHazard } from '../notation/understand-hazard.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { nearest } from '../report/nearest.ts';
import { across } from './_cross.ts';
import { leaf, line, list, mapping, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';
import type { BridgingPrinciple } from './product-record.ts';

function readClass(text: string): Reading<string> {
  const name = text.trim();
  if (findClass(name)) return reads(name);
  const [severest] = classesListedAs(name);
  if (severest !== undefined) return reads(severest);
  if (/^hnoc$|not otherwise classified/i.test(name))
    return misreads(
      `\`${name}\` is not a hazard class`,
      'describe hazards not otherwise classified in `sds: {other-hazards: …}`, which section 2 prints',
    );
  const near = nearest(
    name,
    hazardClasses.map(entry => entry.class),
  );
  return misreads(
    `\`${name}\` is not a hazard class`,
    near ? `did you mean \`${near}\`?` : 'write it as in CLP Annex VI: Met. Corr., Skin Corr., Acute Tox.',
  );
}

/** A result of a test on the whole mixture. */
export interface ResultInput {
  readonly hazard: Hazard | null;
}

function readResult(text: string): Reading<ResultInput> {
  if (/^not[ -]classified$/i.test(text.trim())) return reads({ hazard: null });
  const read = understandHazard(text);
  if (!read.ok) return read;
  const [hazard, ...more] = read.value.hazards;
  if (more.length > 0) return misreads(`\`${text}\` names several results`, 'give each an entry of its own');
  return reads({ hazard: hazard! });
}

const principles = [
  'dilution',
  'batching',
  'concentration',
  'interpolation',
  'substantially-similar',
  'aerosols',
] as const satisfies readonly BridgingPrinciple[];

/** Whole-mixture results that replace a calculation. */
export const evidenceSchema = list(
  across(
    mapping(
      {
        class: leaf(readClass, 'a hazard class', 'Met. Corr.', 'Hazard class that the evidence speaks of'),
        route: z.optional(oneOf(['oral', 'dermal', 'inhalation'], 'Route, for acute toxicity')),
        result: leaf(
          readResult,
          'a hazard, or not classified',
          'Met. Corr. 1',
          'Hazard found, or: not classified',
        ),
        kind: oneOf(
          ['test', 'bridging', 'reserve'],
          'test on the whole mixture, bridging from a similar tested mixture, or acid/alkali reserve',
        ),
        principle: z.optional(
          oneOf(
            principles,
            'Bridging principle by which the result is taken over; needed where the kind is bridging',
          ),
        ),
        method: line('UN Manual of Tests and Criteria 37.4', 'Method'),
        source: line('test report 26-114, 2026-03-02', 'Where the result is from'),
        reason: z.optional(line('…', 'Reason, where judgment is in it', 2000)),
      },
      'A whole-mixture result that replaces a calculation',
    ),
    ({ class: hazardClass, result, route, kind, principle }, complain) => {
      if (kind === 'bridging' && principle === undefined)
        complain(
          [],
          'the entry is bridged, and does not say by which principle',
          `add \`principle: …\`, one of ${principles.join(', ')}`,
        );
      if (principle !== undefined && (kind === 'test' || kind === 'reserve'))
        complain(
          ['principle'],
          `\`principle\` stands beside \`kind: ${kind}\``,
          'only bridging has a principle',
        );
      const hazard = (result as ResultInput | undefined)?.hazard;
      if (!hazard || typeof hazardClass !== 'string') return;
      // A corrosion test may end in irritation, an eye damage test too.
      if (listedClass(hazard.hazardClass) !== listedClass(hazardClass))
        complain(['result'], `the result \`${hazard.code}\` is not of the class \`${hazardClass}\``);
      if (hazard.route && route && hazard.route !== route)
        complain(['route'], `the route \`${route}\` is not that of the result, \`${hazard.route}\``);
    },
  ),
  '[]',
  'Whole-mixture test results that replace a calculation, with method and source',
);

/** Choices where the law leaves one. */
export const choicesSchema = list(
  mapping(
    {
      reading: line('us-specific-limits', 'Reading of the law that is chosen about'),
      take: line('use', 'What is chosen'),
      reason: line('supplier has test data', "The reviewer's reason", 2000),
    },
    'A choice among readings of the law',
  ),
  '[]',
  'Choices where the law leaves one',
);
