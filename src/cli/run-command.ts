import type { Diagnostic } from '../report/diagnostic.ts';
import { parseArguments, UsageError, wantsHelp } from './arguments.ts';
import type { ListedCommand } from './command.ts';
import { filesAllowing } from './files.ts';
import { commandHelp } from './help.ts';
import { inputStatus } from './input-status.ts';
import { exit, type Io } from './io.ts';
import { failedJson } from './report.ts';
import { OutputError } from './write-files.ts';

/**
 * Loads and runs a command, and turns whatever stops it into a message and an exit status. With `--json`, a command
 * that fails without a document of its own gives its findings as one.
 */
export async function runCommand(
  listed: Pick<ListedCommand, 'load'>,
  args: readonly string[],
  io: Io,
  commands: readonly ListedCommand[],
): Promise<number> {
  const found: Diagnostic[] = [];
  let [printed, said] = [false, ''];
  const watched: Io = {
    ...io,
    out: text => {
      printed = true;
      return io.out(text);
    },
    err: text => {
      said += text;
      io.err(text);
    },
    found: diagnostics => void found.push(...diagnostics),
  };
  let status: number;
  try {
    const { command } = await listed.load();
    if (wantsHelp(args)) {
      io.out(commandHelp(command));
      return exit.done;
    }
    // Every command that reads records may be allowed more folders than their own.
    const allow = command.options.allow ? parseArguments(args, command).texts('allow') : [];
    const files = allow.length > 0 ? filesAllowing(allow) : io.files;
    status = await command.run(args, { ...watched, files }, commands);
  } catch (error) {
    const stopped = stoppedBy(error);
    io.err(`${stopped.said}\n`);
    found.push(stopped.diagnostic);
    status = stopped.status;
  }
  if (status === exit.badInput && found.length > 0) status = inputStatus(found);
  if (status !== exit.done && !printed && wantsJson(args)) {
    // A message that did not come as a finding is still one.
    if (found.length === 0) found.push({ code: 'message', severity: 'error', message: said.trim() });
    io.out(failedJson(found));
  }
  return status;
}

/** Whether `--json` stands before any `--`. */
export function wantsJson(args: readonly string[]): boolean {
  const end = args.indexOf('--');
  return args.slice(0, end < 0 ? args.length : end).includes('--json');
}

interface Stopped {
  readonly said: string;
  readonly diagnostic: Diagnostic;
  readonly status: number;
}

function stoppedBy(error: unknown): Stopped {
  const message = error instanceof Error ? error.message : String(error);
  const finding = (code: string, hint?: string): Diagnostic => ({ code, severity: 'error', message, hint });
  if (error instanceof UsageError)
    return {
      said: error.usage ? `${message}\n${error.usage}` : message,
      diagnostic: finding('wrong-call', error.usage),
      status: exit.badInput,
    };
  if (error instanceof OutputError)
    return { said: message, diagnostic: finding('cannot-write'), status: exit.badInput };
  const where = error instanceof Error ? (error.stack ?? message) : message;
  return {
    said: `a defect in labelwright: ${where}`,
    diagnostic: finding('defect'),
    status: exit.defect,
  };
}
