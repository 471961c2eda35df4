import type { WarningId } from '../../classify/facts/warning.ts';
import { labelPurposes, workplaceStatements } from '../../labelling/purposes.ts';
import { tellAll } from '../../words/telling.ts';
import type { Words } from '../../words/words.ts';
import type { ClassifiedProduct } from '../classified-product.ts';
import { inPart, inSection, type PointGroup, type PointPlace, type ReviewPoint } from './point.ts';

/** Sections of the sheet that a warning bears on, where it is not section 2. */
const sections: Readonly<Partial<Record<WarningId, number>>> = {
  'no-data': 3,
  'record-replaces-entry': 3,
  'entry-chosen': 3,
  'entry-later': 3,
  'entry-answer-unused': 3,
  'entry-notes': 3,
  'no-source': 3,
  'minimum-classification': 3,
  'ate-contradicts-category': 3,
  'category-not-in-basis': 3,
  'carcinogen-listed': 11,
  'doubtful-measurement': 9,
  'open-cup': 9,
  'ph-missing': 9,
  'boiling-point-missing': 9,
  'reactive-constituents': 10,
  'reactive-alone': 10,
};

/** Warnings that ask for a fact without which the class may be too mild: they are read before the others. */
const grave: readonly WarningId[] = [
  'no-data',
  'ph-missing',
  'undecided-with-cause',
  'evidence-conflict',
  'evidence-not-used',
  'doubtful-measurement',
  'inhalation-form-worse',
  'us-specific-limits',
  'record-replaces-entry',
  'reactive-constituents',
];

const graveness = (id: WarningId): number => (grave.includes(id) ? grave.indexOf(id) : grave.length);

/** What a reviewer must look at in a classification and its label elements under one basis. */
export function classificationPoints(
  { record, classification, elements }: Pick<ClassifiedProduct, 'record' | 'classification' | 'elements'>,
  words: Words,
): readonly ReviewPoint[] {
  const telling = tellAll(classification);
  const basis = classification.basis.id;
  const undecided = classification.otherClasses.filter(({ outcome }) => outcome === 'insufficient-data');
  const unread = undecided.map(({ class: name, route }) => `${name}${route ? ` (${route})` : ''}`);
  const evidence = classification.hazards.filter(({ calculated }) => calculated).map(({ code }) => code);
  const lifted = classification.otherClasses
    .filter(({ outcome, calculated }) => outcome === 'not-classified' && calculated)
    .map(({ class: name, route, calculated }) => ({
      title: `${name}${route ? ` (${route})` : ''}`,
      calculated: calculated!.outcome,
    }));
  const { review, statements: told } = words;
  const point =
    (group: PointGroup, place: PointPlace = inSection(basis, 2)) =>
    (text: string): ReviewPoint => ({ group, text, places: [place] });
  return [
    ...(unread.length > 0 ? [point('classification')(review.undecided(unread))] : []),
    ...[...classification.warnings]
      .sort((one, other) => graveness(one.id) - graveness(other.id))
      .map(warning =>
        point('classification', inSection(basis, sections[warning.id] ?? 2))(words.warning(warning, telling)),
      ),
    ...elements.missing.map(({ what, why }) => point('facts')(`${what}: ${told.why(why)}`)),
    ...told.conditionals(elements.conditional).map(point('facts')),
    ...told.proposed(elements.proposed).map(point('facts')),
    ...(evidence.length > 0 ? [point('judgement')(review.byEvidence(evidence))] : []),
    ...(lifted.length > 0 ? [point('judgement')(review.liftedByEvidence(lifted))] : []),
    ...record.choices.map(({ reading, take, reason }) =>
      point('judgement', inPart('readings'))(review.choice(reading, take, reason)),
    ),
    ...told.combined(elements.precautionaryStatements).map(point('judgement')),
    ...elements.unused.map(each => point('facts')(told.unused(each))),
    ...elements.omitted.map(({ what, why }) => point('note')(review.leftOff(what, told.why(why)))),
  ];
}

/** What a reviewer must look at in the choice of labels. */
export function purposePoints(
  { record, classification, elements }: Pick<ClassifiedProduct, 'record' | 'classification' | 'elements'>,
  words: Words,
): readonly ReviewPoint[] {
  const places = [inPart('labels')];
  const decisions = labelPurposes(record.soldTo, classification.hazards.length > 0);
  const spared = record.soldTo?.users.includes('consumers')
    ? words.workplaceWords(workplaceStatements(elements.precautionaryStatements))
    : [];
  return [...words.purposes(decisions), ...spared].map(text => ({ group: 'judgement', text, places }));
}
