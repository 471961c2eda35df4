import { languages } from '../notation/languages.ts';
import type { BasisId } from '../reference/basis.ts';
import type { CommandArgument, CommandOption } from './command.ts';

// Arguments and options that mean the same in every command that takes them.

/** One product record. */
export const record: CommandArgument = {
  name: 'RECORD',
  does: 'product record, YAML or JSON',
  count: 'one',
  completes: 'file',
};

/** One or more product records. */
export const records: CommandArgument = { ...record, does: 'product records, YAML or JSON', count: 'many' };

export const json: CommandOption = {
  kind: 'flag',
  does: 'prints one JSON document on standard output, findings included where it fails',
};

export const asOf: CommandOption = { kind: 'date', does: 'date of the law; today where it is left out' };

export const out: CommandOption = {
  kind: 'text',
  value: 'DIR',
  does: 'folder for the files; out/<code> where it is left out',
  completes: 'folder',
};

export const allow: CommandOption = {
  kind: 'text',
  value: 'DIR',
  many: true,
  does: 'lets records name makers and raw materials in this folder too; may be given several times',
  completes: 'folder',
};

export const replace: CommandOption = {
  kind: 'flag',
  does: 'moves aside, under a dated name, files that a person changed',
};

/** The language of the documents. */
export const language: CommandOption = {
  kind: languages,
  does: 'language of the document; en where it is left out',
};

/** The text of law that a command goes by; the first of the ids is taken where none is named. */
export const basis = (ids: readonly BasisId[]): CommandOption => ({
  kind: ids,
  does: `text of law to go by; ${ids[0]} where it is left out`,
});
