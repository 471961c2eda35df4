import type { Io } from './io.ts';

/** How an option is written: alone, with any text, with one of some words, or with a date. */
export type OptionKind = 'flag' | 'text' | 'date' | readonly string[];

/** What a shell offers in a place where no word is fixed. */
export type Completion = 'file' | 'folder' | readonly string[];

/** One option of a command, without its two dashes. */
export interface CommandOption {
  readonly kind: OptionKind;
  /** What it does, in a line. */
  readonly does: string;
  /** What stands for the text of the user in help: `DIR`. For `text` alone. */
  readonly value?: string;
  /** May be given several times; each adds a value. */
  readonly many?: boolean;
  /** Without it the command refuses to run. */
  readonly required?: boolean;
  readonly completes?: Completion;
}

/** What stands behind the command without dashes: exactly one, one or none, one or more, any number. */
export interface CommandArgument {
  /** In capitals: `RECORD`. */
  readonly name: string;
  readonly does: string;
  readonly count: 'one' | 'optional' | 'many' | 'any';
  readonly completes?: Completion;
}

/** A call that works as it stands, and what it does. */
export interface CommandExample {
  readonly call: string;
  readonly does: string;
}

/** One line of the list of commands, known without loading the command. */
export interface ListedCommand {
  readonly name: string;
  readonly does: string;
  readonly load: () => Promise<{ readonly command: Command }>;
}

/**
 * A command as data. What it accepts, its help, its row in the README and what a shell completes are read from here;
 * `run` alone is code.
 */
export interface Command {
  readonly name: string;
  /** What it does, in a line, the verb first. */
  readonly does: string;
  /** Where it stands in the list of commands: those of a record come before those of a folder. */
  readonly place: number;
  /** What is not seen from the options, as paragraphs. */
  readonly about?: readonly string[];
  readonly argument?: CommandArgument;
  readonly options: Readonly<Record<string, CommandOption>>;
  readonly examples: readonly CommandExample[];
  /**
   * Runs the command on what stands behind its name. Returns the exit status.
   * @param commands the list of commands, for those that tell of others
   */
  run(args: readonly string[], io: Io, commands: readonly ListedCommand[]): Promise<number>;
}
