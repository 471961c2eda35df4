import type { Diagnostic, Position } from './diagnostic.ts';

const WIDTH = 100;

/** `maker.yaml:3:14`; without line and column where there are none. */
export function positionText({ file, line, column }: Position): string {
  return [file, line, column].filter(part => part !== undefined).join(':');
}

/** Findings for a terminal: place and message, the line with a caret below the place, and what would be right. */
export function renderText(diagnostics: readonly Diagnostic[]): string {
  return diagnostics.map(one).join('\n');
}

function one({ severity, message, at, path, excerpt, hint, cite }: Diagnostic): string {
  const place = at ? positionText(at) : null;
  const where = [place, at?.line === undefined && path ? path : null]
    .filter(part => part !== null)
    .join(', ');
  const lines = [`${where ? `${where}: ` : ''}${severity}: ${printable(message)}${cite ? ` (${cite})` : ''}`];
  if (excerpt !== undefined && excerpt.trim() !== '') lines.push(...pointed(excerpt, at?.column));
  if (hint) lines.push(`  -> ${printable(hint)}`);
  return `${lines.join('\n')}\n`;
}

function pointed(excerpt: string, column: number | undefined): string[] {
  const text = excerpt.replaceAll('\t', ' ');
  if (column === undefined) return [`    ${printable(text.trim()).slice(0, WIDTH)}`];
  const lead = Math.min(text.length - text.trimStart().length, column - 1);
  // A long line is shown around the place alone.
  const from = column - 1 - lead > WIDTH - 20 ? column - 1 - WIDTH / 2 : lead;
  const before = from > lead ? '…' : '';
  const shown = `${before}${text.slice(from, from + WIDTH)}${text.length > from + WIDTH ? '…' : ''}`;
  return [`    ${printable(shown)}`, `    ${' '.repeat(before.length + column - 1 - from)}^`];
}

// A finding quotes its input, and input must not steer the terminal.
const printable = (text: string): string => text.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '�');

/** Findings as plain values for JSON, with absent parts left out. */
export function renderJson(diagnostics: readonly Diagnostic[]): readonly JsonDiagnostic[] {
  return diagnostics.map(({ code, severity, message, hint, at, path, excerpt, cite }) => ({
    code,
    severity,
    message,
    ...(hint !== undefined && { hint }),
    ...(at !== undefined && { file: at.file, line: at.line, column: at.column }),
    ...(path !== undefined && { path }),
    ...(excerpt !== undefined && { excerpt }),
    ...(cite !== undefined && { cite }),
  }));
}

/** A finding in JSON output. */
export interface JsonDiagnostic {
  readonly code: string;
  readonly severity: Diagnostic['severity'];
  readonly message: string;
  readonly hint?: string;
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
  readonly path?: string;
  readonly excerpt?: string;
  readonly cite?: string;
}
