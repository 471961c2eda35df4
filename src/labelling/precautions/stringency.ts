import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { Omission } from '../label-elements.ts';
import type { OmissionReason } from '../omission-reason.ts';
import { codeOf, contains, type Precaution, type Progress } from './_precaution.ts';

/**
 * Of similar statements the most stringent (29 CFR 1910.1200 App. C, C.2.4.8), those that may be left out beside
 * another one (C.2.4.4), and rewording where a stricter one already says a part (C.2.4.6); CLP Article 28(1).
 */
export function mostStringent({ precautions, omitted }: Progress, labelData: LabelData): Progress {
  const { precautions: rules, statements, basis } = labelData;
  const gone: Omission[] = [];
  let left = precautions;
  const find = (code: string) => left.find(precaution => codeOf(precaution) === code);
  /** Takes statements off in favour of one that stays and that takes over their alternatives. */
  const yieldTo = (
    stays: string,
    goes: (precaution: Precaution) => boolean,
    why: OmissionReason,
    cite: string,
  ) => {
    const yielding = left.filter(precaution => codeOf(precaution) !== stays && goes(precaution));
    gone.push(...yielding.map(precaution => ({ what: codeOf(precaution), why, cite })));
    left = left
      .filter(precaution => !yielding.includes(precaution))
      .map(precaution =>
        codeOf(precaution) === stays ? withAlternatives(precaution, yielding) : precaution,
      );
  };
  for (const { unless } of precautions)
    if (unless && find(unless))
      yieldTo(
        unless,
        each => each.unless === unless,
        { kind: 'beside', statement: unless },
        rules.cites.condition[basis],
      );
  for (const { stays, goes, why } of rules.overriding)
    if (find(stays))
      yieldTo(
        stays,
        each => goes.includes(codeOf(each)),
        { kind: 'rule', text: why },
        rules.cites.mostStringent[basis],
      );
  for (const { with: beside, from, to, why } of rules.rewritten) {
    const old = find(from);
    if (!old || !beside.some(find)) continue;
    const parts = to?.split('+') ?? [];
    if (!parts.every(part => statements.precautionary[part])) continue;
    // What the new statement says as well goes with the old one.
    const taken = left.filter(
      each => each === old || (to !== null && contains({ ...each, parts }, codeOf(each))),
    );
    left = left.filter(each => !taken.includes(each));
    if (to) {
      const rows = [...new Set(taken.flatMap(each => each.rows))];
      left = [...left, withAlternatives({ parts, group: 'response', fields: {}, rows }, taken)];
    }
    const cite = rules.cites.consolidated[basis];
    for (const what of taken.map(codeOf))
      if (what !== to)
        gone.push({
          what,
          why: to ? { kind: 'replaced', text: why, by: to } : { kind: 'rule', text: why },
          cite,
        });
  }
  return { precautions: left, omitted: [...omitted, ...gone] };
}

/** With the alternatives of others for the fields that they share or that it has none for. */
function withAlternatives(precaution: Precaution, others: readonly Precaution[]): Precaution {
  const fields = { ...precaution.fields };
  for (const other of others)
    for (const [name, words] of Object.entries(other.fields))
      fields[name] = [...new Set([...(fields[name] ?? []), ...words])];
  return { ...precaution, fields };
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
    const stands = (part: string): boolean =>
      left.some(each => each !== precaution && each.parts.includes(part));
    if (!precaution.parts.every(stands)) continue;
    left = left.filter(each => each !== precaution);
    gone.push({
      what: codeOf(precaution),
      why: { kind: 'repeated' },
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
    if (!other || !left.includes(next)) continue;
    const parts = [...new Set([...other.parts, ...next.parts])];
    const rows = [...new Set([...other.rows, ...next.rows])];
    left = [...left.filter(each => each !== other && each !== next), { ...other, parts, rows }];
  }
  return { precautions: left, omitted };
}
