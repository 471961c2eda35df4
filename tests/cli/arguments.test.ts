import { describe, expect, it } from 'vitest';
import { parseArguments, UsageError } from '../../src/cli/arguments.ts';
import type { Command } from '../../src/cli/command.ts';

const command: Command = {
  name: 'try',
  does: 'tries',
  place: 0,
  argument: { name: 'RECORD', does: 'records', count: 'many' },
  options: {
    basis: { kind: ['us-hcs', 'eu-clp'], does: 'basis' },
    out: { kind: 'text', value: 'DIR', does: 'folder' },
    json: { kind: 'flag', does: 'JSON' },
    'as-of': { kind: 'date', does: 'date' },
  },
  examples: [],
  run: async () => 0,
};
const parsed = (...args: string[]) => parseArguments(args, command);
const refused = (...args: string[]): string => {
  try {
    parsed(...args);
  } catch (error) {
    if (error instanceof UsageError) return error.message;
    throw error;
  }
  throw new Error(`taken: ${args.join(' ')}`);
};

// Guideline 10 of the Utility Syntax Guidelines (POSIX.1-2017, XBD 12.2): the first `--` ends the options.
describe('behind --', () => {
  it('everything is an argument', () => {
    const { positional, flag } = parsed('--out', 'x', '--', '--json', '-a', '--');
    expect(positional).toEqual(['--json', '-a', '--']);
    expect(flag('json')).toBe(false);
  });

  it('a record is still asked for', () => {
    expect(refused('--json', '--')).toBe('no record given');
  });
});

describe('options', () => {
  it('stand anywhere, with = or without', () => {
    const { positional, text, flag } = parsed('a', '--out=b=c', 'd', '--as-of', '2026-11-25', '--json', 'e');
    expect(positional).toEqual(['a', 'd', 'e']);
    expect([text('out'), text('as-of'), text('basis'), flag('json')]).toEqual([
      'b=c',
      '2026-11-25',
      null,
      true,
    ]);
  });

  // Guideline 13: an operand `-` means standard input.
  it('leave a single dash as an argument and as a value', () => {
    expect(parsed('-').positional).toEqual(['-']);
    expect(parsed('a', '--out', '-').text('out')).toBe('-');
  });

  it('may be repeated where they say the same', () => {
    expect(parsed('a', '--json', '--json', '--out', 'x', '--out=x').text('out')).toBe('x');
  });

  it('that contradict each other are refused, with both', () => {
    expect(refused('a', '--basis', 'us-hcs', '--basis=eu-clp')).toBe(
      '--basis is given twice, us-hcs and eu-clp; keep one of the two',
    );
  });

  it('take no other option for their value, and say how one with a dash is written', () => {
    expect(refused('a', '--out', '--json')).toBe('--out needs a value');
    expect(refused('a', '--out', '-x')).toBe(
      '--out needs a value; for one that begins with a dash, --out=-x',
    );
    expect(parsed('a', '--out=-x').text('out')).toBe('-x');
  });

  it.each(['constructor', 'toString', '__proto__'])('do not include %s', name => {
    expect(refused('a', `--${name}`)).toContain(`unknown option --${name}`);
  });
});

describe('a date', () => {
  it.each(['2026-02-30', '2026-13-01', '26-11-25', '2026', '2026-1-1', '2026-11-25T00:00:00Z', 'today'])(
    '%s is none',
    text => {
      expect(refused('a', '--as-of', text)).toContain(`${text} is not a date; write year-month-day`);
    },
  );

  // Years with all four digits that no law is of: one was mistyped.
  it.each(['0026-11-25', '0000-01-01', '2926-11-25', '9999-12-31'])('%s is of an unknown year', text => {
    expect(refused('a', '--as-of', text)).toContain(`no law is known of the year ${text.slice(0, 4)}`);
  });

  it('on the last day of February in a leap year is one', () => {
    expect(parsed('a', '--as-of', '2028-02-29').text('as-of')).toBe('2028-02-29');
  });
});

describe('a required option', () => {
  it('is asked for by name', () => {
    const strict = { ...command, options: { of: { ...command.options.out!, required: true, does: 'what' } } };
    expect(() => parseArguments(['a'], strict)).toThrow('--of is missing: what');
  });
});
