import {
  type AllocatedStatement,
  type AllocationRow,
  allocatedGroups,
} from '../../reference/label-data/allocation.ts';
import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { Conditional, Omission, PrecautionGroup } from '../label-elements.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import type { ShownHazard } from '../shown-hazards.ts';
import { codeOf, type Precaution, type Progress } from './_precaution.ts';
import { type Decided, decideCondition } from './conditions.ts';

const UNLESS = /^unless (.+)$/;

interface Call {
  readonly statement: AllocatedStatement;
  readonly row: AllocationRow;
}

const pushTo = (calls: Map<string, Call[]>, code: string, call: Call): void => {
  const known = calls.get(code);
  if (known) known.push(call);
  else calls.set(code, [call]);
};

/** Statements collected, with those that stand because a condition is open. */
export interface Collected extends Progress {
  readonly conditional: readonly Conditional[];
}

/**
 * The statements that the rows call for and that the record adds, each once, with the alternatives of all rows
 * (C.2.4.2), without those whose conditions are not met in any row (C.2.4.4) or that the record omits (C.2.4.9).
 */
export function collectPrecautions(
  shown: readonly ShownHazard[],
  { statements, precautions: rules, rules: labelRules, allocation, basis }: LabelData,
  product: LabelledProduct,
): Collected {
  const precautions: Precaution[] = [];
  const omitted: Omission[] = [];
  const conditional: Conditional[] = [];
  const rows = [...new Set(shown.map(({ row }) => row))];
  for (const group of allocatedGroups) {
    const calls = new Map<string, Call[]>();
    for (const row of rows)
      for (const statement of row.precautions[group]) pushTo(calls, statement.code, { statement, row });
    for (const [code, called] of calls) {
      const decided = called.map(({ statement }) => decide(statement));
      const standing = called.filter(
        (_, index) => !decided[index]!.some(({ outcome }) => outcome === 'not-met'),
      );
      if (standing.length === 0) {
        const unmet = decided[0]!.find(each => each.outcome === 'not-met')!;
        omitted.push({
          what: code,
          why: { kind: 'rule', text: unmet.why },
          cite: rules.cites.condition[basis],
        });
        continue;
      }
      // Where one row calls for it without an open condition, nothing is open.
      const openIn = decided.map(each => each.filter(({ outcome }) => outcome === 'open'));
      if (standing.every(call => openIn[called.indexOf(call)]!.length > 0))
        conditional.push(...openConditions(called, decided));
      const unless = standing.map(({ statement }) =>
        statement.when?.map(id => UNLESS.exec(id)?.[1]).find(id => id),
      );
      precautions.push({
        parts: code.replace('[+', '+').replace(']', '').split('+'),
        group,
        fields: fieldsOf(code, standing),
        rows: standing.map(({ row }) => row),
        ...(unless.every(id => id) && { unless: unless[0]! }),
      });
    }
  }
  const { general } = labelRules;
  const known = new Set(precautions.map(codeOf));
  const add = (code: string, group: PrecautionGroup) => {
    if (!known.has(code)) precautions.push({ parts: code.split('+'), group, fields: {}, rows: [] });
    known.add(code);
  };
  if (product.consumer && general && rows.length > 0)
    for (const code of general.consumer) add(code, 'general');
  for (const code of product.add ?? []) {
    const text = statements.precautionary[code];
    if (text) add(code, (text.group as PrecautionGroup | undefined) ?? 'general');
  }
  return { precautions, omitted, conditional };

  function decide({
    code,
    when = [],
  }: AllocatedStatement): readonly (Decided & { readonly condition: string })[] {
    return when.map(condition => ({ condition, ...decideCondition(condition, code, product, rules) }));
  }

  /** Open conditions of the calls, each once. */
  function openConditions(
    called: readonly Call[],
    decided: readonly (readonly (Decided & { readonly condition: string })[])[],
  ): Conditional[] {
    const found = new Map<string, Conditional>();
    for (const [index, { statement }] of called.entries())
      for (const each of decided[index]!)
        if (each.outcome === 'open')
          found.set(each.condition, {
            statement: statement.code,
            condition: each.condition,
            text: allocation.conditions[each.condition] ?? each.condition,
            needs: each.needs,
          });
    return [...found.values()];
  }

  /** Alternatives of all rows together; a row that names none takes the statement's defaults. */
  function fieldsOf(code: string, of: readonly Call[]): Precaution['fields'] {
    const all = statements.precautionary[code]?.fields;
    if (!all) return {};
    const fields = Object.entries(all);
    return Object.fromEntries(
      fields.map(([name, field]) => [
        name,
        rules.ofMaker.includes(name)
          ? []
          : [...new Set(of.flatMap(({ statement }) => statement.fields?.[name] ?? field.default))],
      ]),
    );
  }
}
