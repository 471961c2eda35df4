import type { ClassResult, Context } from '../context.ts';
import type { Because } from '../facts/because.ts';
import type { Warning } from '../facts/warning.ts';
import type { ReadingId } from '../readings.ts';
import type { Finding, SoldAs } from './_finding.ts';
import { rules } from './_rules.ts';
import { byConstituent, covered } from './by-constituent.ts';
import { byEntry } from './by-entry.ts';
import { sensitizers } from './sensitizers.ts';
import { sheetOnRequest } from './sheet-on-request.ts';

/** A supplemental statement that is due, with its reason. */
export interface SupplementalStatement {
  /** `EUH208` */
  readonly code: string;
  /** What fills the blanks of the text: `{sensitizer: ['citral', 'eugenol']}`. */
  readonly fields: Readonly<Record<string, readonly string[]>>;
  readonly because: Because;
  /** Readings of the law on which it depends. */
  readonly readings: readonly ReadingId[];
}

/** A statement whose figures are met; the fact named in the warning, of id `supplemental-open`, decides. */
export interface SupplementalQuestion {
  readonly code: string;
  readonly warning: Warning;
  /** Readings of the law by which it is asked. */
  readonly readings: readonly ReadingId[];
}

/** Statements that are due, and those that depend on facts the record does not give. */
export interface Supplemental {
  readonly statements: readonly SupplementalStatement[];
  readonly questions: readonly SupplementalQuestion[];
}

/**
 * EUH statements that composition decides under CLP Annex II: EUH029, 031, 032, 066, 070, 071, 201 to 212. Those of
 * the classes of Delegated Regulation (EU) 2023/707 are hazard statements of `results`. Nothing under another basis.
 * @param context the mixture at one corner of its ranges.
 * @param results the classes as they stand in the end, evidence included.
 */
export function supplementalStatements(
  context: Context,
  results: readonly ClassResult[],
  soldAs: SoldAs = {},
): Supplemental {
  if (!context.basis.supplementalStatements) return { statements: [], questions: [] };
  const input = { ...context, results, soldAs };
  const constituents = byConstituent(input);
  const { liquid, solid } = rules.titaniumDioxide;
  const titaniumDioxide = constituents.some(
    ({ code, open }) => open === undefined && (code === liquid || code === solid),
  );
  const findings = [
    ...byEntry(input),
    ...constituents,
    ...sensitizers(input, covered(input)),
    ...sheetOnRequest(input, titaniumDioxide),
  ].sort((a, b) => (a.code < b.code ? -1 : 1));
  return {
    statements: findings.flatMap(({ open, ...statement }) => (open === undefined ? [statement] : [])),
    questions: findings.flatMap(questionOf),
  };
}

const questionOf = ({ code, open, because, readings }: Finding): SupplementalQuestion[] =>
  open === undefined
    ? []
    : [
        {
          code,
          readings,
          warning: { id: 'supplemental-open', code, open, because, cites: because.cites },
        },
      ];

/** One list from those of all corners: each statement once, with the fields of every corner; no question on what is due. */
export function mergeSupplemental(corners: readonly Supplemental[]): Supplemental {
  const statements = new Map<string, SupplementalStatement>();
  for (const statement of corners.flatMap(each => each.statements)) {
    const known = statements.get(statement.code);
    statements.set(
      statement.code,
      known ? { ...known, fields: union(known.fields, statement.fields) } : statement,
    );
  }
  const questions = new Map<string, SupplementalQuestion>();
  for (const question of corners.flatMap(each => each.questions))
    if (!statements.has(question.code) && !questions.has(question.code))
      questions.set(question.code, question);
  return {
    statements: [...statements.values()].sort((a, b) => (a.code < b.code ? -1 : 1)),
    questions: [...questions.values()],
  };
}

function union(
  one: SupplementalStatement['fields'],
  other: SupplementalStatement['fields'],
): SupplementalStatement['fields'] {
  const joined: Record<string, readonly string[]> = { ...one };
  for (const [field, names] of Object.entries(other))
    joined[field] = [...new Set([...(joined[field] ?? []), ...names])];
  return joined;
}
