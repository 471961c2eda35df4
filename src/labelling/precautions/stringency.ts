import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { Omission } from '../label-elements.ts';
import { codeOf, contains, type Precaution, type Progress } from './_precaution.ts';

/**
 * Of similar statements the most stringent (29 CFR 1910.1200 App. C, C.2.4.8), those that may be left out beside
 * another one (C.2.4.4), and rewording where a stricter one already says a part (C.2.4.6); CLP Article 28(1).
 */
export function mostStringent({ precautions, omitted }: Progress, labelData: LabelData): Progress {
  const { precautions: rules, statements, basis } = labelData;
  const gone: Omission[] = [];
  let left = precautions;
  const drop = (which: (precaution: Precaution) => boolean, why: string, cite: string) => {
    for (const precaution of left.filter(which)) gone.push({ what: codeOf(precaution), why, cite });
    left = left.filter(precaution => !which(precaution));
  };
  const has = (code: string) => left.some(precaution => codeOf(precaution) === code);
  for (const { unless } of precautions)
    if (unless && has(unless))
      drop(
        precaution => precaution.unless === unless,
        `${unless} is on the label`,
        rules.cites.condition[basis],
      );
  for (const { stays, goes, why } of rules.overriding)
    if (has(stays))
      drop(precaution => goes.includes(codeOf(precaution)), why, rules.cites.mostStringent[basis]);
  for (const { with: beside, from, to, why } of rules.rewritten) {
    if (!has(from) || !beside.some(has)) continue;
    const cite = rules.cites.consolidated[basis];
    const parts = to?.split('+') ?? [];
    // A statement that the new one takes in goes as well; both are said by it.
    const taken = left.filter(
      precaution =>
        codeOf(precaution) === from || (to && contains({ ...precaution, parts }, codeOf(precaution))),
    );
    drop(precaution => taken.includes(precaution), to ? `${why}; ${to} instead` : why, cite);
    if (to && statements.precautionary[to])
      left = [
        ...left,
        { parts, group: 'response', fields: {}, rows: [...new Set(taken.flatMap(({ rows }) => rows))] },
      ];
  }
  return { precautions: left, omitted: [...omitted, ...gone] };
}

/** Prevention and storage: a statement whose every part stands in others says nothing of its own (C.2.4.6; CLP Article 28(1)). */
export function withoutRepetition(
  { precautions, omitted }: Progress,
  { precautions: rules, basis }: LabelData,
): Progress {
  const gone: Omission[] = [];
  let left = precautions;
  const longestFirst = precautions
    .filter(({ group }) => group === 'prevention' || group === 'storage')
    .sort((a, b) => b.parts.length - a.parts.length);
  for (const precaution of longestFirst) {
    const others = left.filter(each => each !== precaution).flatMap(({ parts }) => parts);
    if (!precaution.parts.every(part => others.includes(part))) continue;
    left = left.filter(each => each !== precaution);
    gone.push({
      what: codeOf(precaution),
      why: 'every part of it is said by other statements',
      cite: rules.cites.consolidated[basis],
    });
  }
  return { precautions: left, omitted: [...omitted, ...gone] };
}

/** Storage statements that share a part as one: "Protect from sunlight. Store in a well-ventilated place. Keep cool." (C.2.4.6). */
export function joinStorage({ precautions, omitted }: Progress): Progress {
  let left = [...precautions];
  const storage = precautions.filter(({ group, parts }) => group === 'storage' && parts.length > 1);
  for (const next of [...storage].sort((a, b) => (codeOf(a) < codeOf(b) ? -1 : 1))) {
    const other = left.find(
      each => each !== next && each.group === 'storage' && each.parts.some(part => next.parts.includes(part)),
    );
    if (!other) continue;
    const parts = [...new Set([...other.parts, ...next.parts])];
    const rows = [...new Set([...other.rows, ...next.rows])];
    left = [...left.filter(each => each !== other && each !== next), { ...other, parts, rows }];
  }
  return { precautions: left, omitted };
}
