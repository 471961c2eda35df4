import { parseArgs } from 'node:util';
import { isDay } from '../quantity/day.ts';
import { nearest } from '../report/nearest.ts';
import type { Command, CommandArgument, OptionKind } from './command.ts';
import { usageLine } from './help.ts';

export interface ParsedArguments {
  readonly positional: readonly string[];
  readonly flag: (name: string) => boolean;
  readonly text: (name: string) => string | null;
  /** Every value of an option that may be given several times. */
  readonly texts: (name: string) => readonly string[];
}

/** Why the call is wrong. */
export class UsageError extends Error {
  /** The usage line, where the form of the call is wrong. */
  readonly usage: string | undefined;

  constructor(message: string, command?: Command) {
    super(message);
    this.usage = command && `usage: labelwright ${usageLine(command)}`;
  }
}

/** Most and fewest of each count. */
const bounds: Readonly<Record<CommandArgument['count'], readonly [number, number]>> = {
  one: [1, 1],
  optional: [0, 1],
  many: [1, Number.POSITIVE_INFINITY],
  any: [0, Number.POSITIVE_INFINITY],
};

/** Earliest and latest year that can be meant by a date of law; beyond them a digit was mistyped. */
const YEARS = [1900, 2100] as const;

/**
 * Reads what stands behind the name of a command. Options may stand anywhere, `--out=DIR` or `--out DIR`; behind `--`
 * everything is an argument.
 * @throws UsageError on an unknown option, a missing or wrong value, two values that disagree, or a wrong number of
 * arguments.
 */
export function parseArguments(args: readonly string[], command: Command): ParsedArguments {
  const refuse = (message: string): never => {
    throw new UsageError(message, command);
  };
  const { options, argument } = command;
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    options: Object.fromEntries(
      Object.entries(options).map(([name, { kind }]) => [
        name,
        { type: kind === 'flag' ? ('boolean' as const) : ('string' as const) },
      ]),
    ),
  });
  const given = new Map<string, string | true>();
  const several = new Map<string, readonly string[]>();
  const positional: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') positional.push(token.value);
    if (token.kind !== 'option') continue;
    const { name, rawName, value, inlineValue, index } = token;
    if (!rawName.startsWith('--'))
      return refuse(`unknown option ${args[index]}; options begin with two dashes`);
    const option = Object.hasOwn(options, name) ? options[name] : undefined;
    if (!option) {
      const near = nearest(name, Object.keys(options));
      return refuse(`unknown option --${name}${near ? `; did you mean --${near}?` : ''}`);
    }
    if (option.kind === 'flag') {
      if (inlineValue) return refuse(`--${name} takes no value`);
      given.set(name, true);
      continue;
    }
    if (value === undefined || value.trim() === '' || (/^-./.test(value) && !inlineValue))
      return refuse(missingValue(name, value));
    checkValue(name, value, option.kind, refuse);
    if (option.many) {
      several.set(name, [...(several.get(name) ?? []), value]);
      continue;
    }
    const before = given.get(name);
    if (before !== undefined && before !== value)
      return refuse(`--${name} is given twice, ${before} and ${value}; keep one of the two`);
    given.set(name, value);
  }
  const [fewest, most] = argument ? bounds[argument.count] : [0, 0];
  if (positional.length < fewest) refuse(`no ${argument!.name.toLowerCase()} given`);
  if (positional.length > most) refuse(`too many arguments: ${positional.slice(most).join(' ')}`);
  for (const [name, { required }] of Object.entries(options))
    if (required && !given.has(name)) refuse(`--${name} is missing: ${options[name]!.does}`);
  return {
    positional,
    flag: name => given.get(name) === true,
    text: name => {
      const value = given.get(name);
      return typeof value === 'string' ? value : null;
    },
    texts: name => several.get(name) ?? [],
  };
}

/** Whether `--help` or `-h` stands before any `--`. */
export function wantsHelp(args: readonly string[]): boolean {
  const end = args.indexOf('--');
  return args.slice(0, end < 0 ? args.length : end).some(arg => arg === '--help' || arg === '-h');
}

function missingValue(name: string, value: string | undefined): string {
  const dash =
    value !== undefined && /^-[^-]/.test(value)
      ? `; for one that begins with a dash, --${name}=${value}`
      : '';
  return `--${name} needs a value${dash}`;
}

function checkValue(name: string, value: string, kind: OptionKind, refuse: (message: string) => never): void {
  if (kind === 'date') checkDate(name, value, refuse);
  if (!Array.isArray(kind) || kind.includes(value)) return;
  const near = nearest(value, kind);
  const only = kind.length === 1 ? `can only be ${kind[0]}` : `is none of ${kind.join(', ')}`;
  refuse(`--${name} ${value} ${only}${near ? `; did you mean ${near}?` : ''}`);
}

function checkDate(name: string, text: string, refuse: (message: string) => never): void {
  if (!isDay(text)) refuse(`--${name} ${text} is not a date; write year-month-day, such as 2026-11-25`);
  const year = Number(text.slice(0, 4));
  if (year < YEARS[0] || year > YEARS[1])
    refuse(`--${name} ${text}: no law is known of the year ${text.slice(0, 4)}; check its digits`);
}
