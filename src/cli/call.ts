import { nearest } from '../report/nearest.ts';
import { VERSION } from '../version.ts';
import type { ListedCommand } from './command.ts';
import { overview } from './help.ts';
import { exit, type Io } from './io.ts';
import { failedJson } from './report.ts';
import { runCommand, wantsJson } from './run-command.ts';

/** Carries out one call: the name of a command and what stands behind it. Returns the exit status. */
export async function call(
  [name, ...args]: readonly string[],
  io: Io,
  commands: readonly ListedCommand[],
): Promise<number> {
  if (name === undefined) {
    io.err(overview(commands));
    return exit.badInput;
  }
  if (name === '--help' || name === '-h') {
    io.out(overview(commands));
    return exit.done;
  }
  if (name === '--version') {
    io.out(`labelwright ${VERSION}\n`);
    return exit.done;
  }
  const listed = commands.find(command => command.name === name);
  if (listed) return runCommand(listed, args, io, commands);
  const names = commands.map(command => command.name);
  const [message, hint = 'labelwright --help lists the commands'] = notACommand(name, names);
  io.err(`${message}\n${hint}\n`);
  if (wantsJson([name, ...args]))
    io.out(failedJson([{ code: 'wrong-call', severity: 'error', message, hint }]));
  return exit.badInput;
}

/** From the file name of a record, from an option, from a misspelt word: what was meant. */
function notACommand(name: string, names: readonly string[]): readonly [string, string?] {
  if (/\.(ya?ml|json)$/i.test(name)) return [`a command comes before the record: labelwright check ${name}`];
  if (name.startsWith('-')) return [`a command comes before its options: ${name}`];
  const near = nearest(name, names);
  return [`unknown command ${name}${near ? `; did you mean ${near}?` : ''}`];
}
