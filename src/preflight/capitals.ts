import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import type { PlacedMark } from './placed-marks.ts';
import type { LabelPreflight } from './profile.ts';

const TOLERANCE = 0.002;

/** Letters alone: lines and faces part a text at spaces. */
const letters = (text: string): string => text.replaceAll('\u2011', '-').replace(/\s/gu, '');

/**
 * Checks that every text with a least height of its capitals stands on the page whole, and that no line of it is
 * smaller. Texts are sought in the order in which they are given, which is that of the page.
 */
export function checkCapitals(
  texts: readonly PlacedMark[],
  capitals: NonNullable<NonNullable<LabelPreflight['geometry']>['capitals']>,
): Diagnostic[] {
  let page = '';
  const marks = texts.map(mark => {
    const from = page.length;
    page += letters(mark.text);
    return { mark, from, to: page.length };
  });
  let last = 0;
  return capitals.flatMap(({ text, height, cite }) => {
    const wanted = letters(text);
    const later = page.indexOf(wanted, last);
    const start = later < 0 ? page.indexOf(wanted) : later;
    if (start < 0) return [finding('text-missing', `"${text}" does not stand on the page`, cite)];
    const end = start + wanted.length;
    last = end;
    return marks
      .filter(({ mark, from, to }) => from < end && to > start && mark.capHeight! < height - TOLERANCE)
      .map(({ mark }) =>
        finding(
          'capitals-too-small',
          `"${mark.text.trim()}" has capitals of ${mark.capHeight!.toFixed(2)} mm, under ${height.toFixed(2)} mm`,
          cite,
        ),
      );
  });
}
