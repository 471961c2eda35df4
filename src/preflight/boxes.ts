import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asNumber, entry, members, type PageObject } from './_objects.ts';

const TOLERANCE = 0.001;

const corners = (object: ReturnType<typeof entry>): readonly number[] | undefined => {
  const numbers = members(object).map(asNumber);
  return numbers.length === 4 && numbers.every(number => number !== undefined)
    ? (numbers as number[])
    : undefined;
};

const contains = (outer: readonly number[], inner: readonly number[]): boolean =>
  inner[0]! >= outer[0]! - TOLERANCE &&
  inner[1]! >= outer[1]! - TOLERANCE &&
  inner[2]! <= outer[2]! + TOLERANCE &&
  inner[3]! <= outer[3]! + TOLERANCE;

/** Checks that a page for the press has trim, bleed and media box, each inside the next. */
export const checkBoxes = ({ dict, mediaBox }: PageObject): Diagnostic[] => {
  const cite = 'ISO 15930-7';
  const [media, bleed, trim] = [mediaBox, entry(dict, 'BleedBox'), entry(dict, 'TrimBox')].map(corners);
  if (!media || !bleed || !trim)
    return [finding('page-boxes', 'the page lacks a media, bleed or trim box', cite)];
  const findings: Diagnostic[] = [];
  if (trim[2]! <= trim[0]! || trim[3]! <= trim[1]!)
    findings.push(finding('page-boxes', 'the trim box is empty', cite));
  if (!contains(bleed, trim)) findings.push(finding('page-boxes', 'the trim box leaves the bleed box', cite));
  if (!contains(media, bleed))
    findings.push(finding('page-boxes', 'the bleed box leaves the media box', cite));
  if (entry(dict, 'ArtBox'))
    findings.push(finding('page-boxes', 'the page has both a trim and an art box', cite));
  return findings;
};
