import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filesOf, folderOf, textOf, withoutComments } from './_tree.ts';

const sources = filesOf('src', /\.ts$/);
const written = [...sources, ...filesOf('tests', /\.ts$/)];

/** `path:line` of every line that a pattern is found in. */
const found = (
  paths: readonly string[],
  pattern: RegExp,
  read: (path: string) => string = textOf,
): string[] =>
  paths.flatMap(path =>
    read(path)
      .split('\n')
      .flatMap((text, at) => (pattern.test(text) ? [`${path}:${at + 1}: ${text.trim().slice(0, 120)}`] : [])),
  );

describe('source files', () => {
  it('know the terminal and the process in cli, bench and generate alone', () => {
    const outside = sources.filter(path => !['cli', 'bench', 'generate'].includes(folderOf(path)));
    const known = /\bconsole\s*\.|\bprocess\s*\.\s*[a-z]|'node:process'/;
    expect(found(outside, known, path => withoutComments(textOf(path)))).toEqual([]);
    expect(found(sources, known).length).toBeGreaterThan(0);
  });

  // Clock and chance come as arguments; hashes, paths and compression ask nothing of the machine.
  it('read files, clock and chance in environment and cli alone', () => {
    const outside = sources.filter(
      path => !['environment', 'cli', 'bench', 'generate'].includes(folderOf(path)),
    );
    const machine =
      /'node:(?!crypto'|path'|zlib')|\bnew Date\(\)|\bDate\.now\(|\bperformance\.now\(|\bMath\.random\(|\bimport\.meta\b/;
    expect(found(outside, machine, path => withoutComments(textOf(path)))).toEqual([]);
    expect(found(sources, machine).length).toBeGreaterThan(0);
  });

  // What a module keeps between calls: each is of what cannot change while the program runs. DEVELOPERS.md has the grounds.
  it('keep nothing between calls but what is measured', () => {
    const kept = /^(?:let \w+\b|(?:export )?const \w+(?:: [^=]+)? = new (?:Map|WeakMap|Set)(?:<.*>)?\(\))/;
    const known = {
      // Made once from shipped data or as an empty constant; nothing is added later.
      'classify/engine.ts': 'constant',
      'classify/reactivity.ts': 'constant',
      'notation/severity.ts': 'constant',
      'quantity/units.ts': 'constant',
      'record/sheet-schema.ts': 'constant',
      // Held by an object that is an argument, and gone with it.
      'classify/building-blocks.ts': 'of its argument',
      'classify/constant.ts': 'of its argument',
      'classify/ingredient-data.ts': 'of its argument',
      'classify/ingredient.ts': 'of its argument',
      'document/sheet/look-ups.ts': 'of its argument',
      'document/sheet/sections.ts': 'of its argument',
      'document/template.ts': 'of its argument',
      'layout/label/flow.ts': 'of its argument',
      'layout/label/measured.ts': 'of its argument',
      'layout/label/once.ts': 'of its argument',
      'pdf/font.ts': 'of its argument',
      'reference/groups/members.ts': 'of its argument',
      'reference/label-data/find-row.ts': 'of its argument',
      // Data of the package, which does not change while the program runs.
      'classify/sums.ts': 'package',
      'draft/draft-transport.ts': 'package',
      'draft/open-reference.ts': 'package',
      'layout/label/pictogram.ts': 'package',
      'reference/edition.ts': 'package',
      'reference/label-data/load-label-data.ts': 'package',
    };
    const outside = sources.filter(
      path => !['environment', 'cli', 'bench', 'generate'].includes(folderOf(path)),
    );
    const files = [...new Set(found(outside, kept).map(line => line.split(':')[0]!.slice(4)))];
    expect(files.sort()).toEqual(Object.keys(known).sort());
  });

  // What differs between texts of law is a capability in their data.
  it('ask no basis for its name outside the tables of reference', () => {
    const named = /\bbasis\.id\s*[!=]==|'(eu-clp|us-hcs|un-ghs)'/;
    const outside = sources.filter(path => !['reference', 'bench', 'generate'].includes(folderOf(path)));
    expect(found(outside, named, path => withoutComments(textOf(path)))).toEqual([]);
    expect(named.test("basis.id === 'eu-clp'")).toBe(true);
  });

  // Rules give facts; a room that takes a sentence apart would fail when its words change.
  it('take no sentence apart outside the words', () => {
    const apart =
      /\b(working|sentences?|taken|cite)\??\s*\.\s*(match|matchAll|replace|replaceAll|split|search|slice)\s*\(/;
    const outside = sources.filter(path => folderOf(path) !== 'words');
    expect(found(outside, apart, path => withoutComments(textOf(path)))).toEqual([]);
    expect(apart.test("const total = reason.working.split(' = ')")).toBe(true);
  });

  it('are small', () => {
    const size = (path: string) => readFileSync(path).length;
    expect(sources.filter(path => size(path) > 10_000)).toEqual([]);
    expect(written.filter(path => textOf(path).split('\n').length > 400)).toEqual([]);
  });

  it('are named for what they hold', () => {
    const vague = /\/_?(utils?|helpers?|misc|common|shared|stuff)(\.|\/)/;
    expect(written.filter(path => vague.test(path))).toEqual([]);
    expect(sources.filter(path => !/^[a-z0-9/_-]+\.ts$/.test(path))).toEqual([]);
  });

  it('leave nothing for later, and skip nothing', () => {
    const later = new RegExp(['TO', 'DO|FIX', 'ME|XX', 'X'].join(''));
    const skipped = new RegExp(['\\b(it|test|describe)\\.(sk', 'ip|on', 'ly|to', 'do)\\b'].join(''));
    expect(found(written, later)).toEqual([]);
    expect(found(written, skipped)).toEqual([]);
  });

  it('explain every exported function and class of a public file', () => {
    const bare = sources
      .filter(path => !/\/_/.test(path))
      .flatMap(path => {
        const lines = textOf(path).split('\n');
        return lines.flatMap((text, at) => {
          const above = lines[at - 1]?.trim() ?? '';
          const exported = /^export (async )?(function|class|abstract class) /.test(text);
          return exported && !above.endsWith('*/') ? [`${path}:${at + 1}`] : [];
        });
      });
    expect(bare).toEqual([]);
  });
});

describe('words', () => {
  const shown = [
    ...sources,
    ...filesOf('src', /\.md$/),
    ...filesOf('templates'),
    'README.md',
    'DEVELOPERS.md',
  ];

  it('claim nothing that is for others to say', () => {
    const claim = /(?<!\bnot )\b(compliant|approved|certified)\b/i;
    expect(found(shown, claim)).toEqual([]);
    expect(claim.test('This label is compliant.')).toBe(true);
  });

  it('name no folder of somebody’s machine', () => {
    const path = /(^|[\s"'`(=])(\/(work|tmp|home|root|Users|mnt|opt)\/|[A-Z]:\\\\?[A-Za-z])/;
    const everywhere = [...shown, ...written, ...filesOf('hazard-data', /\.(json|md)$/)];
    expect(found(everywhere, path)).toEqual([]);
    expect(path.test(`see ${['', 'home', 'x'].join('/')}`)).toBe(true);
  });
});

describe('README', () => {
  const { scripts } = JSON.parse(textOf('package.json')) as { scripts: Record<string, string> };
  const readme = textOf('README.md');

  it('says how to run the demo and the tests', () => {
    expect(readme).toContain('npm run demo');
    expect(readme).toContain('npm test');
    expect(readme).toMatch(/draft for qualified review/i);
    expect(readme).toMatch(/local codes and licensed practice/i);
  });

  it.each(['README.md', 'DEVELOPERS.md'])('%s: every script that it calls is there', name => {
    const called = [...textOf(name).matchAll(/\bnpm (?:run (?:--\S+ )*([a-z][\w:-]*)|(test|start)\b)/g)];
    expect(called.length).toBeGreaterThan(0);
    for (const [, run, short] of called) expect(scripts).toHaveProperty(run ?? short!);
  });

  it('calls commands that are there', () => {
    const commands = filesOf('src/cli/commands').map(path => /([a-z]+)\.ts$/.exec(path)![1]);
    const called = [...readme.matchAll(/\blabelwright ([a-z]+)\b(?=.*$)/gm)]
      .filter(({ input, index }) => /(npx |^|\n|`)$/.test(input.slice(Math.max(0, index - 4), index)))
      .map(([, command]) => command);
    expect(called).toContain('classify');
    for (const command of called) expect(commands).toContain(command);
  });

  it('links to files that are there', async () => {
    const { existsSync } = await import('node:fs');
    const links = [...readme.matchAll(/\]\(([^)#]+)\)/g)]
      .map(([, link]) => link!)
      .filter(link => !/^https?:/.test(link));
    expect(links.filter(link => !existsSync(link))).toEqual([]);
  });
});
