import type { Formula } from '../../src/formula/constituent.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import { memoryFiles } from '../../src/record/files.ts';
import { parseRecordValue } from '../../src/record/load.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';

export type Line = Readonly<Record<string, unknown>>;

/** A product record of these lines and nothing much else. */
export const recordOf = (formula: readonly Line[], more: Line = {}): Line => ({
  labelwright: 'product/1',
  name: 'Test Product',
  code: 'T-1',
  use: 'Test',
  form: 'liquid',
  maker: {
    name: 'Kerbstone Products LLC',
    address: '12 Quarry Lane',
    telephone: '+1 555 0100',
    emergency: { telephone: '+1 555 0199', hours: 'always' },
  },
  formula,
  ...more,
});

export function expand(
  formula: readonly Line[],
  more: Line = {},
  files: Readonly<Record<string, string>> = {},
): Outcome<Formula> {
  const record = parseRecordValue(recordOf(formula, more), memoryFiles(files));
  return record.ok ? expandFormula(record.value) : record;
}

export function formulaOf(
  formula: readonly Line[],
  more: Line = {},
  files: Readonly<Record<string, string>> = {},
): Formula {
  const outcome = expand(formula, more, files);
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('\n'));
  return outcome.value;
}

/** Name to exact percent, as a fraction; `low..high` for a range. */
export const percents = ({ constituents }: Formula): Record<string, string> =>
  Object.fromEntries(
    constituents.map(({ name, low, high }) => {
      const [from, to] = [low.exact.toFraction(), high.exact.toFraction()];
      return [name, from === to ? from : `${from}..${to}`];
    }),
  );

export const messages = ({ diagnostics }: Outcome<unknown>): string[] =>
  diagnostics.map(({ message, hint }) => `${message} -> ${hint}`);
