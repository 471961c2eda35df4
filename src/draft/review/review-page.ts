import { basename } from 'node:path';
import { fillPage } from '../../document/template.ts';
import type { Duty } from '../../duties/duty.ts';
import { readTemplate } from '../../environment/package-files.ts';
import type { CopyMark } from '../../provenance/copy-mark.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { pointGroups } from '../../words/review-page-words.ts';
import { tellAll } from '../../words/telling.ts';
import type { Words } from '../../words/words.ts';
import { answerOf } from '../answer.ts';
import { askedRows } from '../asked-rows.ts';
import type { ClassifiedProduct } from '../classified-product.ts';
import type { ReviewedSheet } from '../draft-sheet.ts';
import { supplierQuestions } from '../supplier-questions.ts';
import { anchorOf } from './anchors.ts';
import { labelPictures, type PacketLabel } from './labels.ts';
import type { PointPlace, ReviewPoint } from './point.ts';
import { classRows, constituentRows, readingRows } from './reasons.ts';
import { sectionRows } from './sheet-states.ts';
import { spokenSheets } from './spoken-sheets.ts';
import { supplierSheets } from './supplier-sheets.ts';

/** What the reviewer's page is made of. */
export interface ReviewPage {
  readonly product: ClassifiedProduct;
  readonly points: readonly ReviewPoint[];
  readonly labels: readonly PacketLabel[];
  readonly sheets: readonly { readonly name: string; readonly sheet: ReviewedSheet }[];
  /** The same sheets in other languages than that of the reviewer, which say the same facts. */
  readonly spoken: readonly { readonly name: string; readonly sheet: ReviewedSheet }[];
  readonly duties: readonly Duty[];
  /** Documents of the packet that are to be reviewed. */
  readonly files: readonly { readonly name: string; readonly what: string; readonly kind: string }[];
  readonly date: string;
  readonly copy: CopyMark;
}

/** Sections under which the classification, the composition and the questions to suppliers stand. */
const HAZARDS = 2;
const COMPOSITION = 3;

/** The page from which a qualified person reviews a packet: one file without script, a review copy. */
export function reviewPage(page: ReviewPage, fonts: FontLibrary, words: Words): Promise<string> {
  const { product, labels, sheets, spoken, duties, files, date, copy } = page;
  const { record, formula, classification, elements } = product;
  const several = sheets.length > 1;
  const numbered = numberedPoints(page, several, words);
  const asked = askedRows(supplierQuestions(classification, formula), classification, words);
  const suppliers = supplierSheets(product, words);
  return fillPage(readTemplate, 'packet/review.hbs', {
    name: record.name,
    code: record.code,
    revision: record.revision,
    basis: classification.basis.title,
    date,
    copy,
    answer: words.answer.lines(answerOf(classification, elements), tellAll(classification).names),
    count: numbered.flatMap(({ points }) => points).length,
    groups: numbered,
    labels: labelPictures(labels, fonts),
    sheets: sheets.map(({ name, sheet }) => ({
      name,
      basis: sheet.input.classification.basis.title,
      head: several ? name : null,
      sections: sectionRows(sheet, words).map(section => ({
        ...section,
        points: pointsAt(section.id, numbered),
        classes: section.number === HAZARDS ? classRows(sheet.input.classification, words) : null,
        constituents:
          section.number === COMPOSITION ? constituentRows(sheet.input.classification, words) : null,
        suppliers: section.number === COMPOSITION && suppliers.length > 0 ? suppliers : null,
        ask: section.number === COMPOSITION && asked.length > 0 ? asked.map(askedOf) : null,
      })),
      readings: readingRows(sheet.input.classification, words),
    })),
    spoken: spokenSheets(sheets, spoken),
    askTitle: words.answer.ask.title,
    duties: words.duties(duties),
    files: files.filter(({ kind }) => kind === 'distribution').map(({ name, what }) => ({ name, what })),
    form: `${basename(record.file).replace(/\.(ya?ml|json)$/i, '')}.review.yaml`,
  });
}

const askedOf = ([subject, missing]: readonly [string, string]) => ({ subject, missing });

interface NumberedGroup {
  readonly id: string;
  readonly title: string;
  readonly intro: string | null;
  readonly first: number;
  readonly points: readonly {
    readonly number: number;
    readonly text: string;
    readonly links: readonly { readonly to: string; readonly name: string }[];
  }[];
}

/** The points by group, numbered through, each with links to where it is looked up. */
function numberedPoints(
  { points, sheets }: ReviewPage,
  several: boolean,
  words: Words,
): readonly NumberedGroup[] {
  let next = 1;
  return pointGroups.flatMap(group => {
    const own = points.filter(point => point.group === group);
    if (own.length === 0) return [];
    const first = next;
    return [
      {
        id: `group-${group}`,
        title: words.reviewPage.groups[group],
        intro: words.reviewPage.intros[group],
        first,
        points: own.map(({ text, places }) => ({
          number: next++,
          text,
          links: linksOf(places, sheets, several, words),
        })),
      },
    ];
  });
}

function linksOf(
  places: readonly PointPlace[],
  sheets: ReviewPage['sheets'],
  several: boolean,
  { reviewPage: told }: Words,
): readonly { readonly to: string; readonly name: string }[] {
  const files = new Map(sheets.map(({ name, sheet }) => [sheet.input.classification.basis.id, name]));
  return places.flatMap(place => {
    if (place.kind === 'part') return [{ to: anchorOf(place), name: told.parts[place.part] }];
    const sheet = files.get(place.basis);
    // A basis without a sheet, as where it alone could not be made, has no sections to lead to.
    return sheet === undefined
      ? []
      : [{ to: anchorOf(place), name: told.section(place.section, several ? sheet : null) }];
  });
}

/** Numbers of the points that lead to a section or into it. */
const pointsAt = (id: string, groups: readonly NumberedGroup[]): readonly number[] =>
  groups.flatMap(({ points }) =>
    points
      .filter(({ links }) => links.some(({ to }) => to === id || to.startsWith(`${id}-`)))
      .map(({ number }) => number),
  );
