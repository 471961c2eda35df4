import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import type { MarkedContent, PageMarks } from './page-marks.ts';

const CITE = 'ISO 14289-1 7.1';

const isArtifact = ({ tag }: MarkedContent): boolean => tag === 'Artifact';
const isTagged = ({ mcid }: MarkedContent): boolean => mcid !== undefined;

/** Checks that everything on a page is either tagged or an artifact, never both, and no identifier is used twice. */
export const checkTagging = ({ painted, sequences, unbalanced }: PageMarks): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const loose = painted.filter(
    ({ inside }) => !inside.some(content => isArtifact(content) || isTagged(content)),
  );
  if (loose.length > 0)
    findings.push(
      finding('content-untagged', `${loose.length} marks are neither tagged nor artifacts`, CITE),
    );
  for (const { content, inside } of sequences) {
    if (isArtifact(content) && inside.some(isTagged))
      findings.push(finding('content-nesting', 'an artifact lies inside tagged content', CITE));
    if (isTagged(content) && inside.some(isArtifact))
      findings.push(finding('content-nesting', 'tagged content lies inside an artifact', CITE));
  }
  const ids = sequences.flatMap(({ content }) => content.mcid ?? []);
  if (new Set(ids).size < ids.length)
    findings.push(
      finding('content-identifier', 'two stretches of content share an identifier', 'ISO 32000-1 14.7.4'),
    );
  if (unbalanced)
    findings.push(finding('content-nesting', 'marked content is not properly closed', 'ISO 32000-1 14.6'));
  return findings;
};
