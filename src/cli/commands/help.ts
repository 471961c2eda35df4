import { nearest } from '../../report/nearest.ts';
import { parseArguments } from '../arguments.ts';
import type { Command, ListedCommand } from '../command.ts';
import { entryText, findTerm, openGlossary } from '../glossary.ts';
import { commandHelp, overview } from '../help.ts';
import { exit, type Io } from '../io.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'help',
  does: 'explains a command, or a word of the trade',
  place: 900,
  argument: {
    name: 'COMMAND-OR-TERM',
    does: 'name of a command, or a word as the output uses it; all words where it is left out',
    count: 'any',
  },
  options: {},
  examples: [
    { call: 'help label', does: 'the options of label, with examples' },
    { call: 'help cut-off', does: 'what a cut-off is' },
  ],
  run,
};

/** Prints the help of a command or the meaning of a word. Returns the exit status. */
export async function run(
  args: readonly string[],
  io: Io,
  commands: readonly ListedCommand[],
): Promise<number> {
  const asked = parseArguments(args, command).positional.join(' ');
  const glossary = openGlossary();
  const terms = glossary.map(({ term }) => term);
  if (asked === '') {
    io.out(`${overview(commands)}\nWords explained: ${terms.join(', ')}.\n`);
    return exit.done;
  }
  const listed = commands.find(({ name }) => name === asked);
  if (listed) {
    io.out(commandHelp((await listed.load()).command));
    return exit.done;
  }
  const entry = findTerm(glossary, asked);
  if (entry) {
    io.out(entryText(entry));
    return exit.done;
  }
  const near = nearest(asked, [...commands.map(({ name }) => name), ...terms]);
  report(
    [
      {
        code: 'unknown-term',
        severity: 'error',
        message: `no command and no word \`${asked}\` is known here`,
        hint: near ? `did you mean ${near}?` : `the words are ${terms.join(', ')}`,
      },
    ],
    io,
  );
  return exit.badInput;
}
