import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { nodeFiles } from '../../src/cli/files.ts';
import type { RecordEnv } from '../../src/record/files.ts';
import { loadRecord } from '../../src/record/load.ts';
import { MAX_RECORD_BYTES } from '../../src/record/source.ts';
import { changed, env, load, product, told } from './_example.ts';

const drum = (uses: string) =>
  `labelwright: raw-material/1\nname: drum\nformula:\n  - {use: ${uses}, percent: 100}\n`;

describe('files that are not records', () => {
  it.each([
    ['', 'empty-file'],
    ['# nothing yet\n', 'empty-file'],
    ['---\n', 'empty-file'],
    ['- a\n- b\n', 'not-a-record'],
    ['plain words', 'not-a-record'],
    ['42', 'not-a-record'],
    ['null', 'empty-file'],
  ])('%j is told as %s', (text, code) => {
    expect(load(text).diagnostics).toMatchObject([{ code, at: { file: 'cleaner.yaml', line: 1 } }]);
  });

  it('is told where bytes are not UTF-8, with the place', () => {
    const latin1 = Uint8Array.from(changed(['flash-point: none', 'flash-point: 46 °C']), char =>
      char.charCodeAt(0),
    );
    expect(told(load(latin1))[0]).toMatch(
      /^12:19 not-utf-8: .*degree sign.* -> save the file as plain text in UTF-8/,
    );
    const utf16 = new Uint8Array(Buffer.from(`\ufeff${product}`, 'utf16le'));
    expect(told(load(utf16))[0]).toMatch(/not-utf-8: the file is saved as UTF-16/);
  });

  it('refuses a large file by its size, without reading it', () => {
    let read = false;
    const large: RecordEnv = {
      statFile: () => ({ kind: 'file', bytes: 50_000_000 }),
      readFile: () => {
        read = true;
        return new Uint8Array();
      },
    };
    expect(loadRecord('cleaner.yaml', large).diagnostics).toMatchObject([
      { code: 'file-too-large', message: expect.stringContaining('50.0 MB') },
    ]);
    expect(read).toBe(false);
    expect(MAX_RECORD_BYTES).toBeLessThan(50_000_000);
  });

  it('tells a reader that fails', () => {
    const failing: RecordEnv = {
      statFile: () => ({ kind: 'file', bytes: 10 }),
      readFile: () => {
        throw new Error('the disk is gone');
      },
    };
    expect(loadRecord('a.yaml', failing).diagnostics).toMatchObject([
      { code: 'unreadable-file', message: expect.stringContaining('the disk is gone') },
    ]);
  });

  it.each([
    ['brackets', '['.repeat(100_000)],
    ['lists', '- '.repeat(100_000)],
    ['groups', Array.from({ length: 900 }, (_, depth) => `${' '.repeat(depth)}a:\n`).join('')],
  ])('refuses %s nested without end', (_name, text) => {
    expect(load(text).diagnostics).toHaveLength(1);
    expect(load(text).diagnostics[0]!.message).toMatch(/deep/);
  });
});

describe('records that name each other', () => {
  it('tells a record that contains itself', () => {
    const outcome = load(changed(['drums/hypochlorite-12.yaml', 'cleaner.yaml']));
    expect(told(outcome)).toEqual([
      '17:10 circular-use: a record contains itself: cleaner.yaml uses cleaner.yaml -> take one of these `use` lines out',
    ]);
  });

  it('tells a circle of raw materials with its chain', () => {
    const outcome = load(changed(['drums/hypochlorite-12.yaml', 'drums/a.yaml']), {
      'drums/a.yaml': drum('b.yaml'),
      'drums/b.yaml': drum('../drums/c.yaml'),
      'drums/c.yaml': drum('./a.yaml'),
    });
    expect(outcome.diagnostics.map(({ message }) => message)).toEqual([
      'a record contains itself: drums/a.yaml uses drums/b.yaml uses drums/c.yaml uses drums/a.yaml',
    ]);
    expect(outcome.diagnostics[0]!.at).toEqual({ file: 'drums/c.yaml', line: 4, column: 11 });
  });

  it('reads a chain of raw materials to any depth, each file once', () => {
    const depth = 100;
    const chain = Object.fromEntries(
      Array.from({ length: depth }, (_, i) => [
        `d${i}.yaml`,
        i === depth - 1
          ? 'labelwright: raw-material/1\nname: last\nformula: [{name: water, percent: 100}]\n'
          : `labelwright: raw-material/1\nname: drum ${i}\nformula:\n  - {use: d${i + 1}.yaml, percent: 50}\n  - {use: d${i + 1}.yaml, percent: 50}\n`,
      ]),
    );
    let reads = 0;
    const files = env({ ...chain, 'cleaner.yaml': changed(['drums/hypochlorite-12.yaml', 'd0.yaml']) });
    const outcome = loadRecord('cleaner.yaml', {
      ...files,
      readFile: path => {
        reads++;
        return files.readFile(path);
      },
    });
    expect(outcome.diagnostics).toEqual([]);
    expect(reads).toBe(depth + 2);
  });
});

describe('the files of this computer', () => {
  const folder = mkdtempSync(join(tmpdir(), 'records-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('tells folders, missing files and what is neither', () => {
    expect(loadRecord(folder, nodeFiles).diagnostics).toMatchObject([{ code: 'is-a-folder' }]);
    expect(loadRecord(join(folder, 'none.yaml'), nodeFiles).diagnostics).toMatchObject([
      { code: 'missing-file' },
    ]);
    expect(loadRecord('/dev/null', nodeFiles).diagnostics).toMatchObject([{ code: 'unreadable-file' }]);
    writeFileSync(join(folder, 'large.yaml'), new Uint8Array(MAX_RECORD_BYTES + 1));
    expect(loadRecord(join(folder, 'large.yaml'), nodeFiles).diagnostics).toMatchObject([
      { code: 'file-too-large' },
    ]);
  });
});
