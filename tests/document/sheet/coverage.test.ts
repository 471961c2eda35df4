import { afterAll, describe, expect, it } from 'vitest';
import { type SheetInput, sheetJson, sheetQuestions } from '../../../src/document/sheet.ts';
import { sheetTexts } from '../../../src/record/sheet-keys.ts';
import { inputAround } from './sheet-input.ts';
import { tenProducts } from './ten-products.ts';

const names = Object.keys(tenProducts);
const table = new Map<string, string[]>();
const questions = new Map<string, number>();
const letters = { filled: '+', searched: 's', open: 'o' } as const;

/** Every key filled with the note that it was searched for. */
const searchedFor = (): Record<string, unknown> => {
  const sds: Record<string, unknown> = {};
  for (const key of Object.keys(sheetTexts)) {
    const [group, member] = key.split('.') as [string, string | undefined];
    const entry = { searched: 'supplier sheets, 2026-11-20' };
    if (member === undefined) sds[group] = entry;
    else sds[group] = { ...(sds[group] as object), [member]: entry };
  }
  return sds;
};

const inputOf = (name: string, more: Record<string, unknown> = {}): Promise<SheetInput> =>
  inputAround({ ...tenProducts[name], ...more });

describe.each(names)('the sheet of %s', name => {
  it('has its state at every item, and few open ones without any text of the maker', async () => {
    const input = await inputOf(name);
    for (const { number, items } of sheetJson(input).sections)
      for (const { heading, letter, state } of items) {
        const row = `${number}${letter ?? ''} ${heading}`;
        table.set(row, [...(table.get(row) ?? []), letters[state]]);
      }
    // One look-up or one measurement answers an item that is asked for.
    const { open } = sheetQuestions(input);
    questions.set(name, open.length);
    expect(open.length).toBeLessThanOrEqual(8);
    // Of sections 1 to 11 only what is measured, or what no calculation can know, is open.
    const asked = open
      .filter(({ section }) => section < 12 && section !== 9)
      .flatMap(({ headings }) => headings);
    expect(asked.filter(heading => !ASKED.has(heading))).toEqual([]);
  });

  it('leaves no item open once every key says where it was searched for', async () => {
    const input = await inputOf(name, { sds: searchedFor() });
    expect(sheetQuestions(input).open).toEqual([]);
    // 29 CFR 1910.1200(g)(3): the mark says that nothing was found, only where something was sought.
    for (const { items } of sheetJson(input).sections)
      for (const { state, text } of items)
        expect(/no applicable information was found/iu.test(text ?? '')).toBe(state === 'searched');
  });
});

/** Items that only the maker or the reviewer can fill. */
const ASKED = new Set([
  'Restrictions on use',
  'Hazards not otherwise classified',
  'Common name and synonyms',
  'Impurities and stabilizing additives',
  'ACGIH Threshold Limit Value (TLV)',
  'Any other exposure limit or range used or recommended',
]);

afterAll(() => {
  const width = Math.max(...[...table.keys()].map(row => row.length));
  const rows = [...table].map(([row, states]) => `${row.padEnd(width)}  ${states.join(' ')}`);
  const counts = names.map((_, at) => [...table.values()].filter(states => states[at] === 'o').length);
  process.stdout.write(
    `\nAppendix D on ten products without a text of the maker (+ filled, s searched, o open)\n${names
      .map((name, at) => `${at + 1} ${name}: ${counts[at]} items open, ${questions.get(name)} questions`)
      .join('\n')}\n${rows.join('\n')}\n`,
  );
});
