import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run as check } from '../../src/cli/commands/check.ts';
import { inProcess } from '../cli/_command.ts';

/** Pieces of the text of a record and what its owner writes in their place, by file. */
export type Corrections = Readonly<Record<string, readonly (readonly [string, string])[]>>;

/** A product of the week: what its owner learns of the record as first typed, and what the owner then writes. */
export interface Product {
  /** File of the record. */
  readonly file: string;
  readonly code: string;
  /** Codes of the errors that the first `check` tells. */
  readonly errors: readonly string[];
  /** What is corrected after the first `check`. */
  readonly first: Corrections;
  /** What is corrected after the second. */
  readonly second: Corrections;
}

/** A folder of its own with the records as first typed, all figures invented. */
export function shop(): string {
  const folder = mkdtempSync(join(tmpdir(), 'labelwright-week-'));
  cpSync('tests/week/records', folder, { recursive: true });
  return folder;
}

/** Writes corrections into the records; a piece that is not there is a fault of the test. */
export function correct(folder: string, corrections: Corrections): void {
  for (const [file, pairs] of Object.entries(corrections)) {
    const path = join(folder, file);
    let text = readFileSync(path, 'utf8');
    for (const [from, to] of pairs) {
      if (!text.includes(from)) throw new Error(`${file} has no ${from}`);
      text = text.replace(from, () => to);
    }
    writeFileSync(path, text);
  }
}

interface Finding {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
}

/** What `check` finds. */
export async function checked(
  folder: string,
  { file }: Product,
): Promise<{ status: number | null; errors: readonly string[]; findings: readonly Finding[] }> {
  const { status, out } = await inProcess(check, [join(folder, file), '--json']);
  const { findings } = JSON.parse(out) as { findings: readonly Finding[] };
  const errors = findings.filter(({ severity }) => severity === 'error').map(({ code }) => code);
  return { status, errors, findings };
}
