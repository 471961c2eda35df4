import { nearest } from '../report/nearest.ts';

/** How an option is written: alone, with any text, with one of some words, or with a date. */
export type OptionKind = 'flag' | 'text' | 'date' | readonly string[];

export interface CommandUsage {
  /** `classify RECORD… [--basis us-hcs|eu-clp|un-ghs]` */
  readonly usage: string;
  readonly options: Readonly<Record<string, OptionKind>>;
  /** Fewest and most positional arguments. */
  readonly positional: readonly [number, number];
}

export interface ParsedArguments {
  readonly positional: readonly string[];
  readonly flag: (name: string) => boolean;
  readonly text: (name: string) => string | null;
}

/** Why the call is wrong, with the usage line. */
export class UsageError extends Error {}

/** The usage line was asked for. */
export class HelpRequest extends Error {}

/**
 * Reads the arguments of a command.
 * @throws UsageError on an unknown option, a missing or wrong value, or a wrong number of arguments.
 * @throws HelpRequest on `--help`
 */
export function parseArguments(
  args: readonly string[],
  { usage, options, positional }: CommandUsage,
): ParsedArguments {
  const refuse = (message: string): never => {
    throw new UsageError(`${message}\nusage: labelwright ${usage}`);
  };
  if (args.includes('--help') || args.includes('-h')) throw new HelpRequest(`usage: labelwright ${usage}`);
  const given = new Map<string, string | true>();
  const rest: string[] = [];
  for (let i = 0; i < args.length; i++) {
    const arg = args[i]!;
    if (!arg.startsWith('--')) {
      if (arg.startsWith('-') && arg !== '-') refuse(`unknown option ${arg}; options begin with two dashes`);
      rest.push(arg);
      continue;
    }
    const [name, inline] = splitAtEquals(arg.slice(2));
    const kind = options[name];
    if (!kind) {
      const near = nearest(name, Object.keys(options));
      refuse(`unknown option --${name}${near ? `; did you mean --${near}?` : ''}`);
    } else if (kind === 'flag') {
      if (inline !== null) refuse(`--${name} takes no value`);
      given.set(name, true);
    } else {
      const value = inline ?? args[++i];
      if (value === undefined || value.trim() === '' || value.startsWith('--'))
        refuse(`--${name} needs a value`);
      checkValue(name, value!, kind, refuse);
      given.set(name, value!);
    }
  }
  if (rest.length < positional[0])
    refuse(positional[0] === 1 ? `no ${thing(usage)} given` : 'too few arguments');
  if (rest.length > positional[1]) refuse(`too many arguments: ${rest.slice(positional[1]).join(' ')}`);
  return {
    positional: rest,
    flag: name => given.get(name) === true,
    text: name => {
      const value = given.get(name);
      return typeof value === 'string' ? value : null;
    },
  };
}

/** `record` of `check RECORD…` */
const thing = (usage: string): string => /[A-Z]+/.exec(usage)?.[0].toLowerCase() ?? 'argument';

function splitAtEquals(text: string): [string, string | null] {
  const at = text.indexOf('=');
  return at < 0 ? [text, null] : [text.slice(0, at), text.slice(at + 1)];
}

function checkValue(name: string, value: string, kind: OptionKind, refuse: (message: string) => never): void {
  if (kind === 'date' && !isDate(value))
    refuse(`--${name} ${value} is not a date; write year-month-day, such as 2026-11-25`);
  if (!Array.isArray(kind) || kind.includes(value)) return;
  const near = nearest(value, kind);
  const only = kind.length === 1 ? `can only be ${kind[0]}` : `is none of ${kind.join(', ')}`;
  refuse(`--${name} ${value} ${only}${near ? `; did you mean ${near}?` : ''}`);
}

function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.valueOf()) && date.toISOString().startsWith(text);
}
