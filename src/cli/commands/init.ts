import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { packagePath } from '../../reference/package-files.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { exit, type Io } from '../io.ts';

const usage: CommandUsage = { usage: 'init [DIR]', options: {}, positional: [0, 1] };

/** Writes the starter records with comments; overwrites nothing. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const [folder = '.'] = parseArguments(args, usage).positional;
  const names = readdirSync(packagePath('templates', 'starter'));
  const present = names.filter(name => existsSync(join(folder, name)));
  if (present.length > 0) {
    io.err(`${present.map(name => join(folder, name)).join(', ')} already there; nothing written\n`);
    return exit.badInput;
  }
  try {
    mkdirSync(folder, { recursive: true });
    for (const name of names)
      writeFileSync(join(folder, name), readFileSync(packagePath('templates', 'starter', name)), { flag: 'wx' });
  } catch (error) {
    io.err(`cannot write to ${folder}: ${(error as Error).message}\n`);
    return exit.badInput;
  }
  io.out(`${names.map(name => join(folder, name)).join('\n')}\nedit these, then: labelwright check ${join(folder, 'product.yaml')}\n`);
  return exit.done;
}
