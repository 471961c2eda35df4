import type { PDFDocument } from 'pdf-lib';
import { RESERVED_INKS } from '../quantity/ink-names.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asName, asText, entry, members } from './_objects.ts';
import type { PageMarks, PaintedMark } from './page-marks.ts';

const CITE = 'ISO 19593-1';
const CUTTING = new Set(['Cutting', 'PartialCutting']);

const layerOf = (mark: PaintedMark) => mark.inside.findLast(({ layer }) => layer)?.layer;

const checkLine = (mark: PaintedMark): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const layer = layerOf(mark);
  const step = entry(layer, 'GTS_Metadata');
  const isStep =
    asName(entry(step, 'GTS_ProcStepsGroup')) === 'Structural' &&
    CUTTING.has(asName(entry(step, 'GTS_ProcStepsType')) ?? '');
  if (!layer) findings.push(finding('die-layer', 'the cut line is not on a layer', CITE));
  else if (!isStep)
    findings.push(finding('die-step', 'the layer of the cut line does not declare cutting', CITE));
  if (mark.paints.join() !== 'stroke')
    findings.push(finding('die-stroke', 'the cut line is not a mere stroke', CITE));
  if (!mark.strokeOverprint)
    findings.push(finding('die-overprint', 'the cut line knocks out the artwork', CITE));
  return findings;
};

/** Checks the cut line: spot ink, own layer with processing step, stroked, overprinting, drawn last. */
export const checkDieLine = ({ painted }: PageMarks, ink: string): Diagnostic[] => {
  const isDie = ({ stroke, fill, paints }: PaintedMark) =>
    (paints.includes('stroke') && stroke.ink === ink) || (!paints.includes('stroke') && fill.ink === ink);
  const lines = painted.filter(isDie);
  if (lines.length === 0) return [finding('die-missing', `nothing is drawn in the ink "${ink}"`, CITE)];
  const findings = lines.flatMap(checkLine);
  if (RESERVED_INKS.includes(ink))
    findings.push(finding('die-ink-name', `"${ink}" is the name of a process ink`, CITE));
  const layers = new Set(lines.map(layerOf));
  const strangers = painted.filter(mark => !isDie(mark) && layerOf(mark) && layers.has(layerOf(mark)));
  if (strangers.length > 0)
    findings.push(finding('die-layer', 'artwork lies on the layer of the cut line', CITE));
  if (painted.slice(-lines.length).some(mark => !isDie(mark)))
    findings.push(finding('die-not-last', 'artwork is drawn over the cut line', CITE));
  return findings;
};

/** Checks the layers of the file: default configuration named and complete, no automatic states. */
export const checkLayers = (document: PDFDocument): Diagnostic[] => {
  const properties = entry(document.catalog, 'OCProperties');
  if (!properties) return [];
  const findings: Diagnostic[] = [];
  const configuration = entry(properties, 'D');
  const order = new Set(members(entry(configuration, 'Order')));
  if (!asText(entry(configuration, 'Name')))
    findings.push(finding('layer-configuration', 'the layer configuration has no name', 'ISO 14289-1 7.10'));
  if (entry(configuration, 'AS'))
    findings.push(finding('layer-configuration', 'layers switch by themselves (AS)', 'ISO 14289-1 7.10'));
  for (const group of members(entry(properties, 'OCGs')))
    if (!order.has(group))
      findings.push(
        finding(
          'layer-configuration',
          `the layer "${asText(entry(group, 'Name')) ?? ''}" is not listed`,
          'ISO 19005-3 6.9',
        ),
      );
  return findings;
};
