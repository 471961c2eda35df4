import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { entry } from './_objects.ts';
import type { PageMarks } from './page-marks.ts';

const OTHER_COLOURS = new Set(['rg', 'RG', 'k', 'K', 'cs', 'CS', 'sc', 'SC', 'scn', 'SCN', 'ri']);
const PICTURES = new Set(['Do', 'sh', 'EI', 'BI']);

/**
 * Checks a page for a printer with one ribbon: DeviceGray, black or nothing (a tint would be broken into dots), no
 * picture, and neither bleed nor trim, since the page is the label.
 */
export const checkOneInk = ({ page, operators, painted }: PageMarks): Diagnostic[] => {
  const cite = 'common practice of roll printers';
  const findings: Diagnostic[] = [];
  const foreign = operators
    .map(({ operator }) => operator)
    .filter(name => OTHER_COLOURS.has(name) || PICTURES.has(name));
  for (const name of new Set(foreign))
    findings.push(finding('colour-operator', `the page uses the operator ${name}`, cite));
  for (const { fill, stroke, paints } of painted) {
    const used = [
      ...(paints.includes('fill') || paints.includes('text') ? [fill] : []),
      ...(paints.includes('stroke') ? [stroke] : []),
    ];
    for (const { space, components } of used)
      if (space !== 'DeviceGray' || components.some(value => value !== 0 && value !== 1))
        findings.push(
          finding('ink-not-allowed', `a mark is painted with ${space} ${components.join(' ')}`, cite),
        );
  }
  for (const box of ['BleedBox', 'TrimBox', 'ArtBox'])
    if (entry(page.dict, box)) findings.push(finding('page-boxes', `the page has a ${box}`, cite));
  return findings;
};
