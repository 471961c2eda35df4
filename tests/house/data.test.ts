import { basename, dirname } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesOf, textOf } from './_tree.ts';

const data = filesOf('hazard-data');
const demo = [...filesOf('templates/demo'), ...filesOf('templates/starter')];

/** Names of all keys of a JSON value at any depth. */
function keysOf(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(keysOf);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [key, ...keysOf(inner)]);
}

describe('hazard-data', () => {
  // Rows of the source that could not be read: none.
  const withoutSource = ['hazard-data/substances/unparsed.json'];
  const json = data.filter(path => path.endsWith('.json') && !withoutSource.includes(path));

  it('has every row of its source read', () => {
    expect(JSON.parse(textOf(withoutSource[0]!))).toEqual([]);
  });

  it.each(json)('%s says where it comes from and when that was seen', path => {
    const keys = keysOf(JSON.parse(textOf(path)));
    expect(keys.some(key => /^(\$?source|instrument|cite|title|law)/i.test(key))).toBe(true);
    expect(keys.some(key => /^(checked|retrieved|decided|inForce)/i.test(key))).toBe(true);
    const dates = textOf(path).match(/"(?:checked|retrieved|decided|inForce)\w*": ?"([^"]*)"/gi) ?? [];
    for (const date of dates) expect(date).toMatch(/\d{4}-\d\d-\d\d/);
  });

  it.each(data.filter(path => /\.(tsv|csv)$/.test(path)))(
    '%s is described beside it or in its head',
    path => {
      const beside = [...filesOf(dirname(path), /\.(json|md)$/), 'hazard-data/sources/README.md'];
      const stem = basename(path).replace(/\.\w+$/, '');
      const named = beside.some(
        other => basename(other).startsWith(`${stem}.`) || textOf(other).includes(stem),
      );
      expect(named || /^#/.test(textOf(path))).toBe(true);
    },
  );
});

/** Check digit of a CAS number: the digits before it, from the right, times 1, 2, 3 …, modulo 10 (CAS Registry). */
function casDigit(number: string): number {
  const digits = [...number.replaceAll('-', '').slice(0, -1)].reverse();
  return digits.reduce((sum, digit, at) => sum + Number(digit) * (at + 1), 0) % 10;
}

describe('CAS numbers', () => {
  // 29 CFR 1910.1000 Table Z-1 prints coal tar pitch volatiles so; the registry has 65996-93-2.
  const asPrinted = ['65966-93-2'];
  // No index number (012-345-00-6), no date, no part of a longer number.
  const pattern = /(?<![\d./-])[1-9]\d{1,6}-\d{2}-\d(?![\d-])/g;
  const numbers = [...data, ...demo].flatMap(path =>
    [...textOf(path).matchAll(pattern)].map(([number]) => [path, number] as const),
  );

  it('have a right check digit', () => {
    // Water and ethanol, from any bottle.
    expect([casDigit('7732-18-5'), casDigit('64-17-5')]).toEqual([5, 5]);
    expect(numbers.length).toBeGreaterThan(4000);
    const wrong = numbers.filter(([, number]) => casDigit(number) !== Number(number.at(-1)));
    expect(wrong.filter(([, number]) => !asPrinted.includes(number))).toEqual([]);
  });
});

/** Check digit of a GTIN without it: weights 3 and 1 from the right, up to the next ten (GS1 General Specifications 7.9.1). */
function gtinDigit(body: string): number {
  const sum = [...body]
    .reverse()
    .reduce((total, digit, at) => total + Number(digit) * (at % 2 === 0 ? 3 : 1), 0);
  return (10 - (sum % 10)) % 10;
}

describe('article numbers of the templates', () => {
  const written = [...filesOf('templates', /\.(yaml|hbs|md)$/), 'README.md'];
  const gtins = written.flatMap(path =>
    [...textOf(path).matchAll(/gtin: ?"?(\d{8,14})\b/g)].map(([, number]) => [path, number!] as const),
  );

  it('are there', () => {
    expect(gtins.length).toBeGreaterThan(2);
    // The worked example of GS1: 629104150021 takes 3.
    expect(gtinDigit('629104150021')).toBe(3);
  });

  it.each(gtins)('%s: %s has a right check digit and belongs to nobody', (_, number) => {
    expect(gtinDigit(number.slice(0, -1))).toBe(Number(number.at(-1)));
    // 952 is GS1's prefix for demonstrations; 0614141 is the company of the examples in its specifications.
    expect(number.padStart(14, '0').slice(1)).toMatch(/^(952|0614141)/);
  });
});

describe('telephone numbers of the templates', () => {
  const lines = filesOf('templates', /\.(yaml|json|hbs|html)$/).flatMap(path =>
    textOf(path)
      .split('\n')
      .filter(line => /telephone: *["+\d(]/.test(line) || /\+\d{1,3}[ (]\d{3}[ )]/.test(line))
      .map(line => [path, line.trim()] as const),
  );

  it.each(lines)('%s: %s is fictitious', (_, line) => {
    // 555-01xx is set aside for fiction in the North American Numbering Plan.
    expect(line).toMatch(/555[ -]?01\d\d/);
  });

  it('are there', () => {
    expect(lines.length).toBeGreaterThan(3);
  });
});
