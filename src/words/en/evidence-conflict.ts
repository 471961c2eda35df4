import type { Warning } from '../../classify/facts/warning.ts';
import type { Telling } from '../words.ts';

/** Evidence and what it disagrees with, and which of the two is taken. */
export function evidenceConflict(
  found: Extract<Warning, { id: 'evidence-conflict' }>,
  { style }: Telling,
): string {
  const { against, other, finds, taken } = found;
  const said = (code: string): string => code.replaceAll('-', ' ');
  const opposite =
    against.kind === 'evidence'
      ? `other evidence (${against.method}; ${against.source}) finds ${said(other)}`
      : `the measured ${against.property === 'pH' ? `pH ${style.show(against.value.value)}` : `flash point ${style.show(against.value.value)} ${style.celsius}`} gives ${said(other)}`;
  const follows =
    taken === 'evidence'
      ? 'the evidence is taken'
      : 'that stands until the reviewer decides; a `reason` with the evidence says why it weighs more';
  return `${found.class}: evidence (${found.method}; ${found.source}) finds ${said(finds)}, and ${opposite}; ${follows}`;
}
