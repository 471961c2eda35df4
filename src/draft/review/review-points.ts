import { sheetQuestions } from '../../document/sheet.ts';
import type { Duty } from '../../duties/duty.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { Words } from '../../words/words.ts';
import type { ClassifiedProduct } from '../classified-product.ts';
import type { ReviewedSheet } from '../draft-sheet.ts';
import { classificationPoints, purposePoints } from './classification-points.ts';
import type { PacketLabel } from './labels.ts';
import { inPart, type ReviewPoint, worstFirst } from './point.ts';
import { sheetPoints } from './sheet-points.ts';

/** What a packet came to, as far as a reviewer asks. */
export interface Reviewed {
  readonly product: ClassifiedProduct;
  readonly sheets: readonly ReviewedSheet[];
  readonly duties: readonly Duty[];
  readonly labels: readonly PacketLabel[];
  /** Labels and sheets that could not be made. */
  readonly missing: readonly { readonly name: string; readonly reason: string }[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Everything that a reviewer must look at before anything leaves, worst first. */
export function reviewPoints(reviewed: Reviewed, words: Words): readonly ReviewPoint[] {
  const { product, sheets, duties, missing, labels } = reviewed;
  const { reviewPage } = words;
  const under = sheets.map(({ input: { record, classification, elements } }) => ({
    record,
    classification,
    elements,
  }));
  const judged = [product, ...under.filter(each => each.classification !== product.classification)];
  const readings = new Set(judged.flatMap(each => each.classification.readings.map(({ id }) => id))).size;
  return worstFirst([
    ...missing.map(
      ({ name, reason }): ReviewPoint => ({
        group: 'blocked',
        text: reviewPage.notMade(name, reason),
        places: labels.some(label => label.name === name) ? [inPart('labels')] : [],
      }),
    ),
    ...judged.flatMap(each => classificationPoints(each, words)),
    ...found(reviewed, words),
    ...sheets.flatMap(sheet => sheetPoints(sheet, words)),
    ...words
      .duties(duties.filter(({ state }) => state === 'due' || state === 'open'))
      .map((text): ReviewPoint => ({ group: 'duty', text, places: [inPart('duties')] })),
    ...purposePoints(product, words),
    ...(readings > 0
      ? [
          {
            group: 'judgement',
            text: reviewPage.readingsTaken(readings),
            places: [inPart('readings')],
          } as const,
        ]
      : []),
  ]);
}

/** Findings of labels and sheets; the errors that are the reason of what is missing stand there already. */
function found({ diagnostics, missing, labels }: Reviewed, { reviewPage }: Words): readonly ReviewPoint[] {
  const ofLabels = new Set(labels.flatMap(({ draft }) => draft.diagnostics.map(({ message }) => message)));
  const reasons = new Set(missing.map(({ reason }) => reason));
  return diagnostics
    .filter(({ severity, message }) => severity !== 'error' || !reasons.has(message))
    .map(({ severity, message, hint }) => ({
      group: severity === 'error' ? 'blocked' : severity === 'warning' ? 'facts' : 'note',
      text: reviewPage.finding(message, hint ?? null),
      places: ofLabels.has(message) ? [inPart('labels')] : [],
      finding: true,
    }));
}

/**
 * The points in lines for a terminal and the index page: the open items of a sheet in one line, and without findings,
 * which are said by themselves.
 */
export function pointLines(
  points: readonly ReviewPoint[],
  sheets: readonly ReviewedSheet[],
  words: Words,
): readonly string[] {
  const items = (group: ReviewPoint['group'], mandatory: boolean): readonly string[] => {
    const open = sheets.flatMap(({ input }) =>
      sheetQuestions(input).open.filter(each => each.mandatory === mandatory),
    );
    return points.some(point => point.group === group) && open.length > 0
      ? [words.review.unsearched(open, mandatory)]
      : [];
  };
  const told = (...groups: readonly ReviewPoint['group'][]): readonly string[] =>
    points.filter(({ group, finding }) => !finding && groups.includes(group)).map(({ text }) => text);
  return [
    ...told('blocked', 'classification', 'facts'),
    ...items('open', true),
    ...told('duty', 'judgement'),
    ...items('open-optional', false),
    ...told('note'),
  ];
}
