import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asName, entry } from './_objects.ts';
import type { Colour, PageMarks, PaintedMark } from './page-marks.ts';
import type { LabelPreflight, PreflightProfile } from './profile.ts';

const PRESS_OPERATORS = new Set(['k', 'K', 'cs', 'CS', 'scn', 'SCN']);
const COLOUR_OPERATORS = new Set([
  'g',
  'G',
  'rg',
  'RG',
  'k',
  'K',
  'cs',
  'CS',
  'sc',
  'SC',
  'scn',
  'SCN',
  'ri',
]);
const PICTURES = new Set(['Do', 'sh', 'EI', 'BI']);

const isBlackOnly = ({ space, components }: Colour): boolean =>
  space === 'DeviceCMYK' && components.slice(0, 3).every(value => value === 0);

const isRed = ({ space, components: [cyan, magenta = 0, yellow = 0, black] }: Colour): boolean =>
  space === 'DeviceCMYK' && cyan === 0 && black === 0 && magenta > 0 && yellow > 0;

/** Whether a path is painted in the maker's color. */
export const isBrand = ({ space, ink, components }: Colour, brand: LabelPreflight['brand']): boolean =>
  brand !== undefined &&
  (brand.spot === undefined
    ? space === 'DeviceCMYK' &&
      brand.cmyk.every((part, at) => Math.abs(part / 100 - (components[at] ?? 0)) < 1e-3)
    : ink === brand.spot);

/** White: the bare ground. */
export const isBare = ({ space, components }: Colour): boolean =>
  space === 'DeviceCMYK' && components.every(value => value === 0);

/** On a layer of positions (ISO 19593-1), which a press uses and does not print. */
export const isTechnical = ({ inside }: PaintedMark): boolean =>
  inside.some(
    ({ layer }) => asName(entry(entry(layer, 'GTS_Metadata'), 'GTS_ProcStepsGroup')) === 'Positions',
  );

const describe = ({ space, ink, components }: Colour): string =>
  `${ink ?? space} ${components.join(' ')}`.trim();

const checkMark = (mark: PaintedMark, profile: PreflightProfile): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const { dieInk, brand } = profile.kind === 'label' ? profile : {};
  const check = (use: 'fill' | 'stroke', overprints: boolean) => {
    const colour = mark[use];
    if (colour.ink !== undefined && (colour.ink === dieInk || isTechnical(mark))) return;
    if (use === 'fill' && isBrand(colour, brand)) return;
    if (!isBlackOnly(colour) && !isRed(colour))
      findings.push(
        finding('ink-not-allowed', `a path is painted with ${describe(colour)}`, 'ISO 15930-7', 'error'),
      );
    if (isBare(colour) && overprints)
      findings.push(
        finding('white-overprints', 'white is set to overprint and will not show', 'ISO 32000-1 8.6.7'),
      );
  };
  if (mark.paints.includes('text')) {
    if (!isBlackOnly(mark.fill))
      findings.push(
        finding(
          'text-not-black',
          `text is set in ${describe(mark.fill)}, not in black ink alone`,
          'GWG 2015, black text',
        ),
      );
    if (isBare(mark.fill) && mark.fillOverprint)
      findings.push(
        finding('white-overprints', 'white text is set to overprint and will not show', 'ISO 32000-1 8.6.7'),
      );
  }
  if (mark.paints.includes('fill')) check('fill', mark.fillOverprint);
  if (mark.paints.includes('stroke')) check('stroke', mark.strokeOverprint);
  return findings;
};

/** Checks that a label uses press inks only: black alone for text and bars, red, and the spot ink of the cut line. */
export const checkInks = ({ operators, painted }: PageMarks, profile: PreflightProfile): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const art = profile.kind === 'label' && profile.art !== undefined;
  const foreign = operators
    .map(({ operator }) => operator)
    .filter(name => !(art && name === 'Do'))
    .filter(name => PICTURES.has(name) || (COLOUR_OPERATORS.has(name) && !PRESS_OPERATORS.has(name)));
  for (const name of new Set(foreign))
    findings.push(finding('colour-operator', `the page uses the operator ${name}`, 'ISO 15930-7'));
  for (const mark of painted)
    if (!(art && mark.operator === 'Do')) findings.push(...checkMark(mark, profile));
  return findings;
};
