import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packagePath } from '../../reference/package-files.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exit, type Io } from '../io.ts';
import { writeFiles } from '../write-files.ts';

/** The command as data. */
export const command: Command = {
  name: 'init',
  does: 'writes starter records with comments',
  place: 10,
  about: ['Overwrites nothing.'],
  argument: {
    name: 'DIR',
    does: 'folder for the records; this one where it is left out',
    count: 'optional',
    completes: 'folder',
  },
  options: {},
  examples: [{ call: 'init my-product', does: 'a maker and a product in my-product/, ready to be edited' }],
  run,
};

/**
 * Writes the starter records with comments; overwrites nothing. Returns the exit status.
 * @throws OutputError where the folder cannot be written
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const [folder = '.'] = parseArguments(args, command).positional;
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
