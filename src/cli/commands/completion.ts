import { parseArguments } from '../arguments.ts';
import type { Command, ListedCommand } from '../command.ts';
import { completionScript, type Shell, shells } from '../completion.ts';
import { exit, type Io } from '../io.ts';

/** The command as data. */
export const command: Command = {
  name: 'completion',
  does: 'prints what makes a shell complete commands and options',
  place: 910,
  argument: { name: 'SHELL', does: `one of ${shells.join(', ')}`, count: 'one', completes: shells },
  options: {},
  examples: [
    { call: 'completion bash >> ~/.bash_completion', does: 'for every new terminal of bash' },
    { call: 'completion fish > ~/.config/fish/completions/labelwright.fish', does: 'for fish' },
    { call: 'completion zsh > ~/.zfunc/_labelwright', does: 'for zsh, where ~/.zfunc is in its fpath' },
  ],
  run,
};

/** Prints the completion script of a shell. Returns the exit status. */
export async function run(
  args: readonly string[],
  io: Io,
  commands: readonly ListedCommand[],
): Promise<number> {
  const [shell = ''] = parseArguments(args, command).positional;
  if (!shells.includes(shell as Shell)) {
    io.err(`no completion for ${shell}; it can be ${shells.join(', ')}\n`);
    return exit.badInput;
  }
  const all = await Promise.all(commands.map(async ({ load }) => (await load()).command));
  io.out(completionScript(shell as Shell, all));
  return exit.done;
}
