import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect } from 'vitest';

/** Where the dumps lie. */
export const DUMPS = 'tests/golden/dumps';

const rewrites = process.env.UPDATE_GOLDEN === '1';

/** Compares a text with the dump of that name, or writes the dump where UPDATE_GOLDEN=1 is set. */
export function compare(name: string, text: string): void {
  const path = join(DUMPS, name);
  const ended = text.endsWith('\n') ? text : `${text}\n`;
  if (rewrites) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, ended);
  }
  expect(existsSync(path), `${path} is missing; npm run golden writes it`).toBe(true);
  const before = readFileSync(path, 'utf8');
  if (before === ended) return;
  // Of a long dump the first lines that differ say more than all of it.
  const [old, now] = [before.split('\n'), ended.split('\n')];
  const at = old.findIndex((line, i) => line !== now[i]);
  const from = Math.max(0, at < 0 ? old.length - 1 : at);
  const shown = (lines: readonly string[]): string => lines.slice(from, from + 6).join('\n');
  expect(shown(now), `${path} differs from line ${from + 1}; npm run golden rewrites it`).toBe(shown(old));
  expect(now.length, `${path} has other lines`).toBe(old.length);
}

const filesIn = (folder: string): string[] =>
  readdirSync(folder).flatMap(name => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesIn(path) : [path];
  });

/** No dump of a folder is without its test; where dumps are rewritten, what nobody asks for is removed. */
export function nothingElseIn(folder: string, names: readonly string[]): void {
  const asked = new Set(names.map(name => join(DUMPS, name)));
  const stray = filesIn(join(DUMPS, folder)).filter(path => !asked.has(path));
  if (rewrites) for (const path of stray) rmSync(path);
  else expect(stray).toEqual([]);
}
