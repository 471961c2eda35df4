import type { Diagnostic, Position } from '../report/diagnostic.ts';
import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { RecordEnv } from './files.ts';

/** The text of one input file. */
export interface Source {
  readonly file: string;
  readonly text: string;
}

/** Records are a few kilobytes; anything above this is some other file. */
export const MAX_RECORD_BYTES = 2_000_000;

/**
 * Reads a record file as UTF-8. A byte order mark is dropped.
 * @returns findings instead where the path is missing, a folder, too large, not readable, empty or not UTF-8.
 * @param at where the path was named, if in another file.
 */
export function readSource(path: string, env: RecordEnv, at?: Position): Outcome<Source> {
  const refuse = (code: string, message: string, hint?: string): Outcome<never> =>
    fail({ code, severity: 'error', message, hint, at: at ?? { file: path } });

  const stat = env.statFile(path);
  if (stat.kind === 'missing')
    return refuse(
      'missing-file',
      `there is no file \`${path}\``,
      'check the spelling; paths are relative to the file that names them',
    );
  if (stat.kind === 'directory')
    return refuse('is-a-folder', `\`${path}\` is a folder, not a file`, 'name the record file inside it');
  if (stat.kind === 'unreadable')
    return refuse('unreadable-file', `\`${path}\` cannot be read: ${stat.reason}`);
  if (stat.bytes > MAX_RECORD_BYTES)
    return refuse(
      'file-too-large',
      `\`${path}\` has ${(stat.bytes / 1e6).toFixed(1)} MB; a record has at most ${MAX_RECORD_BYTES / 1e6} MB`,
      'is this the right file?',
    );
  let bytes: Uint8Array;
  try {
    bytes = env.readFile(path);
  } catch (error) {
    return refuse(
      'unreadable-file',
      `\`${path}\` cannot be read: ${error instanceof Error ? error.message : error}`,
    );
  }
  return decode(path, bytes);
}

function decode(file: string, bytes: Uint8Array): Outcome<Source> {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return fail(notUtf8(file, 'the file is saved as UTF-16', { file, line: 1, column: 1 }));
  try {
    return succeed({ file, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) });
  } catch {
    const before = new TextDecoder('utf-8').decode(bytes).split('\ufffd', 1)[0]!;
    const lines = before.split('\n');
    const at = { file, line: lines.length, column: lines.at(-1)!.length + 1 };
    const bad = bytes[new TextEncoder().encode(before).length] ?? 0;
    const likely = bad === 0xb0 ? ' (it may be a degree sign from an older program)' : '';
    return fail({
      ...notUtf8(file, `a character here is not UTF-8 text${likely}`, at),
      excerpt: lines.at(-1)!,
    });
  }
}

const notUtf8 = (_file: string, message: string, at: Position): Diagnostic => ({
  code: 'not-utf-8',
  severity: 'error',
  message,
  hint: 'save the file as plain text in UTF-8',
  at,
});
