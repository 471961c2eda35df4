import { labelSubstances as substancesOf } from '../../../labelling/label-substances.ts';
import { openOnDocuments } from '../../../labelling/open-on-documents.ts';
import { inTerms } from '../../../words/in-terms.ts';
import {
  bodyOf,
  firstBody,
  type ItemBody,
  nothing,
  paragraphs,
  type SectionBodies,
  said,
} from '../content.ts';
import { fill } from '../fill.ts';
import { hazardIdentification, reactionWarnings } from '../hazard-identification.ts';
import { effectsOf } from '../hazards.ts';
import type { SheetInput } from '../input.ts';
import { secretsOf } from '../secrets.ts';
import { withCode } from '../statements.ts';
import { titleAndCode, titleOf } from './classes.ts';
import { identified } from './identified.ts';

/** Section 2 (Annex II, 2.1 to 2.3; GHS, Table 1.5.2, 2). */
export function hazards(input: SheetInput): SectionBodies {
  const { elements } = input;
  const { ghs: words } = input.words.sheet;
  const common = hazardIdentification(input);
  return {
    ...common,
    classification: classification(input),
    'hazard-statements': firstBody(
      bodyOf('label elements', { list: elements.hazardStatements.map(withCode) }),
      said('label elements', input.words.sheet.identification.noHazardStatements),
    ),
    supplemental: firstBody(
      bodyOf('label elements', { list: elements.supplemental.map(withCode) }),
      said('label elements', words.noSupplemental),
    ),
    'label-substances': labelSubstances(input),
    pbt: identified(input, 'pbt', ['assessment.pbt']),
    endocrine: identified(input, 'endocrine', [
      'assessment.endocrine-health',
      'assessment.endocrine-environment',
    ]),
    'other-hazards': otherHazards(input),
  };
}

/** What the maker says of other hazards; where nothing is said, reactions that are known do not close the item (2.3). */
function otherHazards(input: SheetInput): ItemBody {
  const { sheet } = input.record;
  const text = [...paragraphs(sheet['assessment.other-hazards']), ...paragraphs(sheet['other-hazards'])];
  const notes = reactionWarnings(input);
  return { ...(bodyOf('product record', { text }) ?? nothing), notes };
}

/** Every class of the mixture, what is not decided, and the main effects in plain words (2.1). */
function classification(input: SheetInput): ItemBody {
  const { classification: result } = input;
  const { ghs: words, identification } = input.words.sheet;
  const undecided = result.otherClasses.filter(({ outcome }) => outcome === 'insufficient-data');
  const list = result.hazards.map(hazard => titleAndCode(hazard, input));
  const effects = [
    ...effectsOf(result.hazards, 'acute', input.words.sheet),
    ...effectsOf(result.hazards, 'delayed', input.words.sheet),
  ];
  return {
    ...firstBody(
      bodyOf('calculation', { list }),
      said('calculation', undecided.length > 0 ? identification.notClassifiedUndecided : words.notClassified),
    ),
    notes: [
      fill(words.basis, { basis: inTerms(input.words.sheet.terms.bases, result.basis.title) }),
      ...(effects.length > 0 ? [fill(words.effects, { texts: effects.join('; ') })] : []),
      ...(undecided.length > 0
        ? [
            fill(identification.insufficient, {
              titles: undecided.map(each => titleOf(each, input)).join('; '),
            }),
          ]
        : []),
      ...(openOnDocuments(result).phMissing ? [identification.phMissing] : []),
    ],
  };
}

/**
 * Substances that contribute to the classification for the classes of CLP, Article 18(3)(b). All of them: which four
 * suffice is left to the reviewer.
 */
export function labelSubstances(input: SheetInput): ItemBody {
  const { ghs: words } = input.words.sheet;
  const { name } = secretsOf(input);
  const { due, constituents, proposed, names } = substancesOf(input.classification);
  const list = [...constituents, ...proposed].map(name);
  if (list.length === 0)
    return due
      ? said('calculation', words.labelSubstancesOpen)
      : said('calculation', words.noLabelSubstances);
  return {
    list,
    notes: [
      ...(proposed.length > 0 ? [words.labelSubstancesProposed] : []),
      ...(list.length > names ? [fill(words.fourNames, { count: names })] : []),
    ],
    source: 'calculation',
  };
}
