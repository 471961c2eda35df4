import {
  type AllocatedStatement,
  type AllocationRow,
  allocatedGroups,
} from '../../reference/label-data/allocation.ts';
import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { Omission } from '../label-elements.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import type { ShownHazard } from '../shown-hazards.ts';
import type { Precaution, Progress } from './_precaution.ts';
import { unmetCondition } from './conditions.ts';

const UNLESS = /^unless (.+)$/;

interface Call {
  readonly statement: AllocatedStatement;
  readonly row: AllocationRow;
}

/**
 * The statements that the rows call for, each once, with the alternatives of all rows (C.2.4.2) and without those
 * whose conditions are not met in any row (C.2.4.4).
 */
export function collectPrecautions(
  shown: readonly ShownHazard[],
  { statements, precautions: rules, rules: labelRules, basis }: LabelData,
  product: LabelledProduct,
): Progress {
  const precautions: Precaution[] = [];
  const omitted: Omission[] = [];
  const rows = [...new Set(shown.map(({ row }) => row))];
  for (const group of allocatedGroups) {
    const calls = new Map<string, Call[]>();
    for (const row of rows)
      for (const statement of row.precautions[group])
        calls.set(statement.code, [...(calls.get(statement.code) ?? []), { statement, row }]);
    for (const [code, called] of calls) {
      const whys = called.map(({ statement }) => unmet(statement, product));
      const standing = called.filter((_, index) => whys[index] === null);
      if (standing.length === 0) {
        omitted.push({ what: code, why: whys[0]!, cite: rules.cites.condition[basis] });
        continue;
      }
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
  if (product.consumer && general && rows.length > 0)
    for (const code of general.consumer)
      precautions.push({ parts: [code], group: 'general', fields: {}, rows: [] });
  return { precautions, omitted };

  function unmet({ code, when = [] }: AllocatedStatement, of: LabelledProduct): string | null {
    return (
      when.map(condition => unmetCondition(condition, code, of, rules)).find(why => why !== null) ?? null
    );
  }

  /** Alternatives of all rows together, or those that all have; a row that names none takes the statement's defaults. */
  function fieldsOf(code: string, of: readonly Call[]): Precaution['fields'] {
    const fields = Object.entries(statements.precautionary[code]?.fields ?? {});
    return Object.fromEntries(
      fields.map(([name, field]) => {
        const named = of.map(({ statement }) => statement.fields?.[name] ?? field.default);
        const every = [...new Set(named.flat())];
        return [
          name,
          rules.common.includes(name) ? every.filter(key => named.every(keys => keys.includes(key))) : every,
        ];
      }),
    );
  }
}
