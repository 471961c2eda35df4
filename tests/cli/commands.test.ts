import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseArguments } from '../../src/cli/arguments.ts';
import { commandList } from '../../src/cli/command-list.ts';
import { completionScript } from '../../src/cli/completion.ts';
import { findTerm, openGlossary } from '../../src/cli/glossary.ts';
import { commandHelp, optionText } from '../../src/cli/help.ts';
import { allCommands, commandListText, withCommandTable } from '../../src/generate/command-list.ts';
import { labelwright } from './_command.ts';

const commands = await allCommands('.');

describe('the list of commands', () => {
  it('holds every file of commands/, and is current', () => {
    const files = readdirSync('src/cli/commands').map(file => file.replace('.ts', ''));
    expect(commandList.map(({ name }) => name).sort()).toEqual(files.sort());
    expect(readFileSync('src/cli/command-list.ts', 'utf8')).toBe(commandListText(commands));
  });

  it('is the table of the README', () => {
    const readme = readFileSync('README.md', 'utf8');
    expect(withCommandTable(readme, commands)).toBe(readme);
    for (const { name } of commands) expect(readme).toContain(`| \`${name} `);
  });
});

describe.each(commands.map(command => [command.name, command] as const))('%s', (name, command) => {
  const { does, argument, options, examples } = command;

  it('says in a line what it does, the verb first and no stop at the end', () => {
    expect(does).toMatch(/^[a-z]+s,? [^\n]*[^.\n]$/);
    for (const each of [...Object.values(options), ...(argument ? [argument] : [])])
      expect(each.does).toMatch(/^[^\n.][^\n]*[^.\n]$/);
  });

  it('says in help what each option does, in lines of a terminal', () => {
    const help = commandHelp(command);
    for (const [key, option] of Object.entries(options)) {
      expect(help).toContain(optionText(key, option));
      expect(help).toContain(option.does);
    }
    expect(help).not.toContain('undefined');
  });

  it('has examples that it takes', () => {
    expect(examples.length).toBeGreaterThan(0);
    for (const { call } of examples) {
      const [own, ...args] = call.split(/ [<>]/)[0]!.split(' ');
      expect(own).toBe(name);
      expect(() => parseArguments(args, command)).not.toThrow();
    }
  });

  it('is explained by --help and by help alike', () => {
    const { status, out } = labelwright([name, '--help']);
    expect({ status, out }).toEqual({ status: 0, out: commandHelp(command) });
    if (name !== 'help') expect(labelwright(['help', name]).out).toBe(out);
  });
});

/** What bash offers for the last of these words. */
function offered(...words: string[]): string[] {
  const script = `${completionScript('bash', commands)}
COMP_WORDS=(labelwright ${words.map(word => `'${word}'`).join(' ')}); COMP_CWORD=${words.length}
_labelwright; printf '%s\\n' "\${COMPREPLY[@]}"`;
  const { stdout, stderr } = spawnSync('bash', ['-c', script], { encoding: 'utf8' });
  expect(stderr).toBe('');
  return stdout.split('\n').filter(Boolean);
}

// The reference is bash itself, which runs the script.
describe('completion', () => {
  it('offers commands, options and the words that an option takes', () => {
    expect(offered('cl')).toEqual(['classify']);
    expect(offered('')).toEqual(commands.map(({ name }) => name));
    expect(offered('classify', '--b')).toEqual(['--basis', '--brief']);
    expect(offered('classify', '--basis', '')).toEqual(['us-hcs', 'eu-clp', 'un-ghs']);
    expect(offered('completion', '')).toEqual(['bash', 'zsh', 'fish']);
  });

  it('offers files where a record stands, and folders where the drafts go', () => {
    expect(offered('check', 'packag')).toEqual(['package-lock.json', 'package.json']);
    expect(offered('sds', 'x.yaml', '--out', 'te').sort()).toEqual(['templates', 'tests']);
    expect(offered('gtin', '')).toEqual([]);
  });

  it.each(['zsh', 'fish'] as const)('for %s names every command and option', shell => {
    const script = completionScript(shell, commands);
    for (const { name, options } of commands) {
      expect(script).toContain(name);
      for (const option of Object.keys(options)) expect(script).toMatch(new RegExp(`(--| -l )${option}\\b`));
    }
  });

  it('refuses a shell that it does not know', () => {
    const { status, err } = labelwright(['completion', 'ksh']);
    expect({ status, err }).toEqual({ status: 2, err: 'no completion for ksh; it can be bash, zsh, fish\n' });
  });
});

describe('help on a word', () => {
  const glossary = openGlossary();

  it('explains words that the output uses', () => {
    for (const word of ['constituent', 'basis', 'endpoint', 'cut-off', 'reading', 'x-height', 'headroom'])
      expect(findTerm(glossary, word)?.term).toBe(word);
    for (const word of [
      'N.O.S.',
      'packing groups',
      'limited quantities',
      'RQ',
      'sscc',
      'ITF-14',
      'bearer bars',
    ])
      expect(findTerm(glossary, word), word).not.toBeNull();
    for (const word of ['marine pollutant', 'VOC', 'technical names'])
      expect(findTerm(glossary, word)?.cite, word).toBeDefined();
    expect(findTerm(glossary, 'Cut-off values')?.term).toBe('cut-off');
    expect(findTerm(glossary, 'signal word')?.term).toBe('signal word');
    expect(findTerm(glossary, 'frobnicator')).toBeNull();
  });

  it('has each word once, in order', () => {
    const names = glossary.flatMap(({ term, also = [] }) => [term, ...also].map(name => name.toLowerCase()));
    expect(new Set(names).size).toBe(names.length);
    const terms = glossary.map(({ term }) => term.toLowerCase());
    expect(terms).toEqual([...terms].sort());
  });

  it('takes a word of two, and names the nearest of an unknown one', () => {
    expect(labelwright(['help', 'signal', 'words']).out).toMatch(/^signal word\n/);
    const { status, out, err } = labelwright(['help', 'endpont']);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain('did you mean endpoint?');
  });
});
