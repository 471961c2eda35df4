import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Command } from '../cli/command.ts';
import { commandTable } from '../cli/help.ts';

const FOLDER = join('src', 'cli', 'commands');
const MARKS = ['<!-- commands, written by npm run generate -->', '<!-- end of commands -->'] as const;

/** Every command of src/cli/commands, in the order of its place. Each file holds one, of its own name. */
export async function allCommands(root: string): Promise<readonly Command[]> {
  const names = readdirSync(join(root, FOLDER)).map(file => file.replace(/\.ts$/, ''));
  const commands = await Promise.all(
    names.map(async name => {
      const { command } = (await import(`../cli/commands/${name}.ts`)) as { command?: Command };
      if (command?.name !== name) throw new Error(`${FOLDER}/${name}.ts exports no command of its name`);
      return command;
    }),
  );
  return commands.sort((a, b) => a.place - b.place || (a.name < b.name ? -1 : 1));
}

const quoted = (text: string): string => (/['\\]/.test(text) ? JSON.stringify(text) : `'${text}'`);

/** Text of src/cli/command-list.ts. */
export const commandListText = (commands: readonly Command[]): string =>
  [
    '// Written by `npm run generate` from the files of commands/. Do not edit.',
    "import type { ListedCommand } from './command.ts';",
    '',
    '/** Every command with what it does; a command is loaded when it is called. */',
    'export const commandList: readonly ListedCommand[] = [',
    ...commands.flatMap(({ name, does }) => [
      '  {',
      `    name: '${name}',`,
      `    does: ${quoted(does)},`,
      `    load: () => import('./commands/${name}.ts'),`,
      '  },',
    ]),
    '];',
    '',
  ].join('\n');

/** The README with the table of commands brought up to date. */
export function withCommandTable(readme: string, commands: readonly Command[]): string {
  const [from, to] = MARKS.map(mark => readme.indexOf(mark)) as [number, number];
  if (from < 0 || to < from) throw new Error(`README.md lacks ${MARKS.join(' or ')}`);
  return `${readme.slice(0, from)}${MARKS[0]}\n\n${commandTable(commands)}\n\n${readme.slice(to)}`;
}

/** Writes src/cli/command-list.ts and the table of the README. */
export async function generateCommandList(root: string): Promise<void> {
  const commands = await allCommands(root);
  writeFileSync(join(root, 'src', 'cli', 'command-list.ts'), commandListText(commands));
  const readme = join(root, 'README.md');
  writeFileSync(readme, withCommandTable(readFileSync(readme, 'utf8'), commands));
}
