import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packagePath } from '../../reference/package-files.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { exit, type Io } from '../io.ts';
import { writeFiles } from '../write-files.ts';

const usage: CommandUsage = { usage: 'init [DIR]', options: {}, positional: [0, 1] };

/**
 * Writes the starter records with comments; overwrites nothing. Returns the exit status.
 * @throws OutputError where the folder cannot be written
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const [folder = '.'] = parseArguments(args, usage).positional;
  const names = readdirSync(packagePath('templates', 'starter'));
  const present = names.filter(name => existsSync(join(folder, name)));
  if (present.length > 0) {
    io.err(`${present.map(name => join(folder, name)).join(', ')} already there; nothing written\n`);
    return exit.badInput;
  }
  const files = names.map(name => ({ name, bytes: readFileSync(packagePath('templates', 'starter', name)) }));
  io.out(
    `${writeFiles(folder, files).join('\n')}\nedit these, then: labelwright check ${join(folder, 'product.yaml')}\n`,
  );
  return exit.done;
}
