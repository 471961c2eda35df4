import type { Command, CommandArgument, CommandOption, ListedCommand } from './command.ts';

const marks: Readonly<Record<CommandArgument['count'], (name: string) => string>> = {
  one: name => name,
  optional: name => `[${name}]`,
  many: name => `${name}…`,
  any: name => `[${name}…]`,
};

/** An option as it is written: `--out DIR`. */
export function optionText(name: string, { kind, value }: CommandOption): string {
  if (kind === 'flag') return `--${name}`;
  if (kind === 'date') return `--${name} YYYY-MM-DD`;
  return `--${name} ${typeof kind === 'string' ? value! : kind.join('|')}`;
}

/** `classify [RECORD…] [--basis us-hcs|eu-clp|un-ghs] [--json]` */
export function usageLine({ name, argument, options }: Command): string {
  const written = Object.entries(options).map(([key, option]) => {
    const text = optionText(key, option);
    return option.required ? text : `[${text}]`;
  });
  return [name, ...(argument ? [marks[argument.count](argument.name)] : []), ...written].join(' ');
}

/** Rows of two columns, the first as wide as its widest cell. */
function columns(rows: readonly (readonly [string, string])[]): string[] {
  const width = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`);
}

/** A paragraph in lines of a terminal. */
const wrapped = (text: string): string[] => text.match(/.{1,98}(?= |$)/g)!.map(line => line.trimStart());

/** All that `--help` says of a command. */
export function commandHelp(command: Command): string {
  const { name, does, about = [], argument, options, examples } = command;
  const rows = [
    ...(argument ? [[argument.name, argument.does] as const] : []),
    ...Object.entries(options).map(([key, option]) => [optionText(key, option), option.does] as const),
  ];
  return [
    `usage: labelwright ${usageLine(command)}`,
    '',
    `labelwright ${name} ${does}.`,
    ...about.flatMap(paragraph => ['', ...wrapped(paragraph)]),
    ...(rows.length > 0 ? ['', ...columns(rows)] : []),
    '',
    'Examples:',
    ...examples.flatMap(({ call, does: what }) => [`  labelwright ${call}`, `      ${what}`]),
    '',
  ].join('\n');
}

/** All that `labelwright --help` says. */
export function overview(commands: readonly ListedCommand[]): string {
  return [
    'usage: labelwright COMMAND [RECORD …] [--out DIR] [--json] [--as-of YYYY-MM-DD]',
    '',
    ...columns(commands.map(({ name, does }) => [name, does] as const)),
    '',
    'labelwright COMMAND --help gives the options of a command, labelwright help TERM the meaning of a word of the',
    'trade, labelwright --version the version.',
    'Drafts for qualified review; labelwright approves nothing.',
    'Exit status: 0 done, 1 a stated requirement is not met, 2 wrong input or call, 70 a defect of labelwright.',
    '',
  ].join('\n');
}

/** The rows of the table in the README: the call and what it does. */
export function commandTable(commands: readonly Command[]): string {
  const cell = (text: string) => text.replaceAll('|', '\\|');
  const shown = new Set(['json', 'as-of', 'out']);
  const rows = commands.map((command): readonly [string, string] => {
    const options = Object.fromEntries(Object.entries(command.options).filter(([name]) => !shown.has(name)));
    return [`\`${cell(usageLine({ ...command, options }))}\``, cell(command.does)];
  });
  // Padded, as the formatter of the tree wants it.
  const table = [['command', 'does'] as const, ...rows];
  const widths = [0, 1].map(at => Math.max(...table.map(row => row[at]!.length)));
  const line = (row: readonly string[], fill = ' ') =>
    `| ${row.map((text, at) => text.padEnd(widths[at]!, fill)).join(' | ')} |`;
  return [line(table[0]!), line(['', ''], '-'), ...rows.map(row => line(row))].join('\n');
}
