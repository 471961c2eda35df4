import type { Command, CommandOption, Completion } from './command.ts';

export const shells = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof shells)[number];

/** What a shell offers for the value of an option; null where it takes none. */
const offered = ({ kind, completes }: CommandOption): Completion | null => {
  if (kind === 'flag') return null;
  return typeof kind === 'string' ? (completes ?? []) : kind;
};

/** Within single quotes of a shell. */
const quoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;

/** A script that completes the names of commands, their options, and values that are words, files or folders. */
export const completionScript = (shell: Shell, commands: readonly Command[]): string =>
  ({ bash, zsh, fish })[shell](commands);

function bash(commands: readonly Command[]): string {
  const words = (what: Completion): string => {
    if (what === 'file') return '-f';
    return what === 'folder' ? '-d' : `-W ${quoted(what.join(' '))}`;
  };
  const values = commands.flatMap(({ name, options }) =>
    Object.entries(options).flatMap(([option, each]) => {
      const value = offered(each);
      return value === null ? [] : [`    ${quoted(`${name} --${option}`)}) offer=(${words(value)});;`];
    }),
  );
  const options = commands.map(
    ({ name, options: own }) =>
      `    ${name}) offer=(-W ${quoted(
        Object.keys({ ...own, help: 0 })
          .map(option => `--${option}`)
          .join(' '),
      )});;`,
  );
  const places = commands.map(
    ({ name, argument }) => `    ${name}) offer=(${words(argument?.completes ?? [])});;`,
  );
  return `# Completion of labelwright for bash.
_labelwright() {
  local current="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}" command="\${COMP_WORDS[1]}"
  local offer=() line
  if ((COMP_CWORD == 1)); then
    offer=(-W ${quoted(commands.map(({ name }) => name).join(' '))})
  else
    case "$command $before" in
${values.join('\n')}
    *) if [[ $current == -* ]]; then case "$command" in
${options.join('\n')}
    esac; else case "$command" in
${places.join('\n')}
    esac; fi;;
    esac
  fi
  COMPREPLY=()
  ((\${#offer[@]})) || return
  while IFS= read -r line; do COMPREPLY+=("$line"); done < <(compgen "\${offer[@]}" -- "$current")
}
complete -o filenames -F _labelwright labelwright
`;
}

function zsh(commands: readonly Command[]): string {
  // Brackets and colons are signs of the notation of _arguments.
  const plain = (text: string) => text.replace(/[[\]:\\]/g, '\\$&');
  const action = (what: Completion): string => {
    if (what === 'file') return '_files';
    return what === 'folder' ? '_files -/' : `(${what.join(' ')})`;
  };
  const cases = commands.map(({ name, argument, options }) => {
    const specs = Object.entries(options).map(([option, each]) => {
      const value = offered(each);
      return `--${option}[${plain(each.does)}]${value === null ? '' : `:${option}:${action(value)}`}`;
    });
    const many = argument && ['many', 'any'].includes(argument.count) ? '*' : '';
    const place = argument ? [`${many}:${argument.name}:${action(argument.completes ?? [])}`] : [];
    return `    ${name}) _arguments ${[...specs, ...place].map(quoted).join(' ')};;`;
  });
  return `#compdef labelwright
# Completion of labelwright for zsh.
_labelwright() {
  if ((CURRENT == 2)); then
    local -a commands=(${commands.map(({ name, does }) => quoted(`${name}:${does}`)).join(' ')})
    _describe command commands
    return
  fi
  local command=\${words[2]}
  shift words
  ((CURRENT--))
  case $command in
${cases.join('\n')}
  esac
}
if [[ $funcstack[1] == _labelwright ]]; then _labelwright "$@"; else compdef _labelwright labelwright; fi
`;
}

function fish(commands: readonly Command[]): string {
  const lines = commands.flatMap(({ name, does, argument, options }) => {
    const within = `complete -c labelwright -n '__fish_seen_subcommand_from ${name}'`;
    const action = (what: Completion): string => {
      if (what === 'file') return '-F';
      return what === 'folder' ? `-a '(__fish_complete_directories)'` : `-a ${quoted(what.join(' '))}`;
    };
    const own = Object.entries(options).map(([option, each]) => {
      const value = offered(each);
      const takes = value === null ? '' : ` -r ${value === 'file' ? '' : '-f '}${action(value)}`;
      return `${within} -l ${option} -d ${quoted(each.does)}${takes}`;
    });
    const place = argument?.completes?.length ? [`${within} ${action(argument.completes)}`] : [];
    return [
      `complete -c labelwright -n __fish_use_subcommand -a ${name} -d ${quoted(does)}`,
      ...own,
      ...place,
    ];
  });
  return `# Completion of labelwright for fish.\ncomplete -c labelwright -f\n${lines.join('\n')}\n`;
}
