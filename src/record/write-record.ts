import { stringify } from 'yaml';
import type { TableLine } from './from-table.ts';

/** A record as YAML, with a comment above it. Values that look like numbers are written as numbers. */
export function recordText(comment: string, record: Readonly<Record<string, unknown>>): string {
  const above = comment
    .split('\n')
    .map(line => `# ${line}`.trimEnd())
    .join('\n');
  return `${above}\n${stringify(record, { lineWidth: 110 })}`;
}

/** Lines of a table as lines of a formula. */
export const linesOfTable = (
  lines: readonly TableLine[],
  source: string,
): Readonly<Record<string, unknown>>[] =>
  lines.map(({ row: _, percent, hazards, ...line }) => ({
    ...line,
    ...(percent !== undefined && {
      percent: /^(?:0|[1-9]\d*)(?:\.\d+)?$/.test(percent) ? Number(percent) : percent,
    }),
    ...(hazards && { hazards, source }),
  }));
